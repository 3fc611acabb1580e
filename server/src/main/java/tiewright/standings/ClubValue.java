package tiewright.standings;

import tiewright.event.ClubId;

/** What a criterion says of a club. */
public record ClubValue(ClubId club, Value value) {}
