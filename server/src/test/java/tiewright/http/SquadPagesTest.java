package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

/** What games and notes make of form and chemistry is told to the own captain, and to nobody else. */
class SquadPagesTest {
    private static final String PAGE = "/captain/squad";
    private static final String NOTES = PAGE;

    private static Served served() {
        List<PrivateNote> past = List.of(new PrivateNote.PastGame(
                LocalDate.of(2025, 6, 20),
                "N1",
                "N2",
                "S1",
                "S2",
                Score.of(11, 1),
                Format.sideOut(11),
                Optional.empty()));
        Days day = Days.oneTie().opened("A1").cards("A1", "11-9");
        return Served.empty(Days.moment("09:00"))
                .given(day.facts().stream().map(Recorded::fact).toList(), past);
    }

    @Test
    void the_own_captain_sees_every_player_and_the_pairs_that_played() {
        try (Served served = served()) {
            String page = served.captain("N").get(PAGE).body();
            assertThat(page.split("<circle")).as("eight players and one pair").hasSize(1 + 8 + 1);
            assertThat(served.captain("N").get(PAGE).text())
                    .contains(
                            "Club N: my squad",
                            "Small samples. Describes past games, does not judge a person.",
                            "best guess",
                            "would move a game to 11 (side-out) from 50 to about",
                            "not enough film",
                            "All of it rests on 2 games, with 0 rallies on film",
                            "A form may have moved since: its doubt grows by about 2.5 rallies in 100 in a year.");
        }
    }

    @Test
    void nobody_else_may_open_it_and_no_page_of_theirs_changes_with_the_notes() {
        try (Served served = served()) {
            List<Guest> others = List.of(
                    served.stranger(),
                    served.player("N", "N1"),
                    served.as(Role.VOLUNTEER),
                    served.as(Role.DESK),
                    served.as(Role.ORGANISER),
                    served.as(Role.REFEREE));
            for (Guest other : others) {
                assertThat(other.get(PAGE).status()).isEqualTo(403);
            }
            Guest rival = served.captain("S");
            String before = rival.get(PAGE).text();
            served.noted(
                    "N",
                    new PrivateNote.FormJudged(PlayerId.of("N1"), OptionalDouble.of(17.3), OptionalDouble.of(0.5)));
            served.noted(
                    "N",
                    new PrivateNote.ChemistryJudged(
                            Pair.of("N1", "N3"), 9.1, OptionalDouble.of(0.5), Optional.empty()));
            assertThat(rival.get(PAGE).text()).isEqualTo(before);
            assertThat(served.captain("N").get(PAGE).text()).contains("+17.", "+9.1");
        }
    }

