/**
 * How is a long search run beside everything else, how may it be stopped, and how far is it?
 *
 * <p>Start at {@link tiewright.search.Stop}; {@link tiewright.search.Solving} runs an OptaPlanner solver under one, {@link
 * tiewright.search.Background} runs searches on a thread of their own. Knows no other
 * room.
 */
@NullMarked
package tiewright.search;

import org.jspecify.annotations.NullMarked;
