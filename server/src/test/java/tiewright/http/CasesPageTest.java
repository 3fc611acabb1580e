package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tiewright.event.Days;
import tiewright.event.PrivateNote;
import tiewright.event.Role;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieId;

/** A player of two squads found after play, through the page: both consequences, one ruling, no name in public. */
class CasesPageTest {
    private static final String PAGE = "/organiser/cases";

    private static Served day() {
        Days day = Days.oneTie()
                .opened("A1")
                .cards("A1", "11-5", "11-5", "11-5", "5-11")
                .player("S9", "S", 9)
                .named("S9", "Player N3");
        return Served.of(day, Days.moment("12:00"));
    }

    @Test
    void that_they_are_two_people_is_said_once_by_a_press_and_asked_no_more() {
        try (Served served = day()) {
            Guest referee = served.as(Role.REFEREE);
            assertThat(referee.get(PAGE).text()).contains("Player N3 of Club N has the name of Player N3 of Club S");
            Guest organiser = served.as(Role.ORGANISER);
            String entries = "/organiser/clubs";
            assertThat(organiser.get(entries).text())
                    .contains("They are two people", "Player N3 of Club N and Player N3 of Club S");
            String answer = "/organiser/two-people";
            Map<String, String> form = organiser.filled(PAGE, answer, Map.of());
            assertThat(served.as(Role.DESK).post(answer, form).status()).isEqualTo(403);
            assertThat(organiser.post(answer, form).text()).contains("Nothing is wrong with the opened sheets");
            assertThat(referee.get("/desk").text()).doesNotContain("ineligible");
            assertThat(organiser.get(entries).text()).doesNotContain("Player N3 of Club N and Player N3 of Club S");
            assertThat(organiser.post(answer, form).path())
                    .as("sent twice it counts once")
                    .isEqualTo(PAGE);
            served.given(
                    List.of(new tiewright.event.SetUpFact.PlayerEntered(
                            tiewright.event.PlayerId.of("S10"),
                            tiewright.event.ClubId.of("S"),
                            java.util.OptionalInt.of(10),
                            java.util.Optional.empty(),
                            java.util.Optional.empty(),
                            false)),
                    List.of(new PrivateNote.PersonNamed(
                            tiewright.event.PlayerId.of("S10"), "Player N3", java.util.OptionalInt.empty())));
            assertThat(referee.get(PAGE).text())
                    .as("another player of that name is another question")
                    .contains("has the name of");
        }
    }

    @Test
    void the_consequences_stand_there_and_only_a_ruling_applies_one() {
        try (Served served = day()) {
            Guest referee = served.as(Role.REFEREE);
            assertThat(referee.get("/desk").text()).contains("Tie A1, Club N: ineligible player. Ruling needed");
            assertThat(referee.get(PAGE).text())
                    .contains(
                            "Club N, Rubber 2: Player N3.",
                            "The sheet stands",
                            "The tie then stands at 3-1, Club N has won it.",
                            "The tie then stands at 2-2, not finished.",
                            "The tie then stands at 0-4, Club S has won it.");
            Map<String, String> typed = Map.of("penalty", "tie-lost", "reason", "Condition 30", "by", "R. Referee");
            assertThat(referee.send(PAGE, PAGE, Map.of("penalty", "tie-lost", "by", "R. Referee"))
                            .status())
                    .isEqualTo(422);
            Map<String, String> form = referee.filled(PAGE, PAGE, typed);
            assertThat(referee.post(PAGE, form).text()).contains("Nothing is wrong with the opened sheets");
            Tie tie = served.ledger.event().tie(TieId.of("A1")).orElseThrow();
            assertThat(served.ledger.event().progress(tie).won(Side.AWAY)).isEqualTo(4);
            assertThat(served.stranger().get("/notices").text())
                    .contains("The sheet of Club N in tie A1", "Ruling 1")
                    .doesNotContain("Player N3");
            assertThat(served.as(Role.DESK).get(PAGE).status()).isEqualTo(403);
            assertThat(served.captain("N").get(PAGE).status()).isEqualTo(403);
        }
    }
}
