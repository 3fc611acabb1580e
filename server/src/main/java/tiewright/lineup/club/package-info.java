/**
 * What an event and one club's own notes say for the captain's questions: who is here, how tired, what was promised, what the
 * other club named before; and how good the advice has been.
 *
 * <p>Start at {@link tiewright.lineup.club.LineupInputs}, for a tie, or {@link tiewright.lineup.club.DayInputs}, for the day.
 */
@NullMarked
package tiewright.lineup.club;

import org.jspecify.annotations.NullMarked;
