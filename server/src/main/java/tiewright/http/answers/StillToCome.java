package tiewright.http.answers;

import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.MayPlay;
import tiewright.event.Side;
import tiewright.event.SlotSource;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.event.TieProgress;
import tiewright.standings.Table;

/**
 * Ties of the knockout whose clubs are not all known, and that a club may still come to: who may be needed does not go home. The clubs
 * are those that have to know of the tie's time ({@link MayPlay}), without whom results have put out of the way.
 */
public final class StillToCome {
    private final Asker asker;
    private final Event event;

    public StillToCome(Asker asker) {
        this.asker = asker;
        this.event = asker.whole();
    }

    /** The earliest first; without a time the last. Nothing for a club that withdrew. */
    public List<Tie> of(ClubId club) {
        return event.ties().values().stream()
                .filter(tie -> !tie.isReady() && event.goesOn(tie))
                .filter(tie -> MayPlay.isAmong(event, tie.id(), club, this::mayCome))
                .sorted(Comparator.comparing((Tie tie) -> tie.start().orElse(LocalTime.MAX)))
                .toList();
    }

    private boolean mayCome(ClubId club, SlotSource from) {
        return from.kind() == SlotSource.Kind.POOL_PLACE
                ? mayFinish(club, from)
                : event.tie(TieId.of(from.of()))
                        .filter(tie -> mayLeave(club, tie, from.kind()))
                        .isPresent();
    }

    /** Until the tie has a winner everybody in it; then the one of the two. */
    private boolean mayLeave(ClubId club, Tie tie, SlotSource.Kind kind) {
        TieProgress progress = event.progress(tie);
        Optional<Side> winner = progress.finished() ? progress.winner() : Optional.empty();
        return winner.map(won -> kind == SlotSource.Kind.WINNER ? won : won.other())
                .map(side -> tie.club(side).filter(club::equals).isPresent())
                .orElse(true);
    }

    /** Until the pool has ended everybody in it; then who stands there, and who shares the place. */
    private boolean mayFinish(ClubId club, SlotSource from) {
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
