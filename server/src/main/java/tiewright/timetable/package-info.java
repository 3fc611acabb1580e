/**
 * The order of play: does the day fit, who plays when and where, what to do when it no longer fits, when is a tie likely to
 * begin, and since when may a late side be claimed against?
 *
 * <p>Start at {@link tiewright.timetable.PlanProblem} and {@link tiewright.timetable.Planner}; before entries close {@link
 * tiewright.timetable.TimeBudget}; when the day breaks {@link tiewright.timetable.Replan}; during play {@link
 * tiewright.timetable.ExpectedTimes} and {@link tiewright.timetable.Lateness}. Knows OptaPlanner, as {@code lineup}
 * does. May import {@code draw}, {@code event}, {@code conditions}, {@code scoring}. Times of day, seeds and budgets
 * come in as arguments.
 */
@NullMarked
package tiewright.timetable;

import org.jspecify.annotations.NullMarked;
