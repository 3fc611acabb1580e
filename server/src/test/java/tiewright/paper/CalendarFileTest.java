package tiewright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Calendars against RFC 5545, read back by the library's own parser and unfolded as the standard says. */
class CalendarFileTest {
    private static final Instant START = Instant.parse("2026-11-28T13:20:00Z");

    private static CalendarFile.Entry entry(String summary, String description) {
        return new CalendarFile.Entry(
                "A-1-1.KS@20261128T080000Z.tiewright",
                3,
                START.minusSeconds(60),
                START,
                Optional.of(START.plus(Duration.ofMinutes(20))),
                summary,
                "Court 3",
                description,
                "http://192.0.2.7:7070/tie/A-1-1",
                false);
    }

    private static String text(CalendarFile.Entry... entries) {
        return new CalendarFile("Kestrel Sound", List.of(entries)).text();
    }

    /** RFC 5545 section 3.1: a line break followed by one blank is taken out, and nothing else. */
    private static String unfolded(String text) {
        return text.replaceAll("\r\n[ \t]", "");
    }

    @Test
    void the_published_example_of_unfolding_comes_out_whole() {
        String published = "DESCRIPTION:This is a lo\r\n ng description\r\n  that exists on a long line.";
        assertThat(unfolded(published)).isEqualTo("DESCRIPTION:This is a long description that exists on a long line.");
        String calendar =
                "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:x\r\nBEGIN:VEVENT\r\nUID:1\r\nDTSTAMP:20261128T000000Z\r\n"
                        + published + "\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n";
        assertThat(Biweekly.parse(calendar)
                        .first()
                        .getEvents()
                        .get(0)
                        .getDescription()
                        .getValue())
                .isEqualTo("This is a long description that exists on a long line.");
    }

    @Test
    void no_line_is_longer_than_75_octets_and_unfolding_gives_the_text_back() {
        String names = "Žofie Černá und 山田太郎, Ärger 🏸 ".repeat(12).strip();
        String text = text(entry(names, names));
        List<String> lines = Arrays.asList(text.split("\r\n"));
        assertThat(lines).allMatch(line -> line.getBytes(StandardCharsets.UTF_8).length <= 75);
        assertThat(lines).anyMatch(line -> line.getBytes(StandardCharsets.UTF_8).length >= 72);
        assertThat(text.replace("\r\n", "")).doesNotContain("\r", "\n");
        assertThat(unfolded(text)).contains("SUMMARY:" + names.replace(",", "\\,"));
    }

    @Test
    void a_line_of_exactly_75_octets_stays_and_one_more_octet_is_folded() {
        assertThat(CalendarFile.folded("x".repeat(75))).isEqualTo("x".repeat(75) + "\r\n");
        assertThat(CalendarFile.folded("x".repeat(76))).isEqualTo("x".repeat(75) + "\r\n x\r\n");
        assertThat(CalendarFile.folded("x".repeat(74) + "é")).isEqualTo("x".repeat(74) + "\r\n é\r\n");
        assertThat(CalendarFile.folded("x".repeat(75 + 74 + 1)))
                .isEqualTo("x".repeat(75) + "\r\n " + "x".repeat(74) + "\r\n x\r\n");
    }

    @Test
    void commas_semicolons_backslashes_and_line_breaks_are_escaped_as_text() {
        String text = unfolded(text(entry("a,b;c\\d", "one\ntwo\u0007")));
        assertThat(text).contains("SUMMARY:a\\,b\\;c\\\\d\r\n").contains("DESCRIPTION:one\\ntwo \r\n");
        VEvent back = Biweekly.parse(text).first().getEvents().get(0);
        assertThat(back.getSummary().getValue()).isEqualTo("a,b;c\\d");
        assertThat(back.getDescription().getValue()).isEqualTo("one\ntwo ");
    }

    @Test
    void an_entry_reads_back_with_its_moment_its_number_and_its_state() {
        ICalendar back = Biweekly.parse(text(entry("s", "d"))).first();
        assertThat(back.validate(biweekly.ICalVersion.V2_0).isEmpty()).isTrue();
        VEvent event = back.getEvents().get(0);
        assertThat(event.getUid().getValue()).isEqualTo("A-1-1.KS@20261128T080000Z.tiewright");
        assertThat(event.getSequence().getValue()).isEqualTo(3);
        assertThat(event.getDateStart().getValue().toInstant()).isEqualTo(START);
        assertThat(event.getDateEnd().getValue().toInstant()).isEqualTo(START.plusSeconds(1200));
        assertThat(event.getStatus().isConfirmed()).isTrue();
        assertThat(text(entry("s", "d")))
                .contains("DTSTART:20261128T132000Z\r\n")
                .startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\n");
    }

    /** RFC 5545 section 3.6.1, the all-day example: the library that writes our files reads it as one day. */
    @Test
    void the_published_all_day_event_lasts_one_day() {
        String published =
                "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:x\r\nBEGIN:VEVENT\r\nUID:19970901T130000Z-123403@example.com\r\n"
                        + "DTSTAMP:19970901T130000Z\r\nDTSTART;VALUE=DATE:19971102\r\nSUMMARY:Our Blissful Anniversary\r\nTRANSP:TRANSPARENT\r\n"
                        + "CLASS:CONFIDENTIAL\r\nCATEGORIES:ANNIVERSARY,PERSONAL,SPECIAL OCCASION\r\nRRULE:FREQ=YEARLY\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n";
        VEvent event = Biweekly.parse(published).first().getEvents().get(0);
        assertThat(event.getUid().getValue()).isEqualTo("19970901T130000Z-123403@example.com");
        assertThat(event.getDateStart().getValue().hasTime()).isFalse();
        assertThat(event.getDateEnd()).isNull();
        assertThat(event.getDuration()).isNull();
    }
}
