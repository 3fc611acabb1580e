/**
 * How may a long search be stopped, and how far is it?
 *
 * <p>Start at {@link tiewright.search.Stop}; {@link tiewright.search.Solving} runs an OptaPlanner solver under one. Knows no other
 * room.
 */
@NullMarked
package tiewright.search;

import org.jspecify.annotations.NullMarked;
