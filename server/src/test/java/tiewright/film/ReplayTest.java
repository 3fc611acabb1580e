package tiewright.film;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.film.Played.A1;
import static tiewright.film.Played.A2;
import static tiewright.film.Played.B1;
import static tiewright.film.Played.B2;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.Seed;
import tiewright.event.PlayerId;
import tiewright.rating.FilmedGame;
import tiewright.rating.FilmedGame.Served;
import tiewright.scoring.Court;
import tiewright.scoring.Format;
import tiewright.scoring.Score;
import tiewright.scoring.SideNo;

class ReplayTest {
    private static final Format ELEVEN = Format.sideOut(11);

    private static Replay replay(Format format, List<RallyNote> notes) {
        return Replay.of(Played.start(format), notes);
    }

    /**
     * The walk worked out from the rule summary that is printed in Pickleball Magazine 5-3: only the serving side scores, both partners serve except one
     * only at the start, called 0-0-2; with even own points the side's first server stands right.
     */
    @Test
    void server_receiver_and_call_of_the_published_walk() {
        Replay replay = replay(ELEVEN, Played.notes("AABBBAABAABB"));
        assertThat(replay.steps())
                .extracting(step -> step.server().orElseThrow() + " "
                        + step.situation().orElseThrow().call() + " to "
                        + step.receiver().orElseThrow())
                .containsExactly(
                        "A1 0-0-2 to B1",
                        "A1 1-0-2 to B2",
                        "A1 2-0-2 to B1",
                        "B1 0-2-1 to A1",
                        "B1 1-2-1 to A2",
                        "B1 2-2-1 to A1",
                        "B2 2-2-2 to A2",
                        "A1 2-2-1 to B1",
                        "A2 2-2-2 to B2",
                        "A2 3-2-2 to B1",
                        "A2 4-2-2 to B2",
                        "B1 2-4-1 to A1");
        assertThat(replay.score()).isEqualTo(Score.of(4, 3));
        assertThat(replay.firstImpossible()).isEmpty();
        Situation next = replay.next().orElseThrow();
        assertThat(next.call()).isEqualTo("3-4-1");
        assertThat(next.at(SideNo.TWO, Court.LEFT))
                .as("odd points: their first server stands left")
                .isEqualTo(B1)
                .isEqualTo(next.server());
        assertThat(next.at(SideNo.ONE, Court.RIGHT))
                .as("even points: their first server stands right")
                .isEqualTo(A1);
    }

    /** BWF Law 11 (from memory): the server stands right on even and left on odd points; players change only when they win on serve. */
    @Test
    void in_rally_scoring_the_halves_follow_the_points() {
        Replay replay = replay(Format.rally(21), Played.notes("AABABB"));
        assertThat(replay.steps())
                .extracting(step -> step.server().orElseThrow() + " "
                        + step.situation().orElseThrow().call() + " "
                        + step.situation().orElseThrow().servesFrom())
                .containsExactly(
                        "A1 0-0 RIGHT", "A1 1-0 LEFT", "A1 2-0 RIGHT", "B2 1-2 LEFT", "A2 3-1 LEFT", "B1 2-3 RIGHT");
    }

    @Test
    void whoever_serves_first_stands_right() {
        Start start = new Start(ELEVEN, A2, A1, A2, B1, B2);
        assertThat(start.isFirstServerNotedLeft()).isTrue();
        Situation first = Replay.of(start, List.of()).next().orElseThrow();
        assertThat(first.server()).isEqualTo(A2);
        assertThat(first.receiver()).isEqualTo(B1);
        assertThat(first.at(SideNo.ONE, Court.LEFT)).isEqualTo(A1);
        assertThat(first.at(SideNo.TWO, Court.LEFT)).isEqualTo(B2);
    }

