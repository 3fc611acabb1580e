package tiewright.rating;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.Pair;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

/**
 * The strengths after games and film: the most likely forms and extras given the prior and what was seen, with a normal
 * approximation around them (Laplace).
 *
 * <p>Each score counts through the exact chance of that score, see {@link RallyModel}; each filmed rally counts by itself.
 * How much serving is worth is learnt from film and held at its usual value for scores, which say next to nothing of it. A
 * pair that only ever plays together cannot be told apart into form and extra: the doubts then stay as wide as the prior
 * left them, and only their sum narrows.
 */
public final class Rating {
    private static final int MOST_LOOKS = 3; // each looks at the games from where the one before ended
    private static final int MOST_GAMES = 1_000; // the last: more would tell a spread no better than it is used

    private final Prior prior;
    private final Evidence evidence;
    private final Map<String, ScoreCurve> curves = new HashMap<>();

    private Rating(Prior prior, Evidence evidence) {
        this.prior = prior;
        this.evidence = evidence;
    }

    /** Strengths from final scores that all count the same; by the prior alone when there is no game. */
    public static Strengths fit(Prior prior, List<PastGame> games) {
        return fit(prior, Evidence.of(games));
    }

    /** Strengths from everything that is known; by the prior alone when nothing is. */
    public static Strengths fit(Prior prior, Evidence evidence) {
        return new Rating(prior, evidence).fit();
    }

    private Strengths fit() {
        Assumptions usual =
                Assumptions.of(evidence.stated(), evidence.ageing().halfLife().isPresent());
        return fit(evidence.size() < Spreads.FEWEST_GAMES ? usual : estimated(usual));
    }

    private Strengths fit(Assumptions assumptions) {
        Unknowns unknowns = Unknowns.of(prior, evidence, assumptions);
        return new Strengths(unknowns, posterior(unknowns, observations(unknowns)));
    }

    private static Laplace.Posterior posterior(Unknowns unknowns, List<Observation> observations) {
        return Laplace.fit(
                unknowns.means(unknowns.assumptions()), unknowns.precisions(unknowns.assumptions()), observations);
    }

    /** With the spreads that the games speak for, where they are not stated; forms that stand still say nearly the same of them in a tenth of the time. */
    private Assumptions estimated(Assumptions usual) {
        if (evidence.stated().hasSpreads()) {
            return usual;
        }
        if (evidence.size() > MOST_GAMES) {
            return new Rating(prior, evidence.latest(MOST_GAMES)).estimated(usual);
        }
        Assumptions found = usual.still();
        for (int look = 0; look < MOST_LOOKS; look++) {
            Assumptions before = found;
            found = looked(before);
            if (Spreads.settled(before, found)) {
                break;
            }
        }
        return usual.withSpreads(found.formSpread(), found.extraSpread());
    }

    private Assumptions looked(Assumptions from) {
        Unknowns unknowns = Unknowns.of(prior, evidence, from);
        List<Observation> observations = observations(unknowns);
        AboutMode about =
                new AboutMode(observations, posterior(unknowns, observations).mode());
        return new Spreads(evidence.stated(), (form, extra) -> {
                    Assumptions tried = from.withSpreads(form, extra);
                    return about.logChance(unknowns.means(tried), unknowns.precisions(tried));
                })
                .nearer(from);
    }

    private List<Observation> observations(Unknowns unknowns) {
        List<Observation> all = new ArrayList<>(unknowns.steps());
        for (PastGame game : evidence.games()) {
            boolean homeWon = game.score().home() > game.score().away();
            Pair winner = homeWon ? game.home() : game.away();
            Pair loser = homeWon ? game.away() : game.home();
            Score score = homeWon ? game.score() : game.score().swapped();
            PastGame asWon = new PastGame(game.date(), winner, loser, score, game.format(), game.rubber());
            all.add(unknowns.observed(
                    asWon, curve(unknowns, game.format(), score).weighing(evidence.weight(game.date()))));
        }
        for (FilmedGame film : evidence.films()) {
            double weight = film.played().map(evidence::weight).orElse(1.0);
            rallies(unknowns, film, true, weight).ifPresent(all::add);
            rallies(unknowns, film, false, weight).ifPresent(all::add);
        }
        return all;
    }

    private ScoreCurve curve(Unknowns unknowns, Format format, Score score) {
        return curves.computeIfAbsent(
                format.code() + " " + score,
                any -> new ScoreCurve(unknowns.assumptions().serving(), format, score));
    }

    private static Optional<Observation> rallies(Unknowns unknowns, FilmedGame film, boolean oneServes, double weight) {
        FilmedGame.Served served = oneServes ? film.byOne() : film.byTwo();
        if (served.rallies() == 0) {
            return Optional.empty();
        }
        RallyCount count = new RallyCount(
                weight * served.won(),
                weight * served.rallies(),
                RallyModel.serveLogit(unknowns.assumptions().serving(), film.format()),
                RallyModel.LOGIT_PER_RALLY);
        return Optional.of(unknowns.observed(film, oneServes, count));
    }
}
