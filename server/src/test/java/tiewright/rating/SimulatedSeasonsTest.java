package tiewright.rating;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.event.OfRubber;
import tiewright.event.PrivateNote;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

/**
 * Chances held against what comes, in seasons that are drawn rally by rally from clubs whose spreads are not those that are
 * expected (a way of our own). Said and won agree where the slope of a logistic regression of won games on the logit of what was
 * said is 1 (D. Cox, Biometrika 45, 1958, from memory).
 */
class SimulatedSeasonsTest {
    private static final boolean MANY = Boolean.getBoolean("many");
    private static final int PLAYERS = 16;
    private static final Format FORMAT = Format.rally(11);
    private static final LocalDate FIRST = LocalDate.of(2025, 1, 4);

    /** How a club differs: spread of forms, of extras, what games of a rubber share; and whether a rubber is best of three. */
    private record Club(double form, double extra, double shared, boolean threes) {}

    private static final List<Club> CLUBS = List.of(
            new Club(3, 0, 0, false),
            new Club(6, 3, 0, false),
            new Club(12, 0, 0, false),
            new Club(12, 3, 3.5, true),
            new Club(3, 3, 3.5, true),
            new Club(9, 1.5, 0, true));

    /** One season, drawn. */
    private static final class Season {
        private final Random random;
        private final Club club;
        private final double[] forms = new double[PLAYERS];
        private final Map<String, Double> extras = new HashMap<>();
        private final List<PrivateNote.PastGame> games = new ArrayList<>();
        private LocalDate day = FIRST;

        Season(Club club, Random random) {
            this.club = club;
            this.random = random;
            for (int i = 0; i < PLAYERS; i++) {
                forms[i] = club.form() * random.nextGaussian();
            }
        }

        /** So many games more, from a new day on: eight rubbers a day, every third day; the last rubber is played to its end. */
        List<PrivateNote.PastGame> play(int count) {
            int most = games.size() + count;
            while (games.size() < most) {
                for (int rubber = 0; rubber < 8 && games.size() < most; rubber++) {
                    rubber(day, "r" + rubber);
                }
                day = day.plusDays(3);
                for (int i = 0; i < PLAYERS; i++) {
                    forms[i] += 2.5 * Math.sqrt(3 / 365.25) * random.nextGaussian();
                }
            }
            return games;
        }

        private void rubber(LocalDate day, String name) {
            int[] four = random.ints(0, PLAYERS).distinct().limit(4).toArray();
            double edge = strength(four[0], four[1]) - strength(four[2], four[3]);
            int[] won = new int[2];
            if (club.threes()) {
                edge += club.shared() * random.nextGaussian();
            }
            Optional<OfRubber> rubber =
                    club.threes() ? Optional.of(new OfRubber(name, OptionalInt.of(3))) : Optional.empty();
            while (Math.max(won[0], won[1]) < (club.threes() ? 2 : 1)) {
                Score score = game(edge);
                won[score.home() > score.away() ? 0 : 1]++;
                games.add(new PrivateNote.PastGame(
                        day, "p" + four[0], "p" + four[1], "p" + four[2], "p" + four[3], score, FORMAT, rubber));
            }
        }

        private double strength(int one, int other) {
            String pair = Math.min(one, other) + "+" + Math.max(one, other);
            return (forms[one] + forms[other]) / 2
                    + extras.computeIfAbsent(pair, any -> club.extra() * random.nextGaussian());
        }

        private Score game(double edge) {
            int[] points = new int[2];
            boolean homeServes = random.nextBoolean();
            while (Math.max(points[0], points[1]) < FORMAT.target() || Math.abs(points[0] - points[1]) < 2) {
                double serving = RallyModel.serveChance(ServeRates.USUAL, FORMAT, homeServes ? edge : -edge);
                homeServes = homeServes == random.nextDouble() < serving;
                points[homeServes ? 0 : 1]++;
            }
            return Score.of(points[0], points[1]);
        }
    }

    /** Newton's method for the slope of won on said, on the logit scale; with its standard error. */
    private static double[] slope(List<Backtest.Line> lines) {
        double slope = 1;
        double bend = 1;
        for (int step = 0; step < 20; step++) {
            double rise = 0;
            bend = 0;
            for (Backtest.Line line : lines) {
                double said = Math.log(line.chance() / (1 - line.chance()));
                double now = 1 / (1 + Math.exp(-slope * said));
                rise += said * ((line.won() ? 1 : 0) - now);
                bend += said * said * now * (1 - now);
            }
            slope += rise / bend;
        }
        return new double[] {slope, 1 / Math.sqrt(bend)};
    }

