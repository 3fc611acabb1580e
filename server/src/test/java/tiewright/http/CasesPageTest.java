package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tiewright.event.Days;
import tiewright.event.PrivateNote;
import tiewright.event.Recorded;
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
        List<PrivateNote> names = day.directory().people().entrySet().stream()
                .map(one -> (PrivateNote) new PrivateNote.PersonNamed(
                        one.getKey(), one.getValue().name(), one.getValue().bornYear()))
                .toList();
        return Served.empty(Days.moment("12:00"))
                .given(day.facts().stream().map(Recorded::fact).toList(), names);
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
                            "The tie then stands 3-1, Club N has won it.",
                            "The tie then stands 2-2, not finished.",
                            "The tie then stands 0-4, Club S has won it.");
            Map<String, String> typed = Map.of("penalty", "tie-lost", "reason", "Condition 30", "by", "R. Referee");
            assertThat(referee.send(PAGE, PAGE, Map.of("penalty", "tie-lost", "by", "R. Referee"))
                            .status())
                    .isEqualTo(422);
            Map<String, String> form = referee.filled(PAGE, PAGE, typed);
            assertThat(referee.post(PAGE, form).text()).contains("Nothing is found wrong");
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
