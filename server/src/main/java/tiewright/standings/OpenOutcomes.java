package tiewright.standings;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.TieScore;

/**
 * Every way in which an open tie can end: each score in rubbers, and under it each score in games. All rubbers are played
 * unless a tie may stop when it is decided; then both are foreseen. A rubber that both sides leave empty is not.
 */
final class OpenOutcomes {
    private final TieCounter counter;
    private final TableRules rules;
    private final TieScore tie;
    private final CountedTie decided;
    private final List<OpenOutcome> all = new ArrayList<>();

    private OpenOutcomes(TieScore tie, TieCounter counter, TableRules rules) {
        this.tie = tie;
        this.counter = counter;
        this.rules = rules;
        this.decided = counter.count(tie);
    }

    static List<OpenOutcome> of(TieScore tie, TieCounter counter, TableRules rules) {
        OpenOutcomes outcomes = new OpenOutcomes(tie, counter, rules);
        Set<End> ends = new LinkedHashSet<>(List.of(End.NOTHING));
        for (int weight : outcomes.weightsLeft()) {
            Set<End> more = new LinkedHashSet<>();
            ends.forEach(end -> {
                more.add(end.wonByHome(weight));
                more.add(end.wonByAway(weight));
                if (rules.shape().stopsWhenDecided()) {
                    more.add(end.notPlayed(weight));
                }
            });
            ends = more;
        }
        ends.stream().filter(outcomes::canBe).forEach(outcomes::withDecider);
        return outcomes.all;
    }

    /** Who wins how many of the rubbers left, and what they weigh together. */
    private record End(int home, int away, int homeWeight, int awayWeight, int unplayedWeight) {
        static final End NOTHING = new End(0, 0, 0, 0, 0);

        End wonByHome(int weight) {
            return new End(home + 1, away, homeWeight + weight, awayWeight, unplayedWeight);
        }

        End wonByAway(int weight) {
            return new End(home, away + 1, homeWeight, awayWeight + weight, unplayedWeight);
        }

        End notPlayed(int weight) {
            return new End(home, away, homeWeight, awayWeight, unplayedWeight + weight);
        }
    }

    /** A tie stops only when what is not played can change nothing. */
    private boolean canBe(End end) {
        return end.unplayedWeight() == 0 || Math.abs(lead(end)) > end.unplayedWeight();
    }

    private int lead(End end) {
        return tie.weightWon(Side.HOME) + end.homeWeight() - tie.weightWon(Side.AWAY) - end.awayWeight();
    }

    private List<Integer> weightsLeft() {
        TieShape shape = rules.shape();
        return RubberNo.upTo(shape.rubbers()).stream()
                .filter(rubber ->
                        tie.rubbers().stream().noneMatch(score -> score.rubber().equals(rubber)))
                .map(rubber -> rubber.weight(shape.weights()))
                .toList();
    }

    private void withDecider(End end) {
        if (lead(end) == 0 && rules.shape().decider().isPresent()) {
            withGames(end, 1, 0);
            withGames(end, 0, 1);
        } else {
            withGames(end, 0, 0);
        }
    }

    /** The loser of a rubber wins any number of games short of those that take it. */
    private void withGames(End end, int deciderHome, int deciderAway) {
        End whole = new End(
                end.home() + deciderHome,
                end.away() + deciderAway,
                end.homeWeight() + deciderHome,
                end.awayWeight() + deciderAway,
                0);
        for (OpenGames rubbers : OpenGames.of(rules.shape().games(), end.home(), end.away())) {
            for (OpenGames decider : OpenGames.of(rules.shape().games(RubberNo.DECIDER), deciderHome, deciderAway)) {
                add(whole, rubbers, decider);
            }
        }
    }

    /** Games that the two sides win in rubbers not yet played. */
    private record OpenGames(Games kind, int home, int away) {
        static List<OpenGames> of(Games kind, int homeRubbers, int awayRubbers) {
            List<OpenGames> all = new ArrayList<>();
            for (int byHome = 0; byHome <= (kind.toWin() - 1) * awayRubbers; byHome++) {
                for (int byAway = 0; byAway <= (kind.toWin() - 1) * homeRubbers; byAway++) {
                    all.add(new OpenGames(
                            kind, kind.toWin() * homeRubbers + byHome, kind.toWin() * awayRubbers + byAway));
                }
            }
            return all;
        }

        OpenPoints points() {
            return OpenPoints.of(kind, home, away);
        }
    }

    private void add(End end, OpenGames rubbers, OpenGames decider) {
        Result result = Result.ofLead(lead(end));
        SideCount forHome = side(Side.HOME, result, end, rubbers.home() + decider.home());
        SideCount forAway = side(Side.AWAY, result.other(), end, rubbers.away() + decider.away());
        CountedTie ended = new CountedTie(tie.tie(), counter.home(tie), counter.away(tie), result, forHome, forAway);
        all.add(new OpenOutcome(ended, rubbers.points().and(decider.points())));
    }

    private SideCount side(Side side, Result result, End end, int gamesMore) {
        SideCount before = side == Side.HOME ? decided.forHome() : decided.forAway();
        int weight = tie.weightWon(side) + (side == Side.HOME ? end.homeWeight() : end.awayWeight());
        int games = before.games() + gamesMore;
        return new SideCount(
                rules.points().played(result, weight, games),
                result == Result.WON ? 1 : 0,
                before.rubbers() + (side == Side.HOME ? end.home() : end.away()),
                games,
                before.points());
    }
}
