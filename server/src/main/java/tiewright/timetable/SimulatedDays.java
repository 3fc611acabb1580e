package tiewright.timetable;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.random.RandomGenerator;
import tiewright.conditions.Conditions;
import tiewright.conditions.RubberWeights;

/**
 * Plays a plan again and again with rubbers of random length. A tie never begins before its planned time, for that is a
 * promise; it begins later when a court is not free or a club has not rested. Level ties get their decider.
 */
final class SimulatedDays {
    private final Board board;
    private final Spot[] spots;
    private final Conditions conditions;
    private final Pace pace;
    private final RubberDraws rubbers;
    private final RubberDraws deciders;
    private final List<Piece> order;

    SimulatedDays(Board board, Spot[] spots, Conditions conditions, Pace pace, RandomGenerator random) {
        this.board = board;
        this.spots = spots;
        this.conditions = conditions;
        this.pace = pace;
        this.rubbers = new RubberDraws(conditions.scoring(), conditions.bestOf(), pace);
        this.deciders = new RubberDraws(conditions.deciderScoring(), 1, pace);
        this.order = board.pieces().stream()
                .sorted(Comparator.comparing((Piece piece) -> spots[piece.number()].start()))
                .toList();
    }

    /** Minute of the day at which the last rally of one day is over. */
    double end(RandomGenerator random) {
        double[] courtFree = new double[board.courts()];
        double[] over = new double[board.pieces().size()];
        double last = board.base();
        for (Piece piece : order) {
            Spot spot = spots[piece.number()];
            double start = spot.start();
            for (int court = 0; court < courtFree.length; court++) {
                start = isOn(spot, court) ? Math.max(start, courtFree[court]) : start;
            }
            for (Link link : board.linksOf(piece.number())) {
                int other = link.a() == piece.number() ? link.b() : link.a();
                boolean rests = link.kind() == Link.Kind.CLUB || link.kind() == Link.Kind.SOURCE;
                start = rests && over[other] > 0 ? Math.max(start, over[other] + board.rest()) : start;
            }
            double end = play(piece, spot, start, courtFree, random);
            over[piece.number()] = end;
            last = Math.max(last, end);
        }
        return last;
    }

    private double play(Piece piece, Spot spot, double start, double[] courtFree, RandomGenerator random) {
        int[] courts = java.util.stream.IntStream.range(0, courtFree.length)
                .filter(court -> isOn(spot, court))
                .toArray();
        double[] free = new double[courts.length];
        Arrays.fill(free, start);
        double end = start;
        for (int i = 0; i < piece.rubbers().size(); i++) {
            int on = i % free.length;
            double over = free[on] + rubbers.draw(random);
            end = Math.max(end, over);
            free[on] = over + pace.turnoverMinutes();
        }
        if (isLastOfTie(piece) && isLevel(random)) {
            end += pace.turnoverMinutes() + deciders.draw(random);
            free[0] = Math.max(free[0], end + pace.turnoverMinutes());
        }
        for (int i = 0; i < courts.length; i++) {
            courtFree[courts[i]] = free[i];
        }
        return end;
    }

    private static boolean isOn(Spot spot, int court) {
        return (spot.courts() >> court & 1) == 1;
    }

    private boolean isLastOfTie(Piece piece) {
        return board.pieces().stream()
                .noneMatch(other -> other.tie() == piece.tie() && other.number() > piece.number());
    }

    private boolean isLevel(RandomGenerator random) {
        RubberWeights weights = conditions.tieRubbers().weights();
        if (!conditions.expectsDeciders()) {
            return false;
        }
        int won = 0;
        for (int rubber = 1; rubber <= conditions.rubbers(); rubber++) {
            won += random.nextBoolean() ? weights.of(rubber) : 0;
        }
        return 2 * won == weights.total(conditions.rubbers());
    }
}
