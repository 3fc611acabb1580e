package tiewright.desk;

import java.time.LocalTime;
import java.util.List;
import java.util.Set;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.MayPlay;
import tiewright.event.Refusal;
import tiewright.event.Saying;
import tiewright.event.Tie;

/**
 * A published start is a promise that nothing begins before it. It is broken only for clubs that agreed or were told beforehand,
 * each ticked by a person, and the notice says so.
 *
 * @param told clubs that a person ticked
 */
record Earlier(Event event, Set<ClubId> told) {
    /** Those who were told a later start than this one; nobody for a tie that has begun. */
    List<ClubId> clubs(Tie tie, LocalTime start) {
        boolean earlier = !tie.isInPlay() && tie.start().filter(start::isBefore).isPresent();
        return earlier ? List.copyOf(MayPlay.of(event, tie.id())) : List.of();
    }

    List<Refusal> untold(Tie tie, LocalTime start) {
        List<ClubId> missing =
                clubs(tie, start).stream().filter(club -> !told.contains(club)).toList();
        return missing.isEmpty()
                ? List.of()
                : List.of(Refusal.of("desk.earlier-than-published")
                        .with("tie", tie.id())
                        .with("start", start)
                        .with("published", tie.start().orElseThrow())
                        .with("clubs", missing)
                        .at("told"));
    }

    /** The new times, and who was told of an earlier one before it was published. */
    Saying said(Saying times, List<ClubId> clubs) {
        List<String> names = clubs.stream()
                .map(club -> event.club(club).map(known -> known.name()).orElse(club.code()))
                .toList();
        return names.isEmpty()
                ? times
                : Saying.of("notices.earlier-told").with("times", times).withEach("clubs", names);
    }
}
