package tiewright.timetable;

import java.time.LocalTime;

/**
 * No plan can end earlier than this.
 *
 * @param slots from the first slot to the end, rounded up
 * @param minutes the same in minutes
 * @param because which of the reasons makes it so: the courts, one club's ties and rests, or the rounds
 */
public record LowerBound(LocalTime finish, int slots, int minutes, Reason because) {}
