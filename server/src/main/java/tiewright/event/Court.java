package tiewright.event;

import java.time.LocalTime;
import java.util.Optional;

/** A court and its hours; out of use when not usable. */
public record Court(String name, Optional<LocalTime> from, Optional<LocalTime> until, boolean usable) {}
