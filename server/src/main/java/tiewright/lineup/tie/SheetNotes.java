package tiewright.lineup.tie;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Reason;
import tiewright.lineup.Squad;
import tiewright.lineup.Wish;
import tiewright.lineup.Wishes;

/** The reasons of a proposal: which pair why, which wish at what price, what is assumed. */
final class SheetNotes {
    static final double WORTH_SAYING = 0.001; // a tenth of a percentage point; the draws tell no less apart

    private static final double TIRED = 0.5; // rallies per 100

    private final Board board;
    private final Ranking ranking;
    private final boolean orderMatters;

    SheetNotes(Board board, Ranking ranking, boolean orderMatters) {
        this.board = board;
        this.ranking = ranking;
        this.orderMatters = orderMatters;
    }

    /** Pair by pair, then who rests and what is promised. */
    List<Reason> of(int[] line) {
        List<Reason> reasons = new ArrayList<>();
        for (int rubber = 0; rubber < line.length; rubber++) {
            reasons.add(rubber(line, rubber));
        }
        List<PlayerId> named = board.sheet(line).players();
        List<PlayerId> resting = board.players().stream()
                .filter(player -> !named.contains(player))
                .toList();
        if (!resting.isEmpty()) {
            reasons.add(Reason.of("resting").with("players", resting));
        }
        tired(named).ifPresent(reasons::add);
        if (board.problem().purpose().learning()) {
            reasons.add(Reason.of("learning").with("bits", Math.round(board.learnt(line) * 100) / 100.0 + ""));
        }
        int missing = board.owed().missingToFloor(line);
        if (missing > 0) {
            reasons.add(Reason.of("short-of-promise")
                    .with("rubbers", missing)
                    .with("floor", board.problem().purpose().playingTime().floor()));
        }
        reasons.addAll(PromiseNotes.unkept(board, line));
        return reasons;
    }

    /** Those named who have not rested enough, by what the model takes off. */
    private Optional<Reason> tired(List<PlayerId> named) {
        List<PlayerId> tired = named.stream()
                .filter(player -> board.problem().freshness().loss(player) >= TIRED)
                .toList();
        return tired.isEmpty()
                ? Optional.empty()
                : Optional.of(Reason.of("tired").with("players", tired));
    }

    private Reason rubber(int[] line, int rubber) {
        RubberNo number = RubberNo.of(rubber + 1);
        Optional<Double> chance = board.rubberChance(line, rubber);
        if (line[rubber] == Board.EMPTY) {
            return Reason.of(chance.isEmpty() ? "rubber-void" : "rubber-given-away")
                    .with("rubber", number);
        }
        Pair pair = board.pairs().get(line[rubber]);
        boolean unopposed = Arrays.stream(board.expectedLines()).allMatch(theirs -> theirs[rubber] == Board.EMPTY);
        if (unopposed) {
            return Reason.of("rubber-unopposed").with("rubber", number).with("pair", pair);
        }
        return Reason.of("pair")
                .with("rubber", number)
                .with("pair", pair)
                .with("rating", board.problem().strengths().rating(pair))
                .with("extra", board.problem().strengths().extra(pair))
                .with("chance", chance.orElseThrow());
    }

    /** What each wish costs: the best sheet without it against the best with it. Only where every sheet was tried. */
    List<Reason> wishCosts() {
        List<Reason> reasons = new ArrayList<>();
        LineupProblem problem = board.problem();
        Wishes.idle(problem).forEach(wish -> reasons.add(wish("wish-idle", wish)));
        for (Wish wish : problem.wishes()) {
            if (ranking.complete() && Wishes.isBinding(wish, problem.ours())) {
                List<Wish> others = problem.wishes().stream()
                        .filter(other -> !other.equals(wish))
                        .toList();
                Board without = new Board(problem.withWishes(others));
                double best = without.worth()
                        .of(Ranking.of(without, orderMatters, 1).best().get(0).line());
                double cost = Math.max(
                        0, best - board.worth().of(ranking.best().get(0).line()));
                reasons.add(
                        cost > WORTH_SAYING
                                ? wish("wish-costs", wish)
                                        .costing(cost, problem.purpose().aim())
                                : wish("wish-free", wish));
            }
        }
        return reasons;
    }

    /** What too few players cost: rubbers that nobody can fill, and players who would be named if they were here. */
    List<Reason> shortness() {
        List<Reason> reasons = new ArrayList<>();
        int[] line = ranking.best().get(0).line();
        double best = board.worth().of(line);
        if (board.seating().count() < line.length) {
            double even = board.worth().withEvenPairs(line);
            reasons.add(Reason.of("short-squad")
                    .with("rubbers", line.length - board.seating().count())
                    .costing(Math.max(0, even - best), board.problem().purpose().aim()));
        }
        absence(best).ifPresent(reasons::add);
        return reasons;
    }

    /** What it costs that not everybody is here. */
    private Optional<Reason> absence(double best) {
        List<PlayerId> absent = board.problem().ours().members().stream()
                .filter(member -> !member.present())
                .map(Squad.Member::id)
                .sorted()
                .toList();
        if (absent.isEmpty() || !ranking.complete()) {
            return Optional.empty();
        }
        Board everybody = new Board(board.problem().withEverybody());
        Ranking all = Ranking.of(everybody, orderMatters, 1);
        if (!all.complete() || all.best().isEmpty()) {
            return Optional.empty();
        }
        double cost = Math.max(0, everybody.worth().of(all.best().get(0).line()) - best);
        return Optional.of(Reason.of("absence-costs")
                .with("players", absent)
                .costing(cost, board.problem().purpose().aim()));
    }

    /** What holds for every sheet of the proposal. */
    List<Reason> ofAll() {
        List<Reason> reasons = new ArrayList<>(shortness());
        if (board.problem().purpose().aim().isSettled()) {
            reasons.add(Reason.of("nothing-hangs"));
        }
        if (!orderMatters) {
            reasons.add(Reason.of("order-free"));
        }
        reasons.add(Reason.of(board.problem().belief().sheets().size() == 1 ? "expects-one-sheet" : "expects-any")
                .with("sheets", board.problem().belief().sheets().size()));
        reasons.add(
                Reason.of(ranking.complete() ? "every-sheet-tried" : "searched").with("tried", ranking.tried()));
        reasons.add(Reason.of("small-samples"));
        return reasons;
    }

    static Reason wish(String kind, Wish wish) {
        return Reason.of(kind).with("wish", wish);
    }
}
