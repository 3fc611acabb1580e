package tiewright.standings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.Seed;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;
import tiewright.conditions.RubberWeights;
import tiewright.conditions.Setting;
import tiewright.conditions.TiePoints;
import tiewright.event.ClubId;
import tiewright.event.How;
import tiewright.event.RubberNo;
import tiewright.event.RubberScore;
import tiewright.event.Side;
import tiewright.event.TieId;
import tiewright.event.TieScore;
import tiewright.scoring.Score;
import tiewright.scoring.SideNo;
import tiewright.wording.StandingsWords;

/** What a tie counts in the table: by its end, by its rubbers and their weights, by its games, and when nobody played. */
class TiePointsTest {
    private static final ClubId A = ClubId.of("A");
    private static final ClubId B = ClubId.of("B");

    private static Conditions conditions(String... settings) {
        Conditions conditions = Conditions.of(Preset.CLUB_DAY);
        for (String setting : settings) {
            String[] parts = setting.split("=");
            conditions = conditions.with(Setting.parse(parts[0]).orElseThrow(), parts[1]);
        }
        assertThat(conditions.clashes()).isEmpty();
        return conditions;
    }

    /** Rubbers as {@code 11-5}, {@code 11-5/9-11}, {@code wo-home}, {@code ret-away 8-6} or {@code void}; a last one more than there are is the decider. */
    private static TieScore tie(Conditions conditions, String... rubbers) {
        List<RubberScore> scores = new ArrayList<>();
        for (String rubber : rubbers) {
            int number = scores.size() + 1;
            scores.add(
                    rubber(conditions, number > conditions.rubbers() ? RubberNo.DECIDER : RubberNo.of(number), rubber));
        }
        return new TieScore(
                TieId.of("T"), A, B, scores, true, conditions.tieRubbers().weights());
    }

    private static RubberScore rubber(Conditions conditions, RubberNo number, String text) {
        return switch (text) {
            case "wo-home" ->
                new RubberScore(number, conditions.walkover(number.isDecider(), SideNo.ONE), How.WALKOVER_HOME);
            case "wo-away" ->
                new RubberScore(number, conditions.walkover(number.isDecider(), SideNo.TWO), How.WALKOVER_AWAY);
            case "void" -> new RubberScore(number, List.of(), How.VOID);
            default ->
                new RubberScore(
                        number,
                        games(text.replace("ret-away ", "")),
                        text.startsWith("ret-away") ? How.RETIRED_AWAY : How.PLAYED);
        };
    }

    private static List<Score> games(String text) {
        return Stream.of(text.split("/"))
                .map(game -> Score.of(Integer.parseInt(game.split("-")[0]), Integer.parseInt(game.split("-")[1])))
                .toList();
    }

    private static Row row(Conditions conditions, ClubId club, TieScore... ties) {
        return Standings.of(TableInput.of(List.of(A, B), List.of(ties), PoolTables.rules(conditions)))
                .row(club)
                .orElseThrow();
    }

    /** Points of A and of B, from one tie. */
    private static String points(Conditions conditions, String... rubbers) {
        TieScore tie = tie(conditions, rubbers);
        return row(conditions, A, tie).tiePoints() + "-"
                + row(conditions, B, tie).tiePoints();
    }

    /** ITTF, as used at the 2022 World Team Championships (second-hand): 2 for a win, 1 for a loss, 0 for one that was not played. */
    @Test
    void a_tie_lost_in_play_counts_one_and_one_that_was_not_played_nothing() {
        Conditions ittf = conditions("tie_points=2/1/1", "unplayed_tie=2/0", "rubbers=3");
        assertThat(points(ittf, "11-5", "5-11", "11-9")).isEqualTo("2-1");
        assertThat(points(ittf, "wo-away", "wo-away", "wo-away")).isEqualTo("2-0");
        assertThat(points(ittf, "wo-home", "wo-home", "wo-home")).isEqualTo("0-2");
        assertThat(points(ittf, "wo-away", "wo-away", "5-11"))
                .as("one rubber was played")
                .isEqualTo("2-1");
        assertThat(points(ittf, "wo-away", "wo-away", "ret-away 11-3"))
                .as("one was begun")
                .isEqualTo("2-1");
        assertThat(points(conditions("tie_points=2/1/1", "rubbers=3"), "wo-away", "wo-away", "wo-away"))
                .as("as any other tie, where nothing else is said")
                .isEqualTo("2-1");
    }