    @ParameterizedTest
    @CsvSource({"EARNED,ONE,ONE", "FORCED,ONE,TWO", "GAVE,TWO,ONE", "REPLAY,ONE,", "UNSURE,ONE,"})
    void a_winner_is_earned_and_an_error_is_lost(Ending ending, SideNo player, SideNo winner) {
        assertThat(ending.winner(player)).isEqualTo(Optional.ofNullable(winner));
    }

    @Test
    void a_server_who_cannot_have_served_is_impossible_and_the_points_go_on() {
        List<RallyNote> notes = new ArrayList<>(Played.notes("AABA"));
        notes.set(0, notes.get(0).servedBy(A1));
        notes.set(3, notes.get(3).servedBy(A2));
        Replay replay = replay(ELEVEN, notes);
        assertThat(replay.firstImpossible())
                .contains(new Impossible(
                        Impossible.Kind.OTHER_SERVER, 4, Score.of(2, 0), Optional.of(A2), Optional.of(B1)));
        assertThat(replay.score()).isEqualTo(Score.of(2, 0));
        assertThat(replay.steps().get(3).server()).as("whom the notes name").contains(A2);
        notes.set(3, notes.get(3).servedBy(B1));
        assertThat(replay(ELEVEN, notes).firstImpossible()).isEmpty();
    }

    @Test
    void a_rally_after_the_end_is_impossible_and_counts_nowhere() {
        Replay replay = replay(Format.rally(7), Played.notes("AAAAAAABr"));
        assertThat(replay.firstImpossible())
                .contains(new Impossible(
                        Impossible.Kind.AFTER_END, 8, Score.of(7, 0), Optional.empty(), Optional.empty()));
        assertThat(replay.score()).isEqualTo(Score.of(7, 0));
        assertThat(replay.isOver()).isTrue();
        assertThat(replay.next()).isEmpty();
        assertThat(replay.steps()).filteredOn(Step::isPlayed).hasSize(7);
        FilmedGame counted = Played.game(Format.rally(7), "AAAAAAABBB").counted();
        assertThat(counted.rallies()).isEqualTo(7);
        assertThat(counted.card()).contains(Score.of(7, 0));
    }

    @Test
    void who_won_an_unsure_rally_is_not_guessed() {
        Replay replay = replay(ELEVEN, Played.notes("A?"));
        assertThat(replay.scores()).containsExactlyInAnyOrder(Score.of(1, 0), Score.of(2, 0));
        assertThat(replay.score()).as("what was seen").isEqualTo(Score.of(1, 0));
        assertThat(replay.next()).isEmpty();
        Step third = replay(ELEVEN, Played.notes("A?A")).steps().get(2);
        assertThat(third.server()).isEmpty();
        assertThat(third.winner()).contains(SideNo.ONE);
        assertThat(third.serving()).isEmpty();
    }

    @Test
    void a_server_noted_later_and_the_card_settle_who_won_an_unsure_rally() {
        List<RallyNote> notes = new ArrayList<>(Played.notes("A?AA"));
        notes.set(2, notes.get(2).servedBy(B1));
        Replay served = replay(ELEVEN, notes);
        assertThat(served.scores()).containsExactly(Score.of(1, 0));
        assertThat(served.steps().get(2).situation().orElseThrow().call()).isEqualTo("0-1-1");
        Replay ended = Replay.of(Played.start(Format.rally(3)), Played.notes("A?BAA"), Score.of(3, 2));
        assertThat(ended.score()).isEqualTo(Score.of(3, 2));
        assertThat(ended.steps().get(2).serving()).contains(SideNo.TWO);
        assertThat(Replay.of(Played.start(Format.rally(3)), Played.notes("A?BAA"), Score.of(0, 3))
                        .score())
                .as("a card to which nothing leads changes nothing")
                .isEqualTo(Score.of(3, 1));
    }

