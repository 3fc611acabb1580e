package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tiewright.conditions.Plays;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Directory;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.Role;

/** What players state to play in, as the organiser asks and keeps it; nobody else's business. */
class PlaysStatedTest {
    private static final String SQUAD = "/organiser/club/N";
    private static final String PASTE = "/organiser/clubs/paste";
    private static final PlayerId N1 = PlayerId.of("N1");

    private final Served kinds =
            Served.of(Days.oneTie().with(Setting.RUBBER_KINDS, "women;men;mixed;open"), Days.moment("09:00"));

    @AfterEach
    void stop() {
        kinds.close();
    }

    /** The table as a browser sends it, with these cells changed. */
    private static void sends(Served served, Map<String, String> typed) {
        Guest organiser = served.as(Role.ORGANISER);
        Map<String, String> table = new LinkedHashMap<>(FormFields.of(organiser.get(SQUAD), SQUAD + "/squad"));
        table.putAll(typed);
        organiser.post(SQUAD + "/squad", table);
    }

    @Test
    void a_squad_is_asked_where_rubbers_have_kinds_and_keeps_what_is_stated() {
        assertThat(kinds.as(Role.ORGANISER).get(SQUAD).text()).contains("Plays in", "women's rubbers", "not stated");
        sends(kinds, Map.of("p-N1-plays", "women", "p-N2-plays", "men"));
        assertThat(kinds.ledger.directory().stated()).isEqualTo(Map.of(N1, Plays.WOMEN, PlayerId.of("N2"), Plays.MEN));
        assertThat(kinds.ledger.directory().name(N1)).isEqualTo("Player N1");
        sends(kinds, Map.of("p-N1-plays", ""));
        assertThat(kinds.ledger.directory().stated()).containsOnlyKeys(PlayerId.of("N2"));
    }

    @Test
    void a_squad_of_open_rubbers_is_not_asked_but_keeps_what_was_stated() {
        try (Served open = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            assertThat(open.as(Role.ORGANISER).get(SQUAD).text()).doesNotContain("Plays in");
            open.given(
                    List.of(),
                    List.of(new PrivateNote.PersonNamed(
                            N1, new Directory.Person("Ida", OptionalInt.empty(), Optional.of(Plays.MEN)))));
            assertThat(open.as(Role.ORGANISER).get(SQUAD).text()).contains("Plays in");
            Guest organiser = open.as(Role.ORGANISER);
            Map<String, String> table = new LinkedHashMap<>(FormFields.of(organiser.get(SQUAD), SQUAD + "/squad"));
            table.keySet().removeIf(field -> field.endsWith("-plays"));
            table.put("p-N1-name", "Ida Roth");
            organiser.post(SQUAD + "/squad", table);
            assertThat(open.ledger.directory().name(N1)).isEqualTo("Ida Roth");
            assertThat(open.ledger.directory().person(N1).orElseThrow().plays()).contains(Plays.MEN);
        }
    }

    @ParameterizedTest
    @CsvSource({"women, WOMEN", "Women, WOMEN", "women\u2019s, WOMEN", "W, WOMEN", "men, MEN", "men's, MEN", "m, MEN"})
    void a_pasted_list_brings_it(String written, Plays plays) {
        Guest organiser = kinds.as(Role.ORGANISER);
        String list = "name\tplays\nAnn Roe\t" + written + "\nBo Lee\t\n";
        Guest.Got shown =
                organiser.sendInParts(PASTE, PASTE, Map.of("list", list, "of-club", "N", "press", "look"), Map.of());
        assertThat(shown.text()).contains("Plays in", "Ann Roe");
        Map<String, String> again = new LinkedHashMap<>(FormFields.of(shown, PASTE));
        again.put("press", "keep");
        organiser.post(PASTE, again);
        assertThat(kinds.ledger.event().squad(ClubId.of("N"))).hasSize(10);
        assertThat(kinds.ledger.directory().stated().values()).containsExactly(plays);
    }

    @ParameterizedTest
    @ValueSource(strings = {"ladies", "both", "w/m"})
    void what_cannot_be_read_is_refused_beside_its_line(String written) {
        String list = "name\tplays\nAnn Roe\t" + written + "\n";
        Guest.Got refused = kinds.as(Role.ORGANISER)
                .sendInParts(PASTE, PASTE, Map.of("list", list, "of-club", "N", "press", "look"), Map.of());
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.text())
                .contains("\"" + written + "\" is not what a player plays in: write women or men, or leave it empty.");
    }

    @Test
    void a_player_is_told_that_it_is_held_and_nobody_else_reads_it() {
        List<Guest> others = List.of(
                kinds.stranger(),
                kinds.captain("S"),
                kinds.as(Role.DESK),
                kinds.as(Role.REFEREE),
                kinds.player("N", "N1"));
        List<String> pages = List.of("/", "/ties", "/tie/A1", "/clubs", "/captain", "/desk", "/player");
        List<String> before = others.stream()
                .flatMap(one -> pages.stream().map(page -> one.get(page).text()))
                .toList();
        kinds.given(
                List.of(),
                List.of(new PrivateNote.PersonNamed(
                        N1, new Directory.Person("Player N1", OptionalInt.empty(), Optional.of(Plays.WOMEN)))));
        assertThat(others.stream()
                        .flatMap(one -> pages.stream().map(page -> one.get(page).text()))
                        .toList())
                .isEqualTo(before);
        assertThat(kinds.as(Role.ORGANISER).get("/organiser/keep/player/N1").body())
                .contains("Stated to play in women's rubbers");
    }
}
