package tiewright.lineup.club;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.lineup.Freshness;
import tiewright.lineup.TiePlaces;
import tiewright.lineup.day.DayProblem;

/** The ties that a club has still ahead today, with what its players have behind them. */
public final class DayInputs {
    /** Minutes between two ties without a published start: an assumption of ours. */
    private static final int UNKNOWN_GAP = 60;

    private DayInputs() {}

    /**
     * What is promised by the end of the day binds these ties only as far as ties without a known opponent cannot give it later.
     *
     * @param problem the question of one tie, as it would be asked for that tie alone
     * @param own the club's notes: who is to rest in which tie
     * @param weights how much hangs on each tie; nobody named = everything
     * @param now the moment of the question; what has been played by then is behind
     * @return empty if no tie is ahead of which both clubs are known
     */
    public static Optional<DayProblem> of(
            Event event,
            ClubId club,
            List<PrivateNote> own,
            Function<TieId, LineupInputs> problem,
            Map<TieId, Double> weights,
            DayProblem.Wanted wanted,
            Instant now) {
        ClubDay day = new ClubDay(event, club, own);
        List<Tie> ties = event.ties().values().stream()
                .filter(tie -> tie.has(club))
                .sorted(inOrder())
                .toList();
        List<DayProblem.Ahead> ahead = new ArrayList<>();
        int starts = 0;
        for (Tie tie : ties) {
            if (tie.isReady() && ClubDay.isAhead(event, tie, club)) {
                starts = minute(tie, starts);
                ahead.add(new DayProblem.Ahead(
                        tie.id(), problem.apply(tie.id()).problem(), weights.getOrDefault(tie.id(), 1.0), starts));
            }
        }
        if (ahead.isEmpty()) {
            return Optional.empty();
        }
        Tie next = event.tie(ahead.get(0).id()).orElseThrow();
        Freshness fresh = DayLoads.of(event, next, Optional.of(now), Freshness.Cost.USUAL);
        ClubDay.Had had = day.had(Optional.empty());
        Map<PlayerId, DayProblem.Before> before = new HashMap<>();
        for (Player player : event.squad(club)) {
            PlayerId id = player.id();
            before.put(id, new DayProblem.Before(had.all(id), ended(fresh, id, ahead.get(0)), inARow(ties, club, id)));
        }
        return Optional.of(new DayProblem(ahead, before, due(day, wanted), Freshness.Cost.USUAL));
    }

    /** At which minute of the day it starts, never before the one before it. */
    private static int minute(Tie tie, int before) {
        return tie.start()
                .map(time -> Math.max(before, time.toSecondOfDay() / 60))
                .orElse(before + UNKNOWN_GAP);
    }

    /** Minute of the day at which the player left the court last; empty for one who has not played. */
    private static OptionalInt ended(Freshness fresh, PlayerId player, DayProblem.Ahead next) {
        OptionalInt minutes = fresh.load(player).minutes();
        return minutes.isPresent() ? OptionalInt.of(next.starts() - minutes.getAsInt()) : OptionalInt.empty();
    }

    private static DayProblem.Wanted due(ClubDay day, DayProblem.Wanted wanted) {
        List<TiePlaces> later = day.ahead().stream()
                .filter(tie -> !tie.isReady())
                .map(day::granted)
                .toList();
        Map<PlayerId, Integer> promised = new HashMap<>();
        wanted.promised()
                .forEach((player, rubbers) -> promised.put(
                        player,
                        Math.max(
                                0,
                                rubbers
                                        - later.stream()
                                                .mapToInt(tie -> tie.most(player))
                                                .sum())));
        return new DayProblem.Wanted(wanted.floor(), promised, wanted.mostInARow(), wanted.learning());
    }

    private static Comparator<Tie> inOrder() {
        return Comparator.comparing((Tie tie) -> tie.start().orElse(java.time.LocalTime.MAX))
                .thenComparingInt(Tie::round)
                .thenComparing(Tie::id);
    }

    /** Opened ties in a row, the last one first, in which the player was named. */
    private static int inARow(List<Tie> ties, ClubId club, PlayerId player) {
        int run = 0;
        for (Tie tie : ties) {
            if (tie.isOpened()) {
                Side side = tie.sideOf(club).orElseThrow();
                boolean named = tie.opened().values().stream()
                        .anyMatch(rubber -> rubber.pair(side)
                                .filter(pair -> pair.has(player))
                                .isPresent());
                run = named ? run + 1 : 0;
            }
        }
        return run;
    }
}
