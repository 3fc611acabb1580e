package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tiewright.event.Card;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.TieId;

/** Forms that a phone kept and sends by itself: answered in a way that a script can read, and counted once. */
class OutboxTest {
    private static final String CARD = "/cards/B-2-1/3";
    private static final Map<String, String> TYPED =
            Map.of("home-1", "6", "away-1", "11", "how", "played", "confirmed", "yes");

    private Served served;
    private Guest desk;

    @BeforeEach
    void open() {
        served = Served.demo(Instant.parse("2026-11-28T10:52:00Z"));
        desk = served.as(Role.DESK);
    }

    @AfterEach
    void close() {
        served.close();
    }

    private Guest.Got send(Map<String, String> fields) {
        String body = fields.entrySet().stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return desk.raw(
                CARD,
                body,
                Map.of(
                        "Content-Type",
                        "application/x-www-form-urlencoded",
                        "Origin",
                        served.service.url(),
                        "Sent-From",
                        "outbox"));
    }

    private Card card() {
        Tie tie = served.ledger.event().tie(TieId.of("B-2-1")).orElseThrow();
        return tie.card(RubberNo.of(3));
    }

    @Test
    void it_is_told_that_a_form_arrived() {
        Guest.Got got = send(desk.filled(CARD, CARD, TYPED));
        assertThat(got.status()).isEqualTo(204);
        assertThat(card().entries()).hasSize(1);
    }

    @Test
    void sent_again_because_the_answer_was_lost_it_counts_once() {
        Map<String, String> form = desk.filled(CARD, CARD, TYPED);
        send(form);
        assertThat(send(form).status()).isEqualTo(204);
        assertThat(card().entries()).hasSize(1);
    }

    @Test
    void what_another_events_page_made_is_not_taken() {
        Map<String, String> form = desk.filled(CARD, CARD, TYPED);
        form.put("seen", "of another event");
        Guest.Got got = send(form);
        assertThat(got.status()).isEqualTo(422);
        assertThat(got.text()).contains("This was typed for another event, or before a copy was restored.");
        assertThat(card().entries()).isEmpty();
        assertThat(desk.post(CARD, form).status())
                .as("a person who looks at it may send it")
                .isLessThan(400);
    }

    /** The bytes of build/index.js in idb 8.0.4 as the npm registry has it (ISC licence, beside it). */
    @Test
    void the_library_that_keeps_forms_is_the_published_one() throws IOException, NoSuchAlgorithmException {
        try (InputStream file = getClass().getResourceAsStream("/tiewright/static/idb.js")) {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(file.readAllBytes());
            assertThat(HexFormat.of().formatHex(digest))
                    .isEqualTo("e01b45d2e088a7197e8b41ba9b51a0876969da67cc08e6efbc3d5d7ab6ac836c");
        }
    }
}
