package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
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
class FormAndChemistryTest {
    private static final String PAGE = "/captain/form";
    private static final String NOTES = "/captain/squad";

    private static Served served() {
        List<PrivateNote> past = List.of(new PrivateNote.PastGame(
                LocalDate.of(2025, 6, 20), "N1", "N2", "S1", "S2", Score.of(11, 1), Format.sideOut(11)));
        Days day = Days.oneTie().opened("A1").cards("A1", "11-9");
        return Served.empty(Days.moment("09:00"))
                .given(day.facts().stream().map(Recorded::fact).toList(), past);
    }

    @Test
    void the_own_captain_sees_every_player_and_the_pairs_that_played() {
        try (Served served = served()) {
            String page = served.captain("N").get(PAGE).body();
            assertThat(page.split("class=\"dot\""))
                    .as("eight players and one pair")
                    .hasSize(1 + 8 + 1);
            assertThat(served.captain("N").get(PAGE).text())
                    .contains(
                            "Club N: form and chemistry",
                            "Small samples. Describes past film, does not judge a person.",
                            "best guess",
                            "would move a game to 11 (side-out) from 50 to about",
                            "not enough film",
                            "All of it rests on 2 games, with 0 rallies on film",
                            "Older games count as much as new ones.");
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
            String before = rival.get(PAGE).body();
            served.noted(
                    "N",
                    new PrivateNote.FormJudged(PlayerId.of("N1"), OptionalDouble.of(17.3), OptionalDouble.of(0.5)));
            served.noted(
                    "N",
                    new PrivateNote.ChemistryJudged(
                            Pair.of("N1", "N3"), 9.1, OptionalDouble.of(0.5), Optional.empty()));
            assertThat(rival.get(PAGE).body()).isEqualTo(before);
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
            assertThat(served.captain("S").get(PAGE).text()).contains("Older games count as much as new ones.");
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
            assertThat(doubt.text()).contains("Form lies between -50 and 50", "The doubt is more than 0");
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
            assertThat(pair.text()).contains("Form lies between -50 and 50", "The doubt is more than 0");
            assertThat(served.ledger.privateOf(ClubId.of("N")).halfLife()).isEmpty();
            assertThat(served.ledger.privateOf(ClubId.of("N")).forms()).isEmpty();
        }
    }
}
