package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.desk.RetimeTie;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.ExchangeId;
import tiewright.event.PlayerId;
import tiewright.event.Role;
import tiewright.event.TieId;
import tiewright.sheet.SealSheet;

/** Alarms that a phone takes into its own calendar (RFC 5545, VALARM in section 3.6.6), read back by the library's parser. */
class AlarmsTest {
    private static final String OF_CAPTAIN = "/captain/alarms.ics";

    private static List<VEvent> events(Guest guest, String path) {
        Guest.Got got = guest.get(path);
        assertThat(got.status()).isEqualTo(200);
        return Biweekly.parse(got.body()).first().getEvents();
    }

    private static void seal(Served served) {
        served.ask(
                Days.captain("N"),
                new SealSheet(
                        ExchangeId.sheets(TieId.of("A1")), ClubId.of("N"), Days.straight("N", 4), "ab".repeat(32)));
    }

    private static List<Long> minutesBefore(VEvent event) {
        return event.getAlarms().stream()
                .map(VAlarm::getTrigger)
                .map(trigger ->
                        Duration.ofMillis(trigger.getDuration().toMillis()).toMinutes())
                .sorted()
                .toList();
    }

    @Test
    void a_captains_phone_rings_15_and_5_minutes_before_a_sheet_is_due() {
        try (Served served = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            VEvent sheet = events(served.captain("N"), OF_CAPTAIN).get(0);
            int minutes = served.ledger.event().conditions().sheetDeadlineMinutes();
            assertThat(sheet.getDateStart().getValue().toInstant())
                    .isEqualTo(Days.moment("10:00").minus(Duration.ofMinutes(minutes)));
            assertThat(minutesBefore(sheet)).containsExactly(-15L, -5L);
            assertThat(sheet.getSummary().getValue()).startsWith("Sheet due: ");
        }
    }

    @Test
    void a_sheet_that_is_in_takes_its_alarm_out_again() {
        try (Served served = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            VEvent due = events(served.captain("N"), OF_CAPTAIN).get(0);
            seal(served);
            VEvent in = events(served.captain("N"), OF_CAPTAIN).get(0);
            assertThat(in.getUid().getValue()).isEqualTo(due.getUid().getValue());
            assertThat(in.getStatus().isCancelled()).isTrue();
            assertThat(in.getAlarms()).isEmpty();
            assertThat(in.getSequence().getValue())
                    .isGreaterThan(due.getSequence().getValue());
            assertThat(events(served.captain("S"), OF_CAPTAIN).get(0).getAlarms())
                    .hasSize(2);
        }
    }

    @Test
    void a_changed_time_moves_the_alarm_when_it_is_taken_again() {
        try (Served served = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            VEvent before = events(served.stranger(), "/player/N1/alarms.ics").get(0);
            served.ask(
                    Actor.of(Role.ORGANISER, "o"),
                    new RetimeTie(TieId.of("A1"), Optional.of(LocalTime.of(10, 40)), Optional.of("2"), "rain"));
            VEvent after = events(served.stranger(), "/player/N1/alarms.ics").get(0);
            assertThat(after.getUid().getValue()).isEqualTo(before.getUid().getValue());
            assertThat(after.getDateStart().getValue().toInstant()).isEqualTo(Days.moment("10:40"));
            assertThat(after.getSequence().getValue())
                    .isGreaterThan(before.getSequence().getValue());
        }
    }

    @Test
    void no_name_of_a_sheet_stands_in_an_alarm_opened_or_not() {
        try (Served served = Served.of(Days.oneTie().opened("A1"), Days.moment("09:50"))) {
            String file =
                    served.captain("N").get("/player/N1/alarms.ics").body().replaceAll("\r\n ", "");
            assertThat(file).contains("You play: ").doesNotContain("Player N2", "Player S1", "Player S2");
        }
        try (Served served = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            String before = served.captain("N").get("/player/N1/alarms.ics").body();
            seal(served);
            String after = served.captain("N").get("/player/N1/alarms.ics").body();
            assertThat(after)
                    .as("a sealed sheet changes nothing here")
                    .isEqualTo(before)
                    .contains("You may play: ");
        }
    }

    @Test
    void a_deputy_whose_link_names_a_player_gets_the_own_rubbers_too() {
        try (Served served = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            Guest deputy =
                    served.enter(Role.CAPTAIN, Optional.of(ClubId.of("N")), Optional.of(PlayerId.of("N2")), "deputy");
            assertThat(events(deputy, OF_CAPTAIN))
                    .extracting(event -> event.getSummary().getValue().split(":")[0])
                    .containsExactlyInAnyOrder("Sheet due", "You may play");
        }
    }

    @Test
    void pages_of_captains_and_players_offer_them_and_say_which_is_which() {
        try (Served served = Served.of(Days.oneTie(), Days.moment("09:00"))) {
            assertThat(served.captain("N").get("/captain").body())
                    .contains("href=\"" + OF_CAPTAIN + "\"", "They do not move", "do not ring");
            assertThat(served.stranger().get("/player/N1").body()).contains("href=\"/player/N1/alarms.ics\"");
            assertThat(served.stranger().get(OF_CAPTAIN).status()).isEqualTo(403);
        }
    }
}
