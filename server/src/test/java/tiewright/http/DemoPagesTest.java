package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.time.Duration;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import tiewright.desk.RecordCard;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.ExchangeId;
import tiewright.event.How;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.TieId;
import tiewright.scoring.Score;
import tiewright.sheet.SealSheet;

/** Pages over the demo event: as they stood, what no captain can miss, and what makes a receipt checkable. */
class DemoPagesTest {
    private static final Pattern RECEIPT =
            Pattern.compile("(?s)<p class=\"code\">([0-9a-f]{64})</p>.*?<pre[^>]*>(.*?)</pre>");
    private static final ClubId KS = ClubId.of("KS");
    private final Served served = Served.demo(Instant.parse("2026-11-28T10:52:00Z"));

    @AfterEach
    void stop() {
        served.close();
    }

    @Test
    void a_table_is_shown_as_it_stood_at_an_earlier_minute() {
        String before = main(served.stranger().get("/tables").text());
        served.clock.pass(Duration.ofMinutes(5));
        served.ask(
                Actor.of(Role.DESK, "test"),
                new RecordCard(TieId.of("B-2-2"), RubberNo.of(4), List.of(Score.of(11, 9)), How.PLAYED));
        String now = main(served.stranger().get("/tables").text());
        assertThat(now).isNotEqualTo(before);
        assertThat(main(served.stranger().get("/tables?at=10:52").text())).isEqualTo(before);
        assertThat(main(served.stranger().get("/tables?at=10:56").text())).isEqualTo(before);
        assertThat(main(served.stranger().get("/tables?at=10:57").text())).isEqualTo(now);
        assertThat(served.stranger().get("/tables?at=10:52").text()).contains("As it stood at 10:52.");
    }

    @Test
    void a_time_that_is_none_or_still_ahead_is_said_and_the_present_shown() {
        String now = main(served.stranger().get("/bracket").text());
        for (String typed : List.of("half%20past", "25:00", "%3Cb%3E", "23:59")) {
            Guest.Got got = served.stranger().get("/bracket?at=" + typed);
            assertThat(got.status()).isEqualTo(200);
            assertThat(main(got.text())).isEqualTo(now);
            assertThat(got.body()).contains("id=\"at-error\"").doesNotContain("<b>\"");
        }
    }

    /** FIPS 180-4, by the SHA-256 of the Java library. */
    @Test
    void the_page_of_an_opened_tie_shows_all_that_its_receipts_are_made_from() throws GeneralSecurityException {
        Matcher receipts = RECEIPT.matcher(served.stranger().get("/tie/A-1-1").body());
        int found = 0;
        while (receipts.find()) {
            byte[] lines = receipts.group(2).getBytes(StandardCharsets.UTF_8);
            assertThat(HexFormat.of()
                            .formatHex(MessageDigest.getInstance("SHA-256").digest(lines)))
                    .isEqualTo(receipts.group(1));
            found++;
        }
        assertThat(found).isEqualTo(2);
        assertThat(served.stranger().get("/tie/A-3-2").body()).doesNotContain("<pre");
    }

    @Test
    void the_next_deadline_stands_on_every_page_of_its_captains_and_on_nobody_elses() {
        Guest captain = served.captain("KS");
        for (String page :
                List.of("/", "/tables", "/captain/squad", "/tie/A-1-1", "/captain/proposal/A-3-2", "/conditions")) {
            assertThat(captain.get(page).body()).as(page).contains("data-deadline=\"2026-11-28T10:57:00Z\"");
        }
        assertThat(served.captain("GR").get("/").body())
                .contains("data-deadline=\"2026-11-28T11:15:00Z\"")
                .doesNotContain("10:57:00Z");
        assertThat(served.stranger().get("/").body()).doesNotContain("data-deadline");
        assertThat(served.as(Role.DESK).get("/").body()).doesNotContain("data-deadline");
        seal();
        assertThat(captain.get("/tables").body()).contains("10:57:00Z");
        sealThePair();
        assertThat(captain.get("/tables").body()).doesNotContain("data-deadline");
    }

    private void sealThePair() {
        Actor captain = new Actor(Role.CAPTAIN, Optional.of(KS), "captain", "test");
        served.ask(
                captain,
                new SealSheet(ExchangeId.decider(TieId.of("A-2-2")), KS, Sheet.decider(pair(1, 4)), "5e".repeat(32)));
    }

    private void seal() {
        Actor captain = new Actor(Role.CAPTAIN, Optional.of(KS), "captain", "test");
        Sheet sheet = Sheet.full(pair(1, 4), pair(2, 3), pair(5, 7), pair(6, 8));
        served.ask(captain, new SealSheet(ExchangeId.sheets(TieId.of("A-3-2")), KS, sheet, "5e".repeat(32)));
    }

    private static Pair pair(int one, int other) {
        return Pair.of(PlayerId.of("KS" + one), PlayerId.of("KS" + other));
    }

    /** The page without how old it is and without what the form repeats. */
    private static String main(String text) {
        String from = text.substring(text.indexOf("Pool A") < 0 ? text.indexOf("Semi-finals") : text.indexOf("Pool A"));
        return from.substring(0, from.indexOf("As it stood at An earlier"));
    }
}
