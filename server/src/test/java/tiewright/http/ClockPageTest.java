package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.clock.WitnessedClock;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Decision;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.NamesKept;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.event.SetUpFact;
import tiewright.event.TieId;
import tiewright.ledger.Answer;
import tiewright.ledger.Ledger;
import tiewright.ledger.Request;
import tiewright.sheet.SealSheet;

/** A laptop whose clock is set wrong in the middle of an afternoon, or before a start. */
class ClockPageTest {
    private static final String PAGE = "/desk/clock";
    private static final ExchangeId SHEETS = ExchangeId.sheets(TieId.of("A1"));
    private static final Duration MONTH = Duration.ofDays(30);

    @TempDir
    Path folder;

    private final Laptop laptop = new Laptop();
    private final AtomicInteger keys = new AtomicInteger();

    private static final class Laptop extends Clock {
        private Instant wall = Days.moment("09:00");
        private long nanos;

        void passes(Duration time) {
            wall = wall.plus(time);
            nanos += time.toNanos();
        }

        void isSet(Duration by) {
            wall = wall.plus(by);
        }

        @Override
        public Instant instant() {
            return wall;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }

    /** The service as it is started on the laptop. */
    private final class Started implements AutoCloseable {
        private final WitnessedClock clock = WitnessedClock.of(laptop, () -> laptop.nanos);
        private final Ledger ledger = Ledger.open(folder, clock);
        private final Service service = Service.start(ServiceOptions.onLoopback(folder, 0), ledger, clock);

        Started ask(Actor by, Decision decision) {
            assertThat(ledger.decide(Request.of("k" + keys.incrementAndGet(), by), decision))
                    .isInstanceOf(Answer.Done.class);
            return this;
        }

        Guest as(Role role) {
            String secret = "secret-" + keys.incrementAndGet();
            ask(
                    Days.organiser(),
                    (event, given) -> Decision.Accepted.of(new SetUpFact.LinkIssued(
                            secret, role, Optional.empty(), Optional.empty(), secret, Service.hash(secret))));
            Guest guest = new Guest(service.url());
            guest.get("/enter/" + secret);
            return guest;
        }

        /** The timers look, as they do twice a second and every minute. */
        void look() {
            service.openWhatIsDue();
            service.eraseWhatIsDue();
        }

        boolean opened() {
            return ledger.event().exchange(SHEETS).isOpened();
        }

        @Override
        public void close() {
            service.close();
            ledger.close();
        }
    }

    /** A tie at 10:00 with both sheets sealed, names, and a promise to delete them twenty days later. */
    private Started afternoon() {
        Started started = morning();
        int rubbers = started.ledger.event().conditions().rubbers();
        for (String club : List.of("N", "S")) {
            started.ask(
                    Days.captain(club),
                    new SealSheet(SHEETS, ClubId.of(club), Days.straight(club, rubbers), "ab".repeat(32)));
        }
        return started;
    }

    /** The same before anybody has sealed. */
    private Started morning() {
        Started started = new Started();
        List<Fact> facts = new ArrayList<>(
                Days.oneTie().facts().stream().map(Recorded::fact).toList());
        facts.add(new SetUpFact.DeletionDated(Days.DATE.plusDays(20), NamesKept.CODES));
        started.ask(
                Days.organiser(),
                (event, given) -> new Decision.Accepted(
                        facts,
                        List.of(new PrivateNote.PersonNamed(
                                PlayerId.of("N1"), "Ada Plantedname", OptionalInt.empty()))));
        return started;
    }

    @Test
    void a_month_ahead_for_a_minute_opens_and_erases_nothing_and_goes_away_by_itself() {
        try (Started started = afternoon()) {
            laptop.passes(Duration.ofMinutes(5));
            started.look();
            laptop.isSet(MONTH);
            started.look();
            laptop.passes(Duration.ofSeconds(66));
            started.look();
            assertThat(started.opened()).isFalse();
            assertThat(started.ledger.held().isNothing()).isFalse();
            Guest desk = started.as(Role.DESK);
            assertThat(desk.get("/desk").text()).contains("The computer's clock jumped");
            assertThat(started.as(Role.ORGANISER).get("/organiser").text()).contains("The computer's clock jumped");
            laptop.isSet(MONTH.negated());
            started.look();
            assertThat(desk.get("/desk").text()).doesNotContain("The computer's clock jumped");
            assertThat(started.opened()).isFalse();
            laptop.passes(Duration.ofHours(1));
            started.look();
            assertThat(started.opened()).as("when it is really time").isTrue();
        }
    }

