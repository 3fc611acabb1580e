package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.ExchangeId;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.event.TieId;
import tiewright.sheet.SealSheet;

/** The organiser also captains a club: whoever was named opens the sheets, and nobody and nothing else. */
class NeutralPersonTest {
    private static final String CHOICE = "/organiser/opening";
    private static final String TIE = "/desk/tie/A1";
    private static final ExchangeId SHEETS = ExchangeId.sheets(TieId.of("A1"));

    private static Served bothIn() {
        Served served = Served.empty(Days.moment("09:00"))
                .given(Days.oneTie().facts().stream().map(Recorded::fact).toList(), List.of());
        for (String club : List.of("N", "S")) {
            served.ask(
                    Days.captain(club),
                    new SealSheet(SHEETS, ClubId.of(club), Days.straight(club, 4), "ab".repeat(32)));
        }
        return served;
    }

    private static boolean isOpened(Served served) {
        return served.ledger.event().tie(TieId.of("A1")).orElseThrow().isOpened();
    }

    private static Guest.Got choose(Served served, Guest organiser, String label) {
        return organiser.send(CHOICE, CHOICE, Map.of("organiserIsCaptain", "yes", "opens", "person", "neutral", label));
    }

    @Test
    void the_neutral_person_presses_and_nobody_else_can() {
        try (Served served = bothIn()) {
            Guest organiser = served.as(Role.ORGANISER);
            Guest neutral = served.enter(Role.REFEREE, Optional.empty(), Optional.empty(), "second person");
            assertThat(choose(served, organiser, "second person").status()).isEqualTo(200);
            served.at(Days.moment("09:46"));
            assertThat(isOpened(served)).as("opened by itself").isFalse();
            Guest.Got refused = organiser.send(TIE, TIE + "/open", Map.of());
            assertThat(refused.status()).isEqualTo(422);
            assertThat(refused.text()).contains("Ask second person");
            assertThat(isOpened(served)).isFalse();
            neutral.send(TIE, TIE + "/open", Map.of());
            assertThat(isOpened(served)).isTrue();
        }
    }

    /** The organiser who also captains a club cannot pass for the neutral person by a second link. */
    @Test
    void no_second_link_passes_for_the_neutral_person() {
        try (Served served = bothIn()) {
            Guest organiser = served.as(Role.ORGANISER);
            served.enter(Role.REFEREE, Optional.empty(), Optional.empty(), "second person");
            choose(served, organiser, "second person");
            Map<String, String> link = Map.of("role", "desk", "label", "second person", "club", "", "player", "");
            Guest.Got twin = organiser.send("/organiser/links", "/organiser/links/one", link);
            assertThat(twin.status()).isEqualTo(422);
            assertThat(twin.text()).contains("has the label second person already");
            Guest other = served.enter(Role.DESK, Optional.empty(), Optional.empty(), "second person");
            served.at(Days.moment("09:46"));
            assertThat(other.send(TIE, TIE + "/open", Map.of()).status()).isEqualTo(422);
            assertThat(isOpened(served)).isFalse();
        }
    }

    @Test
    void a_person_without_a_link_cannot_be_named_and_the_way_out_is_said() {
        try (Served served = bothIn()) {
            Guest organiser = served.as(Role.ORGANISER);
            assertThat(organiser.get(CHOICE).text()).contains("make one under Personal links");
            Guest.Got refused = choose(served, organiser, "somebody");
            assertThat(refused.status()).isEqualTo(422);
            assertThat(refused.text()).contains("No link of the desk or the referee has the label somebody");
        }
    }

    @Test
    void a_choice_taken_back_lets_the_clock_open_again() {
        try (Served served = bothIn()) {
            Guest organiser = served.as(Role.ORGANISER);
            served.enter(Role.DESK, Optional.empty(), Optional.empty(), "second person");
            choose(served, organiser, "second person");
            organiser.send(CHOICE, CHOICE, Map.of("organiserIsCaptain", "yes", "opens", "automatic", "neutral", ""));
            served.at(Days.moment("09:46"));
            assertThat(isOpened(served)).isTrue();
        }
    }
}