    /** Fixed points for a tie that the other club does not come to: 6 in UTA Monday interclub, Auckland. */
    @Test
    void an_unplayed_tie_can_count_fixed_points_where_rubbers_do() {
        Conditions fixed = conditions("tie_points=rubbers", "unplayed_tie=6/0");
        assertThat(points(fixed, "wo-away", "wo-away", "wo-away", "wo-away")).isEqualTo("6-0");
        assertThat(points(fixed, "11-5", "wo-away", "wo-away", "wo-away")).isEqualTo("4-0");
    }

    /** Rubbers shared for the rain are void: nobody lost such a tie. */
    @Test
    void a_tie_whose_rubbers_are_all_void_is_drawn_and_not_lost_unplayed() {
        Conditions shared = conditions("tie_points=2/1/0", "unplayed_tie=2/0", "decider=none");
        assertThat(points(shared, "void", "void", "void", "void")).isEqualTo("1-1");
    }

    /** A point for each rubber (Inter-Agency Games badminton, rule 6), for each game and more for the tie (ORBL match rule 2). */
    @ParameterizedTest
    @CsvSource({"rubbers, 3-1", "games, 7-4", "rubbers+2/1/0, 5-1", "games+2/1/0, 9-4", "2/1/0, 2-0"})
    void points_come_from_the_end_the_rubbers_or_the_games(String setting, String expected) {
        Conditions conditions = conditions("tie_points=" + setting, "best_of=3");
        assertThat(points(conditions, "11-5/11-5", "11-5/5-11/11-9", "5-11/11-9/9-11", "11-0/3-11/11-0"))
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"rubbers, 3-2", "games, 6-4", "rubbers+2/1/0, 5-2", "games+3/1/0, 9-4"})
    void the_decider_is_a_rubber_of_one_game_here_too(String setting, String expected) {
        Conditions conditions = conditions("tie_points=" + setting, "best_of=3");
        assertThat(points(conditions, "11-5/11-5", "11-5/11-5", "5-11/5-11", "5-11/11-5/5-11", "11-9"))
                .isEqualTo(expected);
    }

    /** Weights 6, 4, 3: the lighter two together win the tie; rubbers stay rubbers in every column but the points. */
    @Test
    void weights_say_who_wins_and_what_rubbers_bring_while_rubbers_are_counted_as_rubbers() {
        Conditions weighed = conditions("rubbers=3", "rubber_weights=6/4/3", "tie_points=rubbers+2/1/0");
        TieScore tie = tie(weighed, "11-5", "5-11", "9-11");
        Row home = row(weighed, A, tie);
        Row away = row(weighed, B, tie);
        assertThat(List.of(home.tiePoints(), home.tiesWon(), home.rubbersWon(), home.rubbersLost()))
                .containsExactly(6, 0, 1, 2);
        assertThat(List.of(away.tiePoints(), away.tiesWon(), away.rubbersWon(), away.rubbersLost()))
                .containsExactly(9, 1, 2, 1);
        assertThat(points(weighed, "11-5", "5-11", "void"))
                .as("a void rubber weighs nothing")
                .isEqualTo("8-4");
    }

    @Test
    void a_walkover_can_bring_the_rubber_alone() {
        Conditions nothing = conditions("walkover_score=0-0", "tie_points=rubbers");
        TieScore tie = tie(nothing, "wo-away", "11-5", "11-5", "5-11");
        Row row = row(nothing, A, tie);
        assertThat(List.of(row.rubbersWon(), row.gamesWon(), row.gamesLost(), row.pointsFor(), row.pointsAgainst()))
                .containsExactly(3, 2, 1, 27, 21);
        assertThat(row.tiePoints()).isEqualTo(3);
    }

    /** A withdrawn club's ties are walkovers like any other. */
    @Test
    void what_is_awarded_after_a_withdrawal_counts_as_any_walkover_does() {
        Conditions nothing = conditions("walkover_score=0-0", "tie_points=2/1/1", "unplayed_tie=2/0");
        TieScore open = new TieScore(
                TieId.of("T"), A, B, List.of(), false, nothing.tieRubbers().weights());
        TableInput input = new TableInput(
                List.of(A, B), List.of(open), PoolTables.rules(nothing), Map.of(B, Treatment.AWARD), List.of());
        Row row = Standings.of(input).row(A).orElseThrow();
        assertThat(List.of(row.tiePoints(), row.rubbersWon(), row.gamesWon(), row.pointsFor()))
                .containsExactly(2, 4, 0, 0);
        assertThat(Standings.of(input).row(B).orElseThrow().tiePoints()).isZero();
    }

    /** By hand, weights 3, 1, 1: A has 3 of B and 0 of C, B 2 of A and 1 of C. Their tie brought A 3 and B 2, though B won more rubbers. */
    @Test
    void the_tie_between_level_clubs_is_compared_by_its_table_points() {
        TableRules rules = Rules.of(
                "head-to-head>lots",
                TiePoints.parse("rubbers").orElseThrow(),
                Optional.empty(),
                weighed(Rules.shape(3, false, 1, 11), 3, 1, 1));
        Table table = Standings.of(TableInput.of(
                RandomPools.clubs(3),
                List.of(
                        played("T", "A", "B", rules, "11-5", "5-11", "9-11"),
                        played("U", "A", "C", rules, "0-11", "0-11", "0-11"),
                        played("V", "B", "C", rules, "0-11", "11-5", "0-11")),
                rules));
        assertThat(Pool.order(table)).isEqualTo("C A B");
        assertThat(table.rows()).extracting(Row::tiePoints).containsExactly(9, 3, 3);
        assertThat(StandingsWords.withCodes()
                        .reason(A, table.row(A).orElseThrow().decidedBy()))
                .endsWith("beat B by weight, with 1-2 rubbers (tie T)");
        assertThat(StandingsWords.withCodes()
                        .reason(B, table.row(B).orElseThrow().decidedBy()))
                .endsWith("lost to A by weight, with 2-1 rubbers (tie T)");
    }

    private static TieScore played(String tie, String home, String away, TableRules rules, String... rubbers) {
        List<RubberScore> scores = new ArrayList<>();
        for (String rubber : rubbers) {
            scores.add(new RubberScore(RubberNo.of(scores.size() + 1), games(rubber), How.PLAYED));
        }
        return new TieScore(
                TieId.of(tie),
                ClubId.of(home),
                ClubId.of(away),
                scores,
                true,
                rules.shape().weights());
    }

    private static TieShape weighed(TieShape shape, Integer... weights) {
        return new TieShape(
                shape.rubbers(), false, shape.games(), shape.decider(), new RubberWeights(List.of(weights)));
    }

    /** Both clubs of the only tie, three rubbers of weight 3, 1 and 1 and no decider: who wins rubber 1 wins. */
    @Test
    void the_chance_to_go_through_knows_the_weights() {
        TableRules rules = Rules.of("rubbers-difference>lots", "1/0/0", weighed(Rules.shape(3, false, 1, 11), 3, 1, 1));
        TieScore open = new TieScore(
                TieId.of("1"), B, A, List.of(), false, rules.shape().weights());
        var chances = ThroughChances.of(TableInput.of(List.of(A, B), List.of(open), rules), A, TieId.of("1"), 1, 50, 7);
        assertThat(chances)
                .containsOnlyKeys(
                        new ThroughChances.End(3, 0, 5),
                        new ThroughChances.End(2, 1, 3),
                        new ThroughChances.End(1, 2, 1),
                        new ThroughChances.End(2, 1, -1),
                        new ThroughChances.End(1, 2, -3),
                        new ThroughChances.End(0, 3, -5));
        chances.forEach((end, chance) -> assertThat(chance).as("%s", end).isEqualTo(end.lead() > 0 ? 1.0 : 0.0));
    }

    /**
     * By hand, best of three and a point a game. A beat C 2-0 and loses to B, with a game in half of all ways: 2 or 3 points.
     * B loses to C in half of all ways, then with 2 or 3 points, each as likely, and C with 2. A has 3: first, or level with
     * B, 3/4. A has 2: level with both, or behind, 1/6. So half of the mean of both, 11/48.
     */
    @Test
    void the_chance_to_go_through_knows_that_a_lost_rubber_brings_its_games() {
        TableRules rules = Rules.of(
                "lots", TiePoints.parse("games").orElseThrow(), Optional.empty(), Rules.shape(1, false, 2, 11));
        Pool pool = Pool.of("A", "B", "C")
                .unfinished("A", "B")
                .tie("A", "C", "11-5/11-5")
                .unfinished("B", "C");
        var chances = ThroughChances.of(pool.input(rules), A, TieId.of("T1"), 1, 800, 7);
        assertThat(chances.get(new ThroughChances.End(0, 1))).isCloseTo(11.0 / 48, within(0.05));
    }

    /** Every place that came true in pools played to their end at random is among those foreseen. */
    @Test
    void what_a_club_needs_holds_whatever_brings_the_points() {
        for (int round = 0; round < 60; round++) {
            Random random = Seed.random(round);
            TieShape shape = Rules.shape(3, random.nextBoolean(), 1 + random.nextInt(2), 5);
            TieShape weighed = random.nextBoolean() ? shape : weighed(shape, 3, 1, 2);
            TiePoints points = TiePoints.parse(List.of("rubbers", "games", "rubbers+2/1/0", "games+1/0/0", "3/1/0")
                            .get(random.nextInt(5)))
                    .orElseThrow();
            TableRules rules = Rules.of(Rules.NAMED.get(round % 4), points, Optional.empty(), weighed);
            List<ClubId> clubs = RandomPools.clubs(4);
            RandomPools pools = new RandomPools(random, weighed);
            List<TieScore> ties = pools.ties(clubs, 2);
            TableInput before = TableInput.of(clubs, ties, rules);
            for (int end = 0; end < 20; end++) {
                Table table = Standings.of(TableInput.of(clubs, pools.complete(ties), rules));
                for (ClubId club : clubs) {
                    NeedsReport needs =
                            Needs.of(before, club, OptionalInt.empty()).orElseThrow();
                    assertThat(table.row(club).orElseThrow().place())
                            .as("%s, %s, %s", club, points.code(), Seed.rerun(round))
                            .isBetween(needs.places().best(), needs.places().worst());
                }
            }
        }
    }

    /** The same of a dry run: ties played under the conditions, by weight and to the point where they stop. */
    @Test
    void a_pool_that_is_tried_out_knows_weights_and_points() {
        DryRun.Report report = DryRun.of(
                conditions("rubbers=3", "rubber_weights=6/4/3", "tie_points=rubbers", "stop_when_decided=all"),
                3,
                40,
                5);
        assertThat(report.runs()).isEqualTo(40);
        report.ways()
                .forEach(way -> way.example().ties().forEach(tie -> {
                    assertThat(tie.weights().each()).containsExactly(6, 4, 3);
                    int most = Math.max(tie.weightWon(Side.HOME), tie.weightWon(Side.AWAY));
                    assertThat(most).isGreaterThan(6);
                }));
    }
}
