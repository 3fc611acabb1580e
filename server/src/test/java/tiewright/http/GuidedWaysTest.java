package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import tiewright.event.Days;
import tiewright.event.How;
import tiewright.event.PlayFact;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/** What goes wrong on a day is met on four screens at most, and nothing has happened before the last press. Our own aim. */
class GuidedWaysTest {
    private static final String NOTHING_YET = "Nothing has happened yet.";

    private final Served served = Served.of(
            Days.empty()
                    .clubs("N", "S", "W")
                    .courts("1", "2")
                    .poolTie("A-1", "A", 1, "N", "S")
                    .poolTie("A-2", "A", 2, "N", "W"),
            Days.moment("10:00"));
    private final Guest organiser = served.as(Role.ORGANISER);

    @AfterEach
    void stop() {
        served.close();
    }

    private Guest.Got follow(Guest.Got page, String href) {
        assertThat(page.body()).as(page.path()).contains("href=\"" + href + "\"");
        return organiser.get(href);
    }

    private void nothingYet(Guest.Got page, int step, int of) {
        assertThat(page.text()).as(page.path()).contains("Step " + step + " of " + of + ". " + NOTHING_YET);
    }

    @Test
    void a_club_goes_home_on_two_screens() {
        long before = served.ledger.event().seq();
        Guest.Got which = follow(organiser.get("/organiser"), "/organiser/withdraw");
        nothingYet(which, 1, 2);
        Guest.Got what = follow(which, "/organiser/withdraw/S");
        nothingYet(what, 2, 2);
        assertThat(served.ledger.event().seq()).isEqualTo(before);
        organiser.send(
                "/organiser/withdraw/S",
                "/organiser/withdraw/S",
                Map.of("treatment", "annul", "reason", "Two are ill", "by", "Ines"));
        assertThat(served.ledger.event().withdrawals()).hasSize(1);
    }

    @Test
    void a_court_that_is_lost_is_asked_about_on_screens_that_change_nothing() {
        Guest.Got first = follow(organiser.get("/organiser"), "/organiser/day-breaks");
        nothingYet(first, 1, 4);
        assertThat(first.body()).as("help first").contains("<a class=\"row\" href=\"/hurt\">");
        for (String what : List.of("court", "stop", "late", "injury", "closing")) {
            Guest.Got asked = follow(first, "/organiser/day-breaks?what=" + what);
            nothingYet(asked, 2, 4);
            assertThat(asked.body().contains("id=\"lost\"")).as(what).isEqualTo(what.equals("court"));
            assertThat(asked.body().contains("id=\"closes\"")).as(what).isEqualTo(what.equals("closing"));
        }
    }

    @Test
    void a_wrong_score_is_shown_with_what_hangs_on_it_before_it_is_changed() {
        RubberNo rubber = RubberNo.of(1);
        served.given(
                List.of(new PlayFact.CardEntered(TieId.of("A-1"), rubber, Days.games("11-5"), How.PLAYED)), List.of());
        long before = served.ledger.event().seq();
        Guest.Got typed = organiser.get("/organiser/correct/A-1/1");
        nothingYet(typed, 3, 4);
        Guest.Got hangs = organiser.send(
                "/organiser/correct/A-1/1",
                "/organiser/correct/A-1/1",
                Map.of("home-1", "5", "away-1", "11", "how", "played"));
        nothingYet(hangs, 4, 4);
        assertThat(hangs.text()).contains("Let it stand", "The card shows something else");
        assertThat(served.ledger.event().seq()).isEqualTo(before);
    }
}
