package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

/** What a captain reads at a glance on the invented day: what else could be, against whom, and the own next rubber. */
class CaptainsAnswersTest {
    private static final String PROPOSAL = "/captain/proposal/A-3-2";
    private static final Served SERVED = Served.demo(Instant.parse("2026-11-28T10:52:00Z"));

    @AfterAll
    static void stop() {
        SERVED.close();
    }

    private static Document page(Guest guest, String path) {
        return Jsoup.parse(guest.get(path).body());
    }

    private static int percent(String said) {
        return Integer.parseInt(said.replaceAll("\\D", ""));
    }

    @Test
    void each_if_has_its_answer_in_one_line_and_none_is_better_than_the_first_proposal() {
        Document page = page(SERVED.captain("KS"), PROPOSAL);
        int best = percent(page.selectFirst(".chance b").text());
        assertThat(page.select("main div.row").eachText())
                .anySatisfy(row -> assertThat(row).matches("\\p{L}+ cannot play \\d+ %"))
                .anySatisfy(row ->
                        assertThat(row).startsWith("Only 7 come best without").endsWith(" %"));
        assertThat(page.select("main div.row > b").eachText())
                .isNotEmpty()
                .allSatisfy(said -> assertThat(percent(said)).isLessThanOrEqualTo(best));
    }

    @Test
    void what_is_nearly_as_good_is_told_as_what_changes() {
        Document page = page(SERVED.captain("KS"), PROPOSAL);
        assertThat(page.select("details.fold > summary b").eachText())
                .anySatisfy(title -> assertThat(title).matches("Swap \\p{L}+ and \\p{L}+"));
        assertThat(page.select("details.fold > summary").eachText())
                .anySatisfy(
                        line -> assertThat(line).matches("Swap .* \\d+ % likely to be better than the first \\d+ %"));
    }

    @Test
    void our_pairs_stand_against_those_we_expect_with_whom_and_why() {
        Document page = page(SERVED.captain("KS"), PROPOSAL);
        assertThat(page.select(".grid-of-pairs thead th")).hasSize(4);
        assertThat(page.select(".grid-of-pairs tbody tr")).hasSize(4);
        assertThat(page.select(".grid-of-pairs td.number").eachText())
                .hasSize(16)
                .allMatch(cell -> cell.matches("\\d+ %"));
        assertThat(page.text()).contains("Expected: their list two by two").contains("in any order");
        assertThat(page(SERVED.captain("KS"), PROPOSAL + "?against=straight").text())
                .contains("strongest in rubber 1");
    }

    @Test
    void the_captain_says_once_who_it_is_and_reads_the_own_next_rubber_on_the_first_page() {
        Guest captain = SERVED.captain("KS");
        assertThat(page(captain, "/captain").select(".own-next")).isEmpty();
        assertThat(page(captain, "/captain").select("a[href='/captain?me=KS1']").text())
                .contains("Maren");
        captain.get("/captain?me=KS1");
        assertThat(page(captain, "/captain").select(".own-next").text())
                .contains("You may play against Copperlight", "court 3, not before 11:30");
        assertThat(page(captain, "/captain").select(".own-next").attr("href")).isEqualTo("/player/KS1");
        captain.get("/captain?me=OL1");
        assertThat(page(captain, "/captain").select(".own-next"))
                .as("nobody of another club")
                .isEmpty();
    }

    @Test
    void who_the_captain_is_changes_no_page_of_anybody_else() {
        Guest captain = SERVED.captain("KS");
        List<String> pages = List.of("/", "/tie/A-3-2", "/player/KS1");
        Guest stranger = SERVED.stranger();
        Map<String, String> before = Map.of("/", stranger.get("/").text());
        captain.get("/captain?me=KS1");
        for (String path : pages) {
            assertThat(stranger.get(path).text()).doesNotContain("You may play");
        }
        assertThat(stranger.get("/").text()).isEqualTo(before.get("/"));
    }
}
