package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Role;

/** An organiser brings squads from a list, through the pages and without scripts. */
class PastePageTest {
    private static final String HERE = "/organiser/clubs/paste";
    private static final String TWO_CLUBS =
            "Brackenfold\tInes Roth\t1\nBrackenfold\tBo Lind\t2\nBrackenfold\tAna Roy\t3\n"
                    + "Hollowmere\tUma Hart\t1\nHollowmere\tJo Penn\t2\nHollowmere\tLi Moor\t3\n";

    private final Served served = Served.empty(Instant.parse("2027-09-03T07:00:00Z"));
    private final Guest organiser = served.as(Role.ORGANISER);

    @AfterEach
    void stop() {
        served.close();
    }

    private Guest.Got look(Map<String, String> typed) {
        return organiser.sendInParts(HERE, HERE, typed, Map.of());
    }

    /** The same page's form again, with another press. */
    private Guest.Got again(Guest.Got page, Map<String, String> changes) {
        Map<String, String> all = new LinkedHashMap<>(FormFields.of(page, HERE));
        all.putAll(changes);
        return organiser.post(HERE, all);
    }

    @Test
    void what_a_list_gives_is_shown_first_and_kept_by_a_second_press() {
        long before = served.ledger.event().seq();
        Guest.Got shown = look(Map.of("list", TWO_CLUBS, "press", "look"));
        assertThat(shown.text())
                .contains("2 new clubs and 6 new players.", "Nothing is kept yet.", "Enter 2 clubs and 6 players");
        assertThat(served.ledger.event().seq()).isEqualTo(before);
        again(shown, Map.of("press", "keep"));
        assertThat(served.ledger.event().clubs()).containsOnlyKeys(ClubId.of("BRA"), ClubId.of("HOL"));
        assertThat(served.ledger.event().squad(ClubId.of("HOL"))).hasSize(3);
        assertThat(organiser.get("/organiser/club/BRA").body()).contains("Ines Roth", "Ana Roy");

        Guest.Got same = look(Map.of("list", TWO_CLUBS + "Hollowmere\tKim Vale\t4\n", "press", "look"));
        assertThat(same.text()).contains("No new club and 1 new player. 6 are there already.");
    }

    @Test
    void names_alone_are_enough_for_a_club_that_is_chosen_or_new() {
        Guest.Got shown = look(Map.of("list", "1. Ines Roth\n2. Bo Lind\n", "new-club", "Seewinkel", "press", "look"));
        again(shown, Map.of("press", "keep", "new-SEE-club", "SWK"));
        assertThat(served.ledger.event().squad(ClubId.of("SEE"))).hasSize(2);
        Guest.Got more = look(Map.of("list", "Ana Roy", "of-club", "SEE", "press", "look"));
        again(more, Map.of("press", "keep"));
        assertThat(organiser.get("/organiser/club/SEE").body())
                .contains("Ines Roth", "Ana Roy")
                .doesNotContain("1. Ines");
    }

    @Test
    void nothing_is_kept_that_was_not_shown() {
        Guest.Got shown = look(Map.of("list", "Ines Roth", "new-club", "Seewinkel", "press", "look"));
        Guest.Got other = again(shown, Map.of("list", "Ines Roth\nBo Lind", "press", "keep"));
        assertThat(other.text()).contains("1 new club and 2 new players.", "Nothing is kept yet.");
        assertThat(served.ledger.event().clubs()).isEmpty();
    }

    @Test
    void a_fault_keeps_the_list_and_says_its_line() {
        String list = "Seewinkel\tInes Roth\t1\nSeewinkel\t\t2\nSeewinkel\tBo Lind\tbest\nSeewinkel\tAna Roy\t0\n";
        Guest.Got refused = look(Map.of("list", list, "press", "look"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.text()).contains("Line 2 has no name");
        Guest.Got ranks = again(
                refused,
                Map.of(
                        "column-0",
                        "club",
                        "column-1",
                        "name",
                        "column-2",
                        "rank",
                        "list",
                        list.replace("\t\t", "\tJo\t"),
                        "press",
                        "keep"));
        assertThat(ranks.text()).contains("\"best\" is not a whole number", "A rank is a whole number from 1");
        assertThat(FormFields.of(ranks, HERE).get("list")).contains("Ana Roy");
        assertThat(served.ledger.event().clubs()).isEmpty();
        Guest.Got broken = look(Map.of("list", "Ines\t1\n\"Bo\t2\n", "new-club", "S", "press", "look"));
        assertThat(broken.text()).contains("cannot be read from line 2 on");
        assertThat(FormFields.of(broken, HERE).get("list")).contains("\"Bo");
    }

    @Test
    void a_chosen_file_counts_and_one_that_is_no_text_says_so() {
        Guest.Got shown = organiser.sendInParts(
                HERE,
                HERE,
                Map.of("list", "", "press", "look"),
                Map.of("list-file", TWO_CLUBS.getBytes(StandardCharsets.UTF_8)));
        assertThat(shown.text()).contains("Enter 2 clubs and 6 players");
        Guest.Got refused = organiser.sendInParts(
                HERE, HERE, Map.of("list", "", "press", "look"), Map.of("list-file", new byte[] {(byte) 0xC3, 0x28}));
        assertThat(refused.text()).contains("This file is not plain text.");
    }

    @Test
    void only_the_organiser_sees_it() {
        assertThat(served.as(Role.DESK).get(HERE).status()).isEqualTo(403);
    }
}
