@org.jspecify.annotations.NullMarked
package tiewright.conditions;
