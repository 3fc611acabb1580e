package tiewright.event;

import java.time.Instant;
import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A player of a squad, without the name.
 *
 * @param checkedInAt when the desk saw the player, if it did
 * @param absent the desk noted that the player is not here
 */
public record Player(
        PlayerId id,
        ClubId club,
        OptionalInt rank,
        Optional<LocalTime> from,
        Optional<LocalTime> until,
        boolean deputy,
        Optional<Instant> checkedInAt,
        boolean absent) {

    Player ranked(OptionalInt other) {
        return new Player(id, club, other, from, until, deputy, checkedInAt, absent);
    }

    Player checked(boolean present, Instant at) {
        return new Player(id, club, rank, from, until, deputy, present ? Optional.of(at) : Optional.empty(), !present);
    }
}