    /** A game that went on was not over: of the courses of an unsure rally those that ended it fall away. */
    @Test
    void a_rally_that_follows_shows_that_the_game_was_not_over() {
        Replay replay = replay(Format.rally(3), Played.notes("AA?B"));
        assertThat(replay.scores()).containsExactlyInAnyOrder(Score.of(2, 1), Score.of(2, 2));
        assertThat(replay.firstImpossible()).isEmpty();
    }

    /** What a rating counts: after an unsure rally the same side is taken to serve, and a named server is believed. */
    @Test
    void ratings_count_every_rally_that_somebody_won() {
        List<RallyNote> notes = new ArrayList<>(Played.notes("Ar?AA"));
        notes.set(4, notes.get(4).servedBy(B1));
        FilmedGame counted = new FilmGame(
                        "g", Optional.empty(), Optional.empty(), Played.start(ELEVEN), Optional.empty(), notes)
                .counted();
        assertThat(counted.byOne()).isEqualTo(new Served(2, 2));
        assertThat(counted.byTwo()).isEqualTo(new Served(1, 0));
        FilmedGame walk = Played.game(ELEVEN, "AABBBAABAABB").counted();
        assertThat(walk.byOne()).isEqualTo(new Served(7, 4));
        assertThat(walk.byTwo()).isEqualTo(new Served(5, 3));
    }

    /** Every course written out one by one: side one won, side two won, or played again, for each unsure rally. */
    @Test
    void courses_of_unsure_rallies_are_those_that_writing_out_all_of_them_finds() {
        for (int round = 0; round < 300; round++) {
            Random random = Seed.random(round);
            Format format = random.nextBoolean() ? Format.sideOut(3) : Format.rally(4);
            String winners = random.ints(4 + random.nextInt(6), 0, 5)
                    .mapToObj(i -> String.valueOf("ABAB?".charAt(i)))
                    .collect(Collectors.joining());
            Set<List<String>> courses = courses(format, winners);
            Replay replay = replay(format, Played.notes(winners));
            if (courses.isEmpty()) {
                assertThat(replay.firstImpossible())
                        .as(winners + " " + Seed.rerun(round))
                        .isPresent();
                continue;
            }
            assertThat(replay.scores())
                    .as(winners + " " + Seed.rerun(round))
                    .extracting(Score::toString)
                    .containsExactlyInAnyOrderElementsOf(courses.stream()
                            .map(course -> course.get(winners.length()))
                            .collect(Collectors.toSet()));
            String end = courses.iterator().next().get(winners.length());
            Score card = Score.of(Integer.parseInt(end.split("-")[0]), Integer.parseInt(end.split("-")[1]));
            List<Step> steps =
                    Replay.of(Played.start(format), Played.notes(winners), card).steps();
            for (int i = 0; i < winners.length(); i++) {
                int at = i;
                Set<String> servers = courses.stream()
                        .filter(course -> course.get(winners.length()).equals(end))
                        .map(course -> course.get(at))
                        .collect(Collectors.toSet());
                assertThat(steps.get(i).before().stream()
                                .map(Situation::server)
                                .map(PlayerId::code)
                                .collect(Collectors.toSet()))
                        .as(winners + " " + card + " " + Seed.rerun(round))
                        .isEqualTo(servers);
            }
        }
    }

    /** For each course that can be: the server of each rally, and the score at the end. */
    private static Set<List<String>> courses(Format format, String winners) {
        int unsure = winners.indexOf('?');
        if (unsure >= 0) {
            Set<List<String>> all = new LinkedHashSet<>();
            for (char how : "ABr".toCharArray()) {
                all.addAll(courses(format, winners.substring(0, unsure) + how + winners.substring(unsure + 1)));
            }
            return all;
        }
        Replay plain = replay(format, Played.notes(winners));
        if (plain.firstImpossible().isPresent()) {
            return Set.of();
        }
        List<String> course = new ArrayList<>(plain.steps().stream()
                .map(step -> step.server().orElseThrow().code())
                .toList());
        course.add(plain.score().toString());
        return Set.of(course);
    }
}
