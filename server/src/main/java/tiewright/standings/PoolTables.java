package tiewright.standings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.conditions.Conditions;
import tiewright.conditions.OvertimePoints;
import tiewright.conditions.StopWhenDecided;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.OfficialFact;
import tiewright.event.SlotSource;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.event.TieScore;

/** What the table of a pool is worked out from: the event's ties under the event's conditions. */
public final class PoolTables {
    private PoolTables() {}

    /** The input of {@link Standings} and {@link Needs} for one pool. */
    public static TableInput input(Event event, String pool) {
        List<ClubId> clubs = event.pools().getOrDefault(pool, List.of());
        List<Tie> ties = event.tiesOfPool(pool);
        Map<ClubId, Treatment> withdrawals = new HashMap<>();
        clubs.forEach(club -> Optional.ofNullable(event.withdrawals().get(club))
                .ifPresent(withdrawn -> withdrawals.put(club, treatment(withdrawn))));
        List<LotDrawn> lots = event.lots().getOrDefault(pool, List.of()).stream()
                .map(lot -> new LotDrawn(lot.order(), lot.witness()))
                .toList();
        return new TableInput(clubs, scores(event, ties), rules(event.conditions()), withdrawals, lots);
    }

    /** How the conditions want a table made. */
    public static TableRules rules(Conditions conditions) {
        boolean capped = conditions.overtimePoints() == OvertimePoints.CAPPED;
        Optional<Games> decider = conditions.hasDecider()
                ? Optional.of(Games.of(conditions.deciderScoring(), 1, capped))
                : Optional.empty();
        TieShape shape = new TieShape(
                conditions.rubbers(),
                conditions.stopWhenDecided() == StopWhenDecided.ALL,
                Games.of(conditions.scoring(), conditions.bestOf(), capped),
                decider,
                conditions.tieRubbers().weights());
        Procedure procedure = Procedure.parse(conditions.levelTeams()).orElseThrow();
        return new TableRules(PointsForTie.of(conditions), procedure, shape, conditions.walkoverScore());
    }

    /** How many clubs of a pool go on into the knockout as it is drawn; 1 where none is drawn. */
    public static int through(Event event, String pool) {
        long places = event.ties().values().stream()
                .flatMap(tie -> java.util.stream.Stream.of(tie.home(), tie.away()))
                .flatMap(slot -> slot.from().stream())
                .filter(source -> source.kind() == SlotSource.Kind.POOL_PLACE
                        && source.of().equals(pool))
                .map(SlotSource::place)
                .distinct()
                .count();
        return Math.max(1, (int) places);
    }

    private static List<TieScore> scores(Event event, List<Tie> ties) {
        List<TieScore> scores = new ArrayList<>();
        for (Tie tie : ties) {
            event.progress(tie)
                    .score(tie)
                    .ifPresent(score -> scores.add(isAfterWithdrawal(event, ties, tie) ? notPlayed(score) : score));
        }
        return scores;
    }

    private static TieScore notPlayed(TieScore score) {
        return score.with(List.of(), false);
    }

    /** A tie of a club that had gone home before it: what stands there was not played by that club. */
    private static boolean isAfterWithdrawal(Event event, List<Tie> ties, Tie tie) {
        return event.withdrawals().values().stream()
                .filter(withdrawn -> tie.has(withdrawn.club()))
                .anyMatch(withdrawn -> withdrawn
                        .afterTie()
                        .filter(last -> isAfter(ties, withdrawn.club(), last, tie))
                        .isPresent());
    }

    private static boolean isAfter(List<Tie> ties, ClubId club, TieId last, Tie tie) {
        List<TieId> inOrder = ties.stream()
                .filter(each -> each.has(club))
                .sorted(java.util.Comparator.comparingInt(Tie::round))
                .map(Tie::id)
                .toList();
        int end = inOrder.indexOf(last);
        return end >= 0 && inOrder.indexOf(tie.id()) > end;
    }

    private static Treatment treatment(OfficialFact.ClubWithdrawn withdrawn) {
        return switch (withdrawn.treatment()) {
            case ANNUL -> Treatment.ANNUL;
            case KEEP -> Treatment.KEEP;
            case AWARD -> Treatment.AWARD;
        };
    }
}