    @Test
    void two_hours_ahead_opens_nothing_until_the_desk_says_that_it_is_so() {
        try (Started started = afternoon()) {
            laptop.isSet(Duration.ofHours(2));
            started.look();
            assertThat(started.opened()).isFalse();
            Guest desk = started.as(Role.DESK);
            assertThat(desk.get(PAGE).text())
                    .contains(
                            "The computer's clock says 11:00:00 on Saturday 20 June 2026",
                            "it is 09:00:00 on Saturday 20 June 2026",
                            "time stands still at 09:00:00");
            desk.send(PAGE, PAGE, Map.of("right", "machine"));
            started.look();
            assertThat(started.opened()).isTrue();
            assertThat(desk.get(PAGE).text()).contains("It is 11:00:00", "no clock disagrees");
        }
    }

    @Test
    void where_the_computer_is_wrong_the_time_counted_on_opens_the_sheets() {
        try (Started started = afternoon()) {
            laptop.isSet(Duration.ofHours(-3));
            started.look();
            started.as(Role.DESK).send(PAGE, PAGE, Map.of("right", "counted"));
            laptop.passes(Duration.ofMinutes(30));
            started.look();
            assertThat(started.opened()).isFalse();
            laptop.passes(Duration.ofMinutes(40));
            started.look();
            assertThat(started.opened()).isTrue();
        }
    }

    @Test
    void nobody_but_the_desk_says_what_time_it_is() {
        try (Started started = afternoon()) {
            laptop.isSet(MONTH);
            started.look();
            assertThat(started.as(Role.VOLUNTEER).get(PAGE).status()).isEqualTo(403);
            assertThat(new Guest(started.service.url())
                            .post(PAGE, Map.of("right", "machine"))
                            .status())
                    .isEqualTo(403);
            assertThat(started.clock.doubt()).isPresent();
        }
    }

    @Test
    void started_with_a_clock_before_the_last_fact_it_opens_nothing() {
        afternoon().close();
        laptop.isSet(Duration.ofHours(-5));
        try (Started again = new Started()) {
            again.look();
            assertThat(again.clock.doubt()).isPresent();
            assertThat(again.as(Role.DESK).get("/desk").text()).contains("The computer's clock jumped");
        }
    }

    @Test
    void started_a_month_ahead_in_the_middle_of_play_it_erases_nothing_until_somebody_says_so() {
        try (Started started = afternoon()) {
            laptop.passes(Duration.ofHours(2));
            started.look();
            assertThat(started.opened()).isTrue();
        }
        laptop.isSet(MONTH);
        try (Started again = new Started()) {
            again.look();
            laptop.passes(Duration.ofHours(26));
            again.look();
            assertThat(again.ledger.held().isNothing()).isFalse();
            again.as(Role.DESK).send(PAGE, PAGE, Map.of("right", "machine"));
            again.look();
            laptop.passes(Duration.ofHours(26));
            again.look();
            assertThat(again.ledger.held().isNothing()).isTrue();
        }
    }

    @Test
    void started_on_the_day_of_deletion_it_erases_after_a_quiet_hour_and_not_before() {
        morning().close();
        laptop.isSet(MONTH);
        try (Started again = new Started()) {
            again.look();
            assertThat(again.clock.doubt())
                    .as("a month without play is nothing unusual")
                    .isEmpty();
            assertThat(again.ledger.held().isNothing()).isFalse();
            laptop.passes(Duration.ofMinutes(61));
            again.look();
            assertThat(again.ledger.held().isNothing()).isTrue();
        }
    }
}
