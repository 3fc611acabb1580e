package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The language of a visit: by the browser's wish, by a link that is kept, never by what cannot be read. */
class LanguagePageTest {
    private final PseudoLanguage language = PseudoLanguage.made();
    private final Served served = Served.empty(Instant.parse("2026-11-28T10:52:00Z"));

    @AfterEach
    void stop() {
        served.close();
        language.close();
    }

    private String wishing(String wish) {
        return served.stranger().get("/", Map.of("Accept-Language", wish)).body();
    }

    /** RFC 9110, 12.5.4, and RFC 4647, 3.4 (lookup); what is not there or weighs nothing is not chosen. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "vo|vo",
                "vo-AQ|vo",
                "de, vo;q=0.5, en;q=0.1|vo",
                "en, vo;q=0.9|en",
                "de, fr|en",
                "vo;q=0|en",
                "*|en",
                "../desk|en",
                "vo;q=x|en"
            })
    void follows_the_browsers_wish(String wish, String spoken) {
        assertThat(wishing(wish)).contains("<html lang=\"" + spoken + "\">");
    }

    @Test
    void pages_made_for_everybody_are_kept_for_each_language() {
        assertThat(wishing("vo")).contains("⟦Notices⟧");
        assertThat(wishing("en")).contains("Notices").doesNotContain("⟦Notices");
        assertThat(wishing("vo")).contains("⟦Notices⟧");
    }

    @Test
    void a_link_on_the_page_chooses_it_goes_back_there_and_is_kept() {
        Guest guest = served.stranger();
        Guest.Got tables = guest.get("/tables?at=10:00");
        assertThat(tables.body())
                .contains(
                        "<a href=\"/language/vo?page=%2Ftables%3Fat%3D10%3A00\" lang=\"vo\" hreflang=\"vo\">⟦English⟧</a>");
        Guest.Got back = guest.get("/language/vo?page=%2Ftables%3Fat%3D10%3A00");
        assertThat(back.path()).isEqualTo("/tables");
        assertThat(back.body()).contains("<html lang=\"vo\">");
        assertThat(guest.get("/", Map.of("Accept-Language", "en")).body()).contains("<html lang=\"vo\">");
        guest.get("/language/en");
        assertThat(guest.get("/").body()).contains("<html lang=\"en\">");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"//example.invalid", "https://example.invalid", "/\\example.invalid", "", "tables", "/a\r\nb"})
    void never_leads_to_another_site(String page) {
        assertThat(served.stranger()
                        .get("/language/vo?page="
                                + java.net.URLEncoder.encode(page, java.nio.charset.StandardCharsets.UTF_8))
                        .path())
                .isEqualTo("/");
    }

    @Test
    void a_language_that_is_not_there_is_not_found_and_one_alone_is_no_choice() {
        assertThat(served.stranger().get("/language/de").status()).isEqualTo(404);
        assertThat(served.stranger().get("/language/desk").status()).isEqualTo(404);
        language.close();
        try (Served alone = Served.empty(Instant.parse("2026-11-28T10:52:00Z"))) {
            assertThat(alone.stranger().get("/").body()).doesNotContain("/language/");
        }
    }
}
