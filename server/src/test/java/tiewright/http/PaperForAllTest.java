package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import tiewright.event.Days;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote.PersonNamed;
import tiewright.event.Recorded;
import tiewright.event.Role;

/** What is printed lies on courts and hangs on walls: minors are short on it, whoever prints. */
class PaperForAllTest {
    @Test
    void minors_are_short_on_sheets_and_cards_that_officials_print() {
        Days day = Days.oneTie().opened("A1");
        int minor = Days.DATE.getYear() - 15;
        try (Served served = Served.empty(Days.moment("10:00"))
                .given(
                        day.facts().stream().map(Recorded::fact).toList(),
                        List.of(new PersonNamed(PlayerId.of("N1"), "Ines Varley", OptionalInt.of(minor))))) {
            for (Role role : List.of(Role.DESK, Role.ORGANISER, Role.REFEREE)) {
                Guest official = served.as(role);
                for (String paper : List.of("/paper/sheets", "/paper/cards", "/paper/tie/A1")) {
                    assertThat(official.get(paper).text())
                            .as(role + " prints " + paper)
                            .contains("Ines V.")
                            .doesNotContain("Varley");
                }
            }
        }
    }
}
