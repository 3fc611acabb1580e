package tiewright.event;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Who has to know of the time of a tie: its clubs, and where a place is still open, every club that may come to it. */
public final class MayPlay {
    private final Event event;
    private final Set<TieId> seen = new HashSet<>();
    private final SortedSet<ClubId> clubs = new TreeSet<>(Comparator.comparing(ClubId::code));

    private MayPlay(Event event) {
        this.event = event;
    }

    /** Sorted by code; without clubs that withdrew, and empty for a tie that is not there. */
    public static SortedSet<ClubId> of(Event event, TieId tie) {
        return of(event, List.of(tie));
    }

    /** In any of these ties. */
    public static SortedSet<ClubId> of(Event event, Iterable<TieId> ties) {
        MayPlay all = new MayPlay(event);
        ties.forEach(all::add);
        all.clubs.removeAll(event.withdrawals().keySet());
        return all.clubs;
    }

    private void add(TieId id) {
        if (seen.add(id)) {
            event.tie(id).stream()
                    .flatMap(tie -> Stream.of(tie.home(), tie.away()))
                    .forEach(this::add);
        }
    }

    private void add(Slot slot) {
        slot.club().ifPresentOrElse(clubs::add, () -> slot.from().ifPresent(this::add));
    }

    private void add(SlotSource from) {
        if (from.kind() == SlotSource.Kind.POOL_PLACE) {
            clubs.addAll(Optional.ofNullable(event.pools().get(from.of())).orElse(List.of()));
        } else {
            add(TieId.of(from.of()));
        }
    }
}
