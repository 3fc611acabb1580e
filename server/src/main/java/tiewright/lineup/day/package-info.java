/**
 * Which sheets for all ties that a club has ahead today, when whoever plays now is tired later?
 *
 * <p>Start at {@link tiewright.lineup.day.DayPlan}, which answers a {@link tiewright.lineup.day.DayProblem}.
 */
@NullMarked
package tiewright.lineup.day;

import org.jspecify.annotations.NullMarked;
