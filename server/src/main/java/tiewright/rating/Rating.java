package tiewright.rating;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
    private static final double LEAST_VARIANCE = 1e-12;

    private final Unknowns unknowns;
    private final Evidence evidence;
    private final Map<String, ScoreCurve> curves = new HashMap<>();

    private Rating(Prior prior, Evidence evidence) {
        this.evidence = evidence;
        this.unknowns = Unknowns.of(prior, evidence);
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
        List<Estimate> priors = unknowns.priors();
        double[] mean = priors.stream().mapToDouble(Estimate::mean).toArray();
        double[] precision = priors.stream()
                .mapToDouble(each -> 1 / Math.max(each.variance(), LEAST_VARIANCE))
                .toArray();
        return new Strengths(unknowns, Laplace.fit(mean, precision, observations()));
    }

    private List<Observation> observations() {
        List<Observation> all = new ArrayList<>();
        for (PastGame game : evidence.games()) {
            boolean homeWon = game.score().home() > game.score().away();
            Pair winner = homeWon ? game.home() : game.away();
            Pair loser = homeWon ? game.away() : game.home();
            Score score = homeWon ? game.score() : game.score().swapped();
            PastGame asWon = new PastGame(game.date(), winner, loser, score, game.format());
            all.add(unknowns.observed(asWon, curve(game.format(), score).weighing(evidence.weight(game.date()))));
        }
        for (FilmedGame film : evidence.films()) {
            double weight = film.played().map(evidence::weight).orElse(1.0);
            rallies(film, film.one(), film.two(), film.byOne(), weight, all);
            rallies(film, film.two(), film.one(), film.byTwo(), weight, all);
        }
        return all;
    }

    private ScoreCurve curve(Format format, Score score) {
        return curves.computeIfAbsent(format.code() + " " + score, any -> new ScoreCurve(format, score));
    }

    private void rallies(
            FilmedGame film,
            Pair serving,
            Pair receiving,
            FilmedGame.Served served,
            double weight,
            List<Observation> all) {
        if (served.rallies() > 0) {
            RallyCount count = new RallyCount(
                    weight * served.won(),
                    weight * served.rallies(),
                    RallyModel.serveLogit(film.format()),
                    RallyModel.LOGIT_PER_RALLY);
            all.add(unknowns.observed(serving, receiving, film.format().kind(), count));
        }
    }
}
