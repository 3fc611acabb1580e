/**
 * The conditions of play: 33 headings, their settings as typed values, and four presets.
 *
 * <p>Start at {@link tiewright.conditions.Conditions}. May import only {@code scoring}. What a setting and its values mean
 * in words, and where a value is published, stands in {@code wording}.
 */
@NullMarked
package tiewright.conditions;

import org.jspecify.annotations.NullMarked;
