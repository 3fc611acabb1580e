package tiewright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Role;
import tiewright.film.KeepFilm;
import tiewright.ledger.Answer;
import tiewright.ledger.Ledger;
import tiewright.ledger.PrivateAnswer;
import tiewright.ledger.PrivateRequest;
import tiewright.ledger.Request;
import tiewright.plainfiles.EventFolder;
import tiewright.plainfiles.FilmNotes;
import tiewright.plainfiles.ImportEvent;
import tiewright.plainfiles.PlainFile;

/** The invented event, in mid-morning: rounds played, courts busy, one tie level, two cards that differ, a sheet in and one on a phone. */
final class DemoDay {
    private static final String FILES = "/tiewright/demo-data/";
    private static final LocalDateTime NOW = LocalDateTime.of(2026, 11, 28, 10, 52);
    private static final ZoneId ZONE = ZoneId.of("Europe/Dublin");
    /** Minutes before that, in which the morning is told. */
    private static final int BEFORE = 9;

    private static final ClubId FILMED = ClubId.of("KS");

    private DemoDay() {}

    /** A clock that goes on from the invented morning. */
    static DemoClock clock() {
        Instant then = NOW.atZone(ZONE).toInstant();
        return new DemoClock(Clock.offset(Clock.systemUTC(), Duration.between(Instant.now(), then)));
    }

    /**
     * Brings the event in, unless the folder holds one already.
     *
     * @return the sheet that lies on a phone alone; empty where the day had begun before
     */
    static Optional<DemoPhone> begin(Ledger ledger, DemoClock clock) {
        if (ledger.event().about().isPresent()) {
            return Optional.empty();
        }
        clock.tellOf(BEFORE);
        Path folder = unpacked();
        done(ledger.decide(
                Request.of("demo", Actor.of(Role.ORGANISER, "demo")), ImportEvent.of(EventFolder.read(folder))));
        giveFilm(ledger, folder);
        DemoMorning morning = new DemoMorning(ledger, clock);
        morning.play();
        return Optional.of(morning.phone());
    }

    /** As the captain of the club that filmed would give it: for nobody else. */
    private static void giveFilm(Ledger ledger, Path folder) {
        FilmNotes notes = FilmNotes.read(
                text(folder, PlainFile.GAMES), text(folder, PlainFile.RALLIES), FilmNotes.Known.of(ledger.event()));
        if (!notes.faults().isEmpty()) {
            throw new IllegalStateException(
                    "the invented film does not fit: " + notes.faults().get(0));
        }
        PrivateRequest request = PrivateRequest.of(FILMED, "demo-film", DemoMorning.captain(FILMED));
        PrivateAnswer answer = ledger.decide(
                request,
                new KeepFilm(
                        notes.games().stream().map(game -> game.keptFor(FILMED)).toList(), Optional.empty()));
        if (!(answer instanceof PrivateAnswer.Done)) {
            throw new IllegalStateException("the invented film cannot be kept: " + answer);
        }
    }

    private static String text(Path folder, PlainFile file) {
        try {
            return Files.readString(folder.resolve(file.fileName()));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static void done(Answer answer) {
        if (!(answer instanceof Answer.Done)) {
            throw new IllegalStateException("the invented event cannot begin: " + answer);
        }
    }

    /** The files of the class path, in a folder that is gone when the service ends. */
    private static Path unpacked() {
        try {
            Path folder = Files.createTempDirectory("tiewright-demo-files");
            List<Path> made = new ArrayList<>();
            for (PlainFile file : PlainFile.values()) {
                try (InputStream in = DemoDay.class.getResourceAsStream(FILES + file.fileName())) {
                    if (in != null) {
                        Path path = folder.resolve(file.fileName());
                        Files.writeString(path, asItStood(new String(in.readAllBytes(), StandardCharsets.UTF_8)));
                        made.add(path);
                    }
                }
            }
            folder.toFile().deleteOnExit();
            made.forEach(path -> path.toFile().deleteOnExit());
            return folder;
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static String asItStood(String file) {
        return file.lines()
                .filter(line -> !line.startsWith(DemoMorning.NOT_YET + "10,12,"))
                .map(line -> line + "\n")
                .collect(Collectors.joining());
    }
}