    @Test
    void the_captain_lets_older_games_count_less_and_takes_it_back() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            String before = captain.get(PAGE).text();
            captain.send(NOTES, NOTES + "/half-life", Map.of("half-life", "30"));
            assertThat(captain.get(NOTES).text()).contains("A game that was 30 days old");
            assertThat(captain.get(PAGE).text())
                    .contains("one that is 30 days old counts half")
                    .isNotEqualTo(before);
            assertThat(served.captain("S").get(PAGE).text())
                    .contains("A form may have moved since: its doubt grows by about 2.5 rallies in 100 in a year.");
            captain.send(NOTES, NOTES + "/half-life", Map.of("half-life", ""));
            assertThat(captain.get(PAGE).text()).isEqualTo(before);
        }
    }

    @Test
    void a_half_life_or_a_doubt_of_nothing_is_refused_with_its_reason_and_kept_as_typed() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            for (String typed : List.of("0", "-1", "99999")) {
                Guest.Got got = captain.send(NOTES, NOTES + "/half-life", Map.of("half-life", typed));
                assertThat(got.status()).isEqualTo(422);
                assertThat(got.text()).contains("A half-life is a number of days from 1 to 36500");
                assertThat(got.body()).contains("value=\"" + typed + "\"");
            }
            assertThat(captain.send(NOTES, NOTES + "/half-life", Map.of("half-life", "ten"))
                            .text())
                    .contains("\"ten\" is not a whole number");
            Guest.Got doubt =
                    captain.send(NOTES, NOTES + "/form", Map.of("player", "N1", "form-N1", "51", "doubt-N1", "0"));
            assertThat(doubt.text()).contains("Form lies between -50 and 50", "The doubt must be more than 0");
            Guest.Got pair = captain.send(
                    NOTES,
                    NOTES + "/pair",
                    Map.of(
                            "pair-first",
                            "N1",
                            "pair-second",
                            "N2",
                            "pair-extra",
                            "51",
                            "pair-doubt",
                            "0",
                            "pair-wish",
                            ""));
            assertThat(pair.text()).contains("Form lies between -50 and 50", "The doubt must be more than 0");
            assertThat(served.ledger.privateOf(ClubId.of("N")).halfLife()).isEmpty();
            assertThat(served.ledger.privateOf(ClubId.of("N")).forms()).isEmpty();
        }
    }

    private static Map<String, String> rating(String... figures) {
        Map<String, String> typed = new TreeMap<>();
        for (int i = 0; i < figures.length; i += 2) {
            typed.put(figures[i], figures[i + 1]);
        }
        return typed;
    }

    private static Map<PlayerId, PrivateNote.FormJudged> forms(Served served) {
        return served.ledger.privateOf(ClubId.of("N")).forms();
    }

    @Test
    void all_players_are_rated_by_one_press_and_who_is_left_as_he_was_is_not_noted_again() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            assertThat(captain.get(PAGE).text()).contains("0 of 8 rated");
            Map<String, String> all = new TreeMap<>();
            for (int i = 1; i <= 8; i++) {
                all.put("form-N" + i, Integer.toString(i - 4));
            }
            all.put("doubt-N8", "2");
            assertThat(captain.send(PAGE, NOTES + "/form", all).status()).isEqualTo(200);
            assertThat(captain.get(PAGE).text()).contains("8 of 8 rated");
            assertThat(forms(served)).hasSize(8);
            assertThat(forms(served).get(PlayerId.of("N1")).form()).hasValue(-3);
            assertThat(forms(served).get(PlayerId.of("N8")).sd()).hasValue(2);
            captain.send(PAGE, NOTES + "/form", rating("form-N1", "", "form-N2", "5"));
            assertThat(captain.get(PAGE).text()).contains("7 of 8 rated");
            assertThat(forms(served).get(PlayerId.of("N8")).sd()).hasValue(2);
        }
    }

    @Test
    void two_captains_who_rate_different_players_from_pages_of_the_same_moment_are_in_nobodys_way() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            Guest deputy = served.captain("N");
            Map<String, String> first = captain.filled(PAGE, NOTES + "/form", rating("form-N1", "3"));
            Map<String, String> second = deputy.filled(PAGE, NOTES + "/form", rating("form-N2", "-2"));
            assertThat(captain.post(NOTES + "/form", first).status()).isEqualTo(200);
            assertThat(deputy.post(NOTES + "/form", second).status()).isEqualTo(200);
            assertThat(forms(served)).containsOnlyKeys(PlayerId.of("N1"), PlayerId.of("N2"));
        }
    }

    @Test
    void a_figure_that_is_not_offered_is_kept_as_it_was_given() {
        try (Served served = served()) {
            Guest captain = served.captain("N");
            served.noted(
                    "N",
                    new PrivateNote.FormJudged(PlayerId.of("N1"), OptionalDouble.of(17.3), OptionalDouble.of(0.5)));
            assertThat(captain.get(PAGE).text()).contains("+17.3: 67.3 of 100", "by 0.5");
            captain.send(PAGE, NOTES + "/form", rating("form-N2", "1"));
            assertThat(forms(served).get(PlayerId.of("N1")).form()).hasValue(17.3);
        }
    }

    @Test
    void while_nothing_is_known_the_page_says_so_and_asks_for_the_rating_first() {
        try (Served served = Served.empty(Days.moment("09:00"))
                .given(Days.oneTie().facts().stream().map(Recorded::fact).toList(), List.of())) {
            Guest captain = served.captain("N");
            Guest.Got before = captain.get(PAGE);
            assertThat(before.text()).contains("Nothing is known about your squad yet.");
            assertThat(before.body()).doesNotContain("<circle");
            assertThat(captain.get("/captain/proposal/A1").body()).contains("href=\"/captain/squad#rate\"");
            captain.send(PAGE, NOTES + "/form", rating("form-N1", "3"));
            assertThat(captain.get(PAGE).text()).doesNotContain("Nothing is known");
        }
    }

    @Test
    void every_pair_stands_once_in_the_stairs_and_those_never_seen_say_so() {
        try (Served served = served()) {
            Document page = Jsoup.parse(served.captain("N").get(PAGE).body());
            assertThat(page.select(".stairs td")).hasSize(8 * 7 / 2);
            assertThat(page.select(".stairs td.unseen")).hasSize(27);
            assertThat(page.select(".stairs td:not(.unseen)").text()).contains("N1 + N2: best guess");
        }
    }
}
