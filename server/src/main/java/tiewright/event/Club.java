package tiewright.event;

import java.util.Optional;
import java.util.OptionalInt;

/** A club that takes part. */
public record Club(ClubId id, String name, Optional<String> town, OptionalInt seed) {}
