package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.component.VEvent;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import tiewright.desk.RetimeTie;
import tiewright.event.Actor;
import tiewright.event.Days;
import tiewright.event.DrawFact;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.event.TieId;

/** The calendars of clubs and players as a phone fetches them: entries keep their UID and rise in SEQUENCE (RFC 5545). */
class CalendarPageTest {
    private final Days day = Days.oneTie();
    private final Served served = Served.empty(Days.moment("09:00"))
            .given(day.facts().stream().map(Recorded::fact).toList(), names());

    private List<PrivateNote> names() {
        return day.directory().people().entrySet().stream()
                .map(one -> (PrivateNote) new PrivateNote.PersonNamed(
                        one.getKey(),
                        one.getValue().name(),
                        one.getKey().equals(PlayerId.of("N2")) ? OptionalInt.of(2024) : OptionalInt.empty()))
                .toList();
    }

    @AfterEach
    void stop() {
        served.close();
    }

    private Map<String, VEvent> feed(String path) {
        Guest.Got got = served.stranger().get(path);
        assertThat(got.status()).isEqualTo(200);
        return Biweekly.parse(got.body()).first().getEvents().stream()
                .collect(Collectors.toMap(event -> event.getUid().getValue(), Function.identity()));
    }

    private VEvent only(String path) {
        Map<String, VEvent> feed = feed(path);
        assertThat(feed).hasSize(1);
        return feed.values().iterator().next();
    }

    @Test
    void a_changed_time_moves_the_same_entry() {
        VEvent before = only("/club/N/calendar.ics");
        served.clock.pass(java.time.Duration.ofMinutes(5));
        served.ask(
                Actor.of(Role.ORGANISER, "o"),
                new RetimeTie(TieId.of("A1"), Optional.of(java.time.LocalTime.of(10, 40)), Optional.of("2"), "rain"));
        VEvent after = only("/club/N/calendar.ics");
        assertThat(after.getUid().getValue()).isEqualTo(before.getUid().getValue());
        assertThat(after.getSequence().getValue())
                .isGreaterThan(before.getSequence().getValue());
        assertThat(after.getDateTimeStamp().getValue())
                .isAfter(before.getDateTimeStamp().getValue());
        assertThat(after.getDateStart().getValue().toInstant()).isEqualTo(Days.moment("10:40"));
        assertThat(after.getLocation().getValue()).isEqualTo("Court 2");
        assertThat(after.getStatus().isConfirmed()).isTrue();
    }

    @Test
    void each_club_and_player_has_an_entry_of_its_own() {
        List<String> uids = List.of(
                        "/club/N/calendar.ics",
                        "/club/S/calendar.ics",
                        "/player/N1/calendar.ics",
                        "/player/N3/calendar.ics")
                .stream()
                .map(path -> only(path).getUid().getValue())
                .toList();
        assertThat(uids).doesNotHaveDuplicates().allMatch(uid -> uid.endsWith(".tiewright"));
    }

    @Test
    void a_tie_that_is_called_off_is_cancelled_and_not_dropped() {
        int before = only("/club/S/calendar.ics").getSequence().getValue();
        served.given(List.of(new DrawFact.TieCalledOff(TieId.of("A1"), 1)), List.of());
        VEvent off = only("/club/S/calendar.ics");
        assertThat(off.getStatus().isCancelled()).isTrue();
        assertThat(off.getSequence().getValue()).isGreaterThan(before);
        assertThat(off.getDateStart().getValue().toInstant()).isEqualTo(Days.moment("10:00"));
    }

    @Test
    void names_come_with_the_opening_and_as_strangers_read_them_even_for_the_own_captain() {
        assertThat(served.captain("N").get("/player/N1/calendar.ics").body()).doesNotContain("Player N2");
        Days opened = Days.oneTie().opened("A1");
        served.given(
                opened.facts().stream()
                        .skip(day.facts().size())
                        .map(Recorded::fact)
                        .toList(),
                List.of());
        String feed = served.captain("N").get("/player/N1/calendar.ics").body().replaceAll("\r\n ", "");
        assertThat(feed)
                .contains("Rubber 1: with Player N. against Player S1 and Player S2")
                .doesNotContain("Player N2");
    }

    @Test
    void club_and_player_pages_say_the_address() {
        assertThat(served.stranger().get("/club/N").body())
                .contains("href=\"/club/N/calendar.ics\"", served.service.url() + "/club/N/calendar.ics");
        assertThat(served.stranger().get("/player/N1").body()).contains("href=\"/player/N1/calendar.ics\"");
        assertThat(served.stranger().get("/club/nobody/calendar.ics").status()).isEqualTo(404);
        assertThat(served.stranger().get("/player/nobody/calendar.ics").status())
                .isEqualTo(404);
    }
}
