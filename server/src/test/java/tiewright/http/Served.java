package tiewright.http;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import tiewright.clock.WitnessedClock;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Decision;
import tiewright.event.Fact;
import tiewright.event.PlayerId;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.event.SetUpFact;
import tiewright.ledger.Answer;
import tiewright.ledger.Ledger;
import tiewright.ledger.PrivateAnswer;
import tiewright.ledger.PrivateRequest;
import tiewright.ledger.Request;
import tiewright.plainfiles.EventFolder;
import tiewright.plainfiles.ImportEvent;

/** A real service on a free port over a folder of its own, with a clock that a test moves. */
public final class Served implements AutoCloseable {
    public final MovableClock clock;
    public final Path folder;
    public Ledger ledger;
    public Service service;
    private static final byte[] KEY =
            "a key for tests, 32 bytes long.. ".substring(0, 32).getBytes(java.nio.charset.StandardCharsets.US_ASCII);
    private int links;

    private Served(Instant now) {
        try {
            this.clock = new MovableClock(now);
            this.folder = Files.createTempDirectory("tiewright-served");
            Files.copy(NewFolder.database(), folder.resolve(NewFolder.NAME));
            for (String key : List.of("seal.key", "letterbox.key")) {
                Files.write(folder.resolve(key), KEY); // twin days differ in nothing that a test does not say
            }
            this.ledger = Ledger.open(folder, clock);
            this.service = Service.start(ServiceOptions.onLoopback(folder, 0), ledger, clock);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** Nothing has been entered. */
    public static Served empty(Instant now) {
        return new Served(now);
    }

    /** With the invented event brought in from its plain files. */
    public static Served demo(Instant now) {
        Served served = empty(now);
        served.ask(
                Actor.of(Role.ORGANISER, "test"),
                ImportEvent.of(EventFolder.read(Path.of("..", "demo-data", "event"))));
        return served;
    }

    /** A day that is written down, with the names of its players. */
    public static Served of(Days day, Instant now) {
        return empty(now)
                .given(
                        day.facts().stream().map(Recorded::fact).toList(),
                        day.directory().people().entrySet().stream()
                                .map(one -> new PrivateNote.PersonNamed(one.getKey(), one.getValue()))
                                .toList());
    }

    /** Appends facts as they are: for what a test takes as given. */
    public Served given(List<? extends Fact> facts, List<? extends PrivateNote> notes) {
        Decision as = (event, given) -> new Decision.Accepted(List.copyOf(facts), List.copyOf(notes));
        ask(Actor.of(Role.ORGANISER, "test"), as);
        return this;
    }

    /** Asks a decision that must be accepted. */
    public Answer.Done ask(Actor by, Decision decision) {
        Answer answer = ledger.decide(Request.of(UUID.randomUUID().toString(), by), decision);
        if (answer instanceof Answer.Done done) {
            return done;
        }
        throw new AssertionError("refused: " + answer);
    }

    /** What a club has noted, as its captain would: for what a test takes as given. */
    public Served noted(String club, PrivateNote... notes) {
        ClubId own = ClubId.of(club);
        Actor captain = new Actor(Role.CAPTAIN, Optional.of(own), "captain", "test");
        PrivateRequest request = PrivateRequest.of(own, UUID.randomUUID().toString(), captain);
        if (!(ledger.decide(request, (event, noted, by) -> PrivateDecision.Kept.of(notes))
                instanceof PrivateAnswer.Done)) {
            throw new AssertionError("not noted");
        }
        return this;
    }

    /** Somebody without any link. */
    public Guest stranger() {
        return new Guest(service.url());
    }

    public Guest as(Role role) {
        return enter(role, Optional.empty(), Optional.empty(), role.code());
    }

    public Guest captain(String club) {
        return enter(Role.CAPTAIN, Optional.of(ClubId.of(club)), Optional.empty(), "captain");
    }

    public Guest player(String club, String player) {
        return enter(Role.PLAYER, Optional.of(ClubId.of(club)), Optional.of(PlayerId.of(player)), "player");
    }

    /** A new personal link of this role, already opened. */
    public Guest enter(Role role, Optional<ClubId> club, Optional<PlayerId> player, String label) {
        Guest guest = stranger();
        guest.get(link(role, club, player, label).substring(service.url().length()));
        return guest;
    }

    public String link(Role role, Optional<ClubId> club, Optional<PlayerId> player, String label) {
        String secret = "secret-" + ++links;
        given(
                List.of(new SetUpFact.LinkIssued("T" + links, role, club, player, label, Service.hash(secret))),
                List.of());
        return service.link(secret);
    }

    /** Moves the clock and lets the timer look once. */
    public void at(Instant now) {
        clock.now = now;
        service.openWhatIsDue();
    }

    /** Waits until no search for an order of play goes on. */
    public void awaitPlans() {
        service.awaitPlans();
    }

    /** Ends the service and its ledger as an orderly end does, and starts them again over the same folder. */
    public void restart() {
        service.close();
        ledger.close();
        ledger = Ledger.open(folder, clock);
        service = Service.start(ServiceOptions.onLoopback(folder, 0), ledger, clock);
    }

    /** The same folder served by a clock that a test holds in both hands, with copies into a folder or without. */
    Served servedBy(WitnessedClock witnessed, Optional<Path> copies) {
        service.close();
        ledger.close();
        ledger = Ledger.open(folder, witnessed);
        service = Service.start(
                new ServiceOptions(folder, "127.0.0.1", 0, Optional.empty(), Optional.empty(), copies, false),
                ledger,
                witnessed);
        return this;
    }

    @Override
    public void close() {
        service.close();
        ledger.close();
        delete(folder);
    }

    private static void delete(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder())
                    .forEach(path -> path.toFile().delete());
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** What a ledger lays into an empty folder: made once, for it takes longer than most days. */
    private static final class NewFolder {
        private static final String NAME = "tiewright.mv.db";
        private static final byte[] DATABASE = made();

        private static InputStream database() {
            return new ByteArrayInputStream(DATABASE);
        }

        private static byte[] made() {
            try {
                Path folder = Files.createTempDirectory("tiewright-empty");
                Ledger.open(folder, Clock.systemUTC()).close();
                byte[] database = Files.readAllBytes(folder.resolve(NAME));
                delete(folder);
                return database;
            } catch (IOException failure) {
                throw new UncheckedIOException(failure);
            }
        }
    }

    /** A clock that stands still until it is moved. */
    public static final class MovableClock extends Clock {
        private volatile Instant now;

        MovableClock(Instant now) {
            this.now = now;
        }

        public void pass(Duration time) {
            now = now.plus(time);
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }
}
