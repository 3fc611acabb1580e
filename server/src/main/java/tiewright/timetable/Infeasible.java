package tiewright.timetable;

import java.util.Optional;

/**
 * Why no plan can be: the smallest set found that cannot hold together, as one sentence.
 *
 * @param isInput true where what was given contradicts itself, false where the day is too short for it
 * @param bound the earliest end there can be, where the day is too short
 */
public record Infeasible(Reason because, boolean isInput, Optional<LowerBound> bound) {}
