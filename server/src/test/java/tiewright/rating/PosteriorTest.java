package tiewright.rating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

/**
 * The same games and film in R 4.2.2 (plain R: optim, optimHess, splinefun), by the script posterior.R that lies beside the
 * tables: chain, search and second derivatives there are not ours.
 */
class PosteriorTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 28);
    private static final double AGREES = 1e-3; // rallies in 100
    private static Strengths strengths;

    @BeforeAll
    static void fit() {
        Map<PlayerId, Estimate> forms = new HashMap<>();
        Map<Pair, Estimate> extras = new HashMap<>();
        for (CSVRecord row : Rows.of("posterior-prior.csv")) {
            Estimate judged = Estimate.of(number(row, "mean"), number(row, "sd"));
            if (row.get("what").equals("form")) {
                forms.put(PlayerId.of(row.get("name")), judged);
            } else {
                extras.put(pair(row.get("name")), judged);
            }
        }
        List<PastGame> games = new ArrayList<>();
        for (CSVRecord row : Rows.of("posterior-games.csv")) {
            games.add(new PastGame(
                    DAY,
                    Pair.of(row.get("home_1"), row.get("home_2")),
                    Pair.of(row.get("away_1"), row.get("away_2")),
                    Score.of(count(row, "home"), count(row, "away")),
                    Format.parse(row.get("format")).orElseThrow()));
        }
        List<FilmedGame> films = new ArrayList<>();
        for (CSVRecord row : Rows.of("posterior-film.csv")) {
            films.add(new FilmedGame(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(DAY),
                    Format.parse(row.get("format")).orElseThrow(),
                    Pair.of(row.get("one_1"), row.get("one_2")),
                    Pair.of(row.get("two_1"), row.get("two_2")),
                    Optional.empty(),
                    new FilmedGame.Served(count(row, "served_1"), count(row, "won_1")),
                    new FilmedGame.Served(count(row, "served_2"), count(row, "won_2"))));
        }
        strengths = Rating.fit(new Prior(forms, extras), new Evidence(games, films, Ageing.none()));
    }

    private static Estimate ours(String what, String name) {
        return switch (what) {
            case "form" -> strengths.form(PlayerId.of(name));
            case "extra" -> strengths.extra(pair(name));
            case "serving" ->
                strengths
                        .serving(Format.parse(name + "-11").orElseThrow().kind())
                        .orElseThrow();
            case "edge" -> strengths.edge(pair(name.split(" ")[0]), pair(name.split(" ")[1]));
            default -> throw new AssertionError(what);
        };
    }

    private static Pair pair(String name) {
        return Pair.of(name.split("\\+")[0], name.split("\\+")[1]);
    }

    private static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }

    private static int count(CSVRecord row, String column) {
        return Integer.parseInt(row.get(column));
    }

    @Test
    void a_general_statistics_package_finds_the_same_strengths_and_doubts() {
        List<CSVRecord> rows = Rows.of("posterior.csv");
        assertThat(rows).hasSizeGreaterThan(25);
        for (CSVRecord row : rows) {
            Estimate ours = ours(row.get("what"), row.get("name"));
            assertThat(ours.mean()).as(row.toString()).isCloseTo(number(row, "estimate"), within(AGREES));
            assertThat(ours.sd()).as(row.toString()).isCloseTo(number(row, "sd"), within(AGREES));
        }
    }

    /** What is drawn has the means and standard deviations that the package found, to rounding. */
    @Test
    void what_is_drawn_has_the_same_spread() {
        List<Rated> pairs = List.of(Rated.together(pair("a1+a2")), Rated.together(pair("b1+b2")));
        CSVRecord row = Rows.of("posterior.csv").stream()
                .filter(each -> each.get("name").equals("a1+a2 b1+b2"))
                .findFirst()
                .orElseThrow();
        double sd = number(row, "sd");
        for (long seed = 1; seed <= 20; seed++) {
            Joint joint = strengths.drawnBy(seed).joint(pairs);
            double[] one = joint.draws(pairs.get(0));
            double[] other = joint.draws(pairs.get(1));
            double[] edges = new double[Draws.COUNT];
            Arrays.setAll(edges, i -> one[i] - other[i]);
            double mean = Arrays.stream(edges).average().orElseThrow();
            double square = Arrays.stream(edges)
                    .map(edge -> (edge - mean) * (edge - mean))
                    .average()
                    .orElseThrow();
            assertThat(mean).as("seed " + seed).isCloseTo(number(row, "estimate"), within(AGREES));
            assertThat(Math.sqrt(square)).as("seed " + seed).isCloseTo(sd, within(AGREES));
            assertThat(joint.edge(pairs.get(0), pairs.get(1)).sd()).isCloseTo(sd, within(AGREES));
        }
        assertThat(strengths.drawnBy(7).joint(pairs).draws(pairs.get(0)))
                .isEqualTo(strengths.drawnBy(7).joint(pairs).draws(pairs.get(0)));
    }
}
