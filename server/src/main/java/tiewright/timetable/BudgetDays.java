package tiewright.timetable;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import tiewright.conditions.Conditions;
import tiewright.draw.PoolPlan;
import tiewright.draw.PoolTie;
import tiewright.event.ClubId;
import tiewright.event.RubberNo;
import tiewright.event.Stage;
import tiewright.event.TieId;

/** A day that has a shape and no draw yet: its ties, a plan for them, and how such days go. */
final class BudgetDays {
    private final TimeBudget.Shape shape;
    private final Conditions conditions;
    private final List<PlanTie> ties = new ArrayList<>();

    private BudgetDays(TimeBudget.Shape shape, Conditions conditions) {
        this.shape = shape;
        this.conditions = conditions;
        for (int pool = 0; pool < shape.pools(); pool++) {
            addPool(pool);
        }
        addKnockout();
    }

    static TimeBudget budget(TimeBudget.Shape shape, Conditions conditions, Pace pace, long seed) {
        RubberTime time = RubberTime.of(conditions, pace);
        int slot = SlotLength.of(conditions, pace);
        BudgetDays day = new BudgetDays(shape, conditions);
        Board board = new Board(ProblemReader.widest(day.problem(slot), conditions.rubbers()));
        Spot[] spots = Starts.best(board, Starts.USUAL_TRIES, seed)
                .orElseThrow(); // courts that are open all day take every tie
        int needed = Arrays.stream(spots).mapToInt(Spot::end).max().orElse(board.base()) - board.base();
        Random random = new Random(seed);
        SimulatedDays days = new SimulatedDays(board, spots, conditions, pace, random);
        double[] ends = IntStream.range(0, TimeBudget.USUAL_DAYS)
                .mapToDouble(i -> days.end(random))
                .sorted()
                .toArray();
        int closes = Clock.minute(shape.closes());
        int fit = (int) Arrays.stream(ends).filter(end -> end <= closes).count();
        return new TimeBudget(
                board.problem().rubbers(),
                day.deciders(),
                time.mean(),
                time.sd(),
                slot,
                board.problem().courtsPerTie(),
                needed,
                closes - board.base(),
                fit,
                ends.length,
                at(ends, 0.1),
                at(ends, 0.5),
                at(ends, 0.9));
    }

    private static java.time.LocalTime at(double[] ends, double share) {
        return Clock.time((int) Math.ceil(ends[(int) (share * (ends.length - 1))]));
    }

    private PlanProblem problem(int slot) {
        List<PlanCourt> courts = IntStream.rangeClosed(1, shape.courts())
                .mapToObj(i -> PlanCourt.always("" + i))
                .toList();
        return PlanProblem.free(
                new Slots(shape.starts(), slot, conditions.restMinutes(), Optional.of(shape.closes())),
                courts,
                ties,
                Manner.of(conditions.tiePlay()).together(true));
    }

    private double deciders() {
        if (!conditions.expectsDeciders()) {
            return 0;
        }
        return ties.size() * ExpectedDeciders.levelChance(conditions.tieRubbers());
    }

    private void addPool(int pool) {
        List<ClubId> clubs = IntStream.range(0, shape.clubs())
                .filter(club -> club % shape.pools() == pool)
                .mapToObj(club -> ClubId.of("C" + (club + 1)))
                .toList();
        for (PoolTie tie : PoolPlan.ties("G" + (pool + 1), clubs)) {
            ties.add(new PlanTie(
                    tie.tie(),
                    Stage.POOL,
                    Optional.of(tie.pool()),
                    tie.round(),
                    Optional.of(tie.home()),
                    Optional.of(tie.away()),
                    rubbers(),
                    isOneAtATime(),
                    Set.of()));
        }
    }

    /** Half of what is left in each round, the last two at once: a final and the tie for third. */
    private void addKnockout() {
        Set<TieId> before = new HashSet<>();
        ties.forEach(tie -> before.add(tie.id()));
        int left = shape.knockoutTies();
        for (int round = 1; left > 0; round++) {
            int now = left <= 2 && round > 1 ? left : (left + 1) / 2;
            Set<TieId> these = new HashSet<>();
            for (int i = 1; i <= now; i++) {
                TieId id = TieId.of("KO" + round + "." + i);
                these.add(id);
                ties.add(knockout(id, round, before));
            }
            before.clear();
            before.addAll(these);
            left -= now;
        }
    }

    private PlanTie knockout(TieId id, int round, Set<TieId> before) {
        return new PlanTie(
                id,
                Stage.KNOCKOUT,
                Optional.empty(),
                round,
                Optional.empty(),
                Optional.empty(),
                rubbers(),
                isOneAtATime(),
                before);
    }

    private boolean isOneAtATime() {
        return conditions.maxRubbersPerPlayer() > 1;
    }

    private List<RubberNo> rubbers() {
        return RubberNo.upTo(conditions.rubbers());
    }
}
