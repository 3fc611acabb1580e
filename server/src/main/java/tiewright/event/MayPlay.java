package tiewright.event;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Who may come to a tie: its clubs, and where a place is still open, every club that it may go to. Who has to know of the time of a tie
 * asks with nothing known of the places; who asks with more ({@link Known}) gets the same clubs or fewer, never another one.
 */
public final class MayPlay {
    private final Event event;
    private final ClubId club;
    private final Known known;
    /** Places that were looked through: who did not win a tie may come as its loser by another way. */
    private final Set<SlotSource> seen = new HashSet<>();

    /** What is known of an open place: whether a club that was in its pool, or in its tie, may still be the one that comes from there. */
    public interface Known {
        boolean mayCome(ClubId club, SlotSource from);
    }

    private MayPlay(Event event, ClubId club, Known known) {
        this.event = event;
        this.club = club;
        this.known = known;
    }

    /** Sorted by code; without clubs that withdrew, and empty for a tie that is not there. */
    public static SortedSet<ClubId> of(Event event, TieId tie) {
        return of(event, List.of(tie));
    }

    /** In any of these ties. */
    public static SortedSet<ClubId> of(Event event, Iterable<TieId> ties) {
        SortedSet<ClubId> clubs = new TreeSet<>(Comparator.comparing(ClubId::code));
        for (ClubId club : event.clubs().keySet()) {
            for (TieId tie : ties) {
                if (isAmong(event, tie, club, (any, from) -> true)) {
                    clubs.add(club);
                }
            }
        }
        return clubs;
    }

    /** Whether this club is one of them, as far as it is known who comes from where. */
    public static boolean isAmong(Event event, TieId tie, ClubId club, Known known) {
        return !event.withdrawals().containsKey(club)
                && event.tie(tie)
                        .filter(new MayPlay(event, club, known)::comesTo)
                        .isPresent();
    }

    private boolean comesTo(Tie tie) {
        return Stream.of(tie.home(), tie.away()).anyMatch(this::comesTo);
    }

    private boolean comesTo(Slot slot) {
        return slot.club()
                .map(club::equals)
                .orElseGet(() -> slot.from().filter(this::comesFrom).isPresent());
    }

    private boolean comesFrom(SlotSource from) {
        return seen.add(from) && known.mayCome(club, from) && wasIn(from);
    }

    private boolean wasIn(SlotSource from) {
        return from.kind() == SlotSource.Kind.POOL_PLACE
                ? Optional.ofNullable(event.pools().get(from.of()))
                        .filter(pool -> pool.contains(club))
                        .isPresent()
                : event.tie(TieId.of(from.of())).filter(this::comesTo).isPresent();
    }
}
