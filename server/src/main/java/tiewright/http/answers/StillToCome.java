package tiewright.http.answers;

import java.time.LocalTime;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.Side;
import tiewright.event.Slot;
import tiewright.event.SlotSource;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.event.TieProgress;
import tiewright.standings.Table;

/** Ties of the knockout whose clubs are not all known, and that a club may still come to: who may be needed does not go home. */
public final class StillToCome {
    private final Asker asker;
    private final Event event;

    public StillToCome(Asker asker) {
        this.asker = asker;
        this.event = asker.whole();
    }

    /** The earliest first; without a time the last. Nothing for a club that withdrew. */
    public List<Tie> of(ClubId club) {
        if (event.withdrawals().containsKey(club)) {
            return List.of();
        }
        return event.ties().values().stream()
                .filter(tie -> !tie.isReady() && event.goesOn(tie))
                .filter(tie -> slots(tie).anyMatch(slot -> mayBe(slot, club, new HashSet<>())))
                .sorted(Comparator.comparing((Tie tie) -> tie.start().orElse(LocalTime.MAX)))
                .toList();
    }

    private static Stream<Slot> slots(Tie tie) {
        return Stream.of(tie.home(), tie.away());
    }

    /** @param seen sources that were looked through: who did not win a tie may come as its loser by another way */
    private boolean mayBe(Slot slot, ClubId club, Set<SlotSource> seen) {
        return slot.club()
                .map(club::equals)
                .orElseGet(() ->
                        slot.from().filter(from -> mayCome(from, club, seen)).isPresent());
    }

    private boolean mayCome(SlotSource from, ClubId club, Set<SlotSource> seen) {
        if (from.kind() == SlotSource.Kind.POOL_PLACE) {
            return mayFinish(from, club);
        }
        TieId id = TieId.of(from.of());
        return seen.add(from)
                && event.tie(id)
                        .filter(tie -> mayLeave(tie, from.kind(), club, seen))
                        .isPresent();
    }

    private boolean mayLeave(Tie tie, SlotSource.Kind kind, ClubId club, Set<SlotSource> seen) {
        TieProgress progress = event.progress(tie);
        Optional<Side> winner = progress.finished() ? progress.winner() : Optional.empty();
        return winner.map(won -> kind == SlotSource.Kind.WINNER ? won : won.other())
                .map(side -> tie.club(side).filter(club::equals).isPresent())
                .orElseGet(() -> slots(tie).anyMatch(slot -> mayBe(slot, club, seen)));
    }

    /** Until the pool has ended everybody in it; then who stands there, and who shares the place. */
    private boolean mayFinish(SlotSource from, ClubId club) {
        List<ClubId> pool = Optional.ofNullable(event.pools().get(from.of())).orElse(List.of());
        if (!pool.contains(club)) {
            return false;
        }
        boolean ended = event.ties().values().stream()
                .filter(tie -> tie.pool().filter(from.of()::equals).isPresent() && event.goesOn(tie))
                .allMatch(tie -> event.progress(tie).finished());
        return !ended || stands(new Answers(asker).table(from.of()), from.place(), club);
    }

    private static boolean stands(Table table, int place, ClubId club) {
        return table.rows().stream()
                .filter(row -> row.club().equals(club))
                .anyMatch(row -> row.place() <= place
                        && place
                                < row.place()
                                        + table.rows().stream()
                                                .filter(other -> other.place() == row.place())
                                                .count());
    }
}
