package tiewright.standings;

import java.util.ArrayList;
import java.util.List;
import tiewright.event.RubberNo;
import tiewright.event.RubberScore;
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
        int left = outcomes.rubbersLeft();
        for (int played = left; played >= 0; played--) {
            for (int home = played; home >= 0; home--) {
                if (played == left || outcomes.mayStop(home, played - home, left - played)) {
                    outcomes.withDecider(home, played - home);
                }
            }
        }
        return outcomes.all;
    }

    private boolean mayStop(int home, int away, int unplayed) {
        return rules.shape().stopsWhenDecided() && Math.abs(lead(home, away)) > unplayed;
    }

    private int lead(int home, int away) {
        return decided.forHome().rubbers() + home - decided.forAway().rubbers() - away;
    }

    private int rubbersLeft() {
        long played = tie.rubbers().stream()
                .map(RubberScore::rubber)
                .filter(rubber -> !rubber.isDecider())
                .count();
        return Math.max(0, rules.shape().rubbers() - (int) played);
    }

    private void withDecider(int home, int away) {
        if (lead(home, away) == 0 && rules.shape().decider().isPresent()) {
            withGames(home, away, 1, 0);
            withGames(home, away, 0, 1);
        } else {
            withGames(home, away, 0, 0);
        }
    }

    /** The loser of a rubber wins any number of games short of those that take it. */
    private void withGames(int home, int away, int deciderHome, int deciderAway) {
        for (OpenGames rubbers : OpenGames.of(rules.shape().games(), home, away)) {
            for (OpenGames decider : OpenGames.of(rules.shape().games(RubberNo.DECIDER), deciderHome, deciderAway)) {
                add(home + deciderHome, away + deciderAway, rubbers, decider);
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

    private void add(int home, int away, OpenGames rubbers, OpenGames decider) {
        Result result = Result.ofLead(lead(home, away));
        SideCount forHome = side(decided.forHome(), result, home, rubbers.home() + decider.home());
        SideCount forAway = side(decided.forAway(), result.other(), away, rubbers.away() + decider.away());
        CountedTie ended = new CountedTie(tie.tie(), counter.home(tie), counter.away(tie), result, forHome, forAway);
        all.add(new OpenOutcome(ended, rubbers.points().and(decider.points())));
    }

    private SideCount side(SideCount decided, Result result, int rubbers, int games) {
        return new SideCount(
                rules.tiePoints(result),
                result == Result.WON ? 1 : 0,
                decided.rubbers() + rubbers,
                decided.games() + games,
                decided.points());
    }
}