    private static double loss(List<Backtest.Line> lines) {
        return lines.stream().mapToDouble(SimulatedSeasonsTest::loss).average().orElseThrow();
    }

    private static double loss(Backtest.Line line) {
        return -Math.log(line.won() ? line.chance() : 1 - line.chance());
    }

    /** How far the mean loss may be off by chance, one standard error, games taken as independent. */
    private static double doubt(List<Backtest.Line> lines) {
        double mean = loss(lines);
        double squares = lines.stream()
                .mapToDouble(line -> Math.pow(loss(line) - mean, 2))
                .sum();
        return Math.sqrt(squares) / lines.size();
    }

    private static Backtest tried(List<PrivateNote.PastGame> games, LocalDate from) {
        return Backtest.of(games, new Backtest.Stretches(Optional.of(from), 30), Stated.nothing())
                .orElseThrow();
    }

    /** Forecasts of so many games that come after those which are known. */
    private static List<Backtest.Line> season(Club club, Random random, int known, int asked) {
        Season season = new Season(club, random);
        season.play(known);
        LocalDate from = season.day;
        return tried(season.play(asked), from).lines();
    }

    /** Between .95 and 1.05 as far as so many games can tell: three standard errors are allowed beside. */
    @Test
    void what_is_said_comes_true_as_often() {
        Seed seed = Seed.fresh();
        List<Backtest.Line> all = new ArrayList<>();
        for (Club club : CLUBS) {
            List<Backtest.Line> own = new ArrayList<>();
            for (int i = 0; i < (MANY ? 60 : 1); i++) {
                Random random = new Random(seed.value() * 1_009 + 31L * i + CLUBS.indexOf(club));
                own.addAll(season(club, random, 120, 240));
            }
            say(seed + " " + club, own);
            all.addAll(own);
        }
        say(seed + " all", all);
        double[] slope = slope(all);
        assertThat(slope[0]).as(seed + "").isBetween(0.95 - 3 * slope[1], 1.05 + 3 * slope[1]);
        assertThat(loss(all)).as(seed + "").isLessThan(Math.log(2));
    }

    private static void say(String what, List<Backtest.Line> lines) {
        double[] slope = slope(lines);
        System.out.printf(
                "%s: %d games, slope %.3f +- %.3f, loss %.4f +- %.4f%n",
                what, lines.size(), slope[0], slope[1], loss(lines), doubt(lines));
    }

    /** Where next to nothing is known, next to nothing is said: no worse than a coin as far as so many games can tell. */
    @Test
    void no_amount_of_games_makes_it_worse_than_a_coin() {
        Seed seed = Seed.fresh();
        int[] amounts = MANY ? new int[] {5, 10, 20, 40, 80, 400, 2_000, 5_000} : new int[] {5, 20, 60};
        for (int known : amounts) {
            List<Backtest.Line> all = new ArrayList<>();
            for (int i = 0; i < (known > 400 ? 2 : MANY ? 60 : 12); i++) {
                for (int each = 0; each < CLUBS.size(); each++) {
                    Random random = new Random(seed.value() * 1_009 + 7_919L * known + 31L * i + each);
                    all.addAll(season(CLUBS.get(each), random, known, 16));
                }
            }
            say(seed + ", " + known + " games known", all);
            assertThat(loss(all)).as("%s, %d games known", seed, known).isLessThan(Math.log(2) + 4 * doubt(all));
        }
    }

    /** Clubs of a like strength and clubs that are far apart are told from each other, at first taken for 9. */
    @Test
    void the_spread_of_forms_is_found_where_games_are_many() {
        Seed seed = Seed.fresh();
        assertThat(meanSpread(new Club(3, 0, 0, false), seed)).as(seed + "").isBetween(1.5, 6.0);
        assertThat(meanSpread(new Club(12, 0, 0, false), seed)).as(seed + "").isBetween(7.5, 16.0);
    }

    private static double meanSpread(Club club, Seed seed) {
        double sum = 0;
        int seasons = MANY ? 40 : 4;
        for (int i = 0; i < seasons; i++) {
            Season season = new Season(club, new Random(seed.value() + 101L * i + (long) club.form()));
            season.play(300);
            LocalDate from = season.day;
            Assumptions found = tried(season.play(1), from).last();
            System.out.printf("%s: %s, found %.2f and %.2f%n", seed, club, found.formSpread(), found.extraSpread());
            sum += found.formSpread();
        }
        return sum / seasons;
    }
}
