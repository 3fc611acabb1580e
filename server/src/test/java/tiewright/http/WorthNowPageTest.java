package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** What an opened tie is worth stands where its captains are led, for them alone. No source: our own page. */
class WorthNowPageTest {
    private static final String TIE = "B-2-2"; // two rubbers to one, the fourth to come

    @Test
    void a_captain_reads_results_and_the_chance_of_what_is_left() {
        try (Served served = Served.demo(Instant.parse("2026-11-28T10:52:00Z"))) {
            Guest captain = served.captain("OL");
            assertThat(captain.get("/tie/" + TIE).body()).contains("href=\"/captain/proposal/" + TIE + "\"");
            Document page = Jsoup.parse(captain.get("/captain/proposal/" + TIE).body());
            assertThat(page.select(".title").text()).isEqualTo("What the tie is worth now");
            assertThat(page.select(".pair-row .at").eachText())
                    .hasSize(4)
                    .filteredOn("won"::equals)
                    .hasSize(2);
            String left = page.select(".pair-row .at").last().text();
            assertThat(left).matches("\\d+ % \\d+ to \\d+");
            int rubber = Integer.parseInt(left.replaceAll(" .*", ""));
            int tie = Integer.parseInt(page.select(".chance b").text().replace(" %", ""));
            assertThat(tie)
                    .as("a tie that one more rubber wins")
                    .isGreaterThan(rubber)
                    .isLessThan(100);
            assertThat(Jsoup.parse(served.captain("LQ")
                                    .get("/captain/proposal/" + TIE)
                                    .body())
                            .select(".chance b")
                            .text())
                    .as("the other side of the same game, with its own judgements")
                    .isNotEmpty();
        }
    }

    @Test
    void nobody_else_is_led_there() {
        try (Served served = Served.demo(Instant.parse("2026-11-28T10:52:00Z"))) {
            assertThat(served.stranger().get("/tie/" + TIE).body()).doesNotContain("/captain/proposal");
            assertThat(served.captain("KS").get("/tie/" + TIE).body()).doesNotContain("/captain/proposal");
            assertThat(served.captain("KS").get("/captain/proposal/" + TIE).status())
                    .isEqualTo(404);
        }
    }
}
