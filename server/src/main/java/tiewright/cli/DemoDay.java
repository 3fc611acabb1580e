package tiewright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.Player;
import tiewright.event.Role;
import tiewright.event.Sheet;
import tiewright.event.TieId;
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
import tiewright.sheet.SealSheet;

/** The invented event, in mid-morning: rounds played, one tie level, one sheet of the next round sealed. */
final class DemoDay {
    private static final String FILES = "/tiewright/demo-data/";
    private static final LocalDateTime NOW = LocalDateTime.of(2026, 11, 28, 10, 52);
    private static final ZoneId ZONE = ZoneId.of("Europe/Dublin");
    private static final TieId NEXT = TieId.of("A-3-1");
    private static final ClubId EAGER = ClubId.of("WH");
    private static final ClubId FILMED = ClubId.of("KS");

    private DemoDay() {}

    /** A clock that goes on from the invented morning. */
    static InstantSource clock() {
        Instant then = NOW.atZone(ZONE).toInstant();
        return Clock.offset(Clock.systemUTC(), Duration.between(Instant.now(), then));
    }

    /** Brings the event in, unless the folder holds one already. */
    static void begin(Ledger ledger, InstantSource clock) {
        if (ledger.event().about().isPresent()) {
            return;
        }
        Path folder = unpacked();
        done(ledger.decide(
                Request.of("demo", Actor.of(Role.ORGANISER, "demo")), ImportEvent.of(EventFolder.read(folder))));
        giveFilm(ledger, folder);
        List<Player> squad = ledger.event().squad(EAGER);
        Sheet sheet = Sheet.full(pair(squad, 0, 3), pair(squad, 1, 2), pair(squad, 4, 6), pair(squad, 5, 7));
        done(ledger.decide(
                Request.of(UUID.randomUUID().toString(), captain(EAGER)),
                new SealSheet(ExchangeId.sheets(NEXT), EAGER, sheet, secret())));
    }

    /** As the captain of the club that filmed would give it: for nobody else. */
    private static void giveFilm(Ledger ledger, Path folder) {
        FilmNotes notes = FilmNotes.read(
                text(folder, PlainFile.GAMES), text(folder, PlainFile.RALLIES), FilmNotes.Known.of(ledger.event()));
        if (!notes.faults().isEmpty()) {
            throw new IllegalStateException(
                    "the invented film does not fit: " + notes.faults().get(0));
        }
        PrivateRequest request = PrivateRequest.of(FILMED, "demo-film", captain(FILMED));
        PrivateAnswer answer = ledger.decide(
                request,
                new KeepFilm(
                        notes.games().stream().map(game -> game.keptFor(FILMED)).toList(), Optional.empty()));
        if (!(answer instanceof PrivateAnswer.Done)) {
            throw new IllegalStateException("the invented film cannot be kept: " + answer);
        }
    }

    private static Actor captain(ClubId club) {
        return new Actor(Role.CAPTAIN, Optional.of(club), "captain", "demo");
    }

    private static String text(Path folder, PlainFile file) {
        try {
            return Files.readString(folder.resolve(file.fileName()));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static Pair pair(List<Player> squad, int one, int other) {
        return Pair.of(squad.get(one).id(), squad.get(other).id());
    }

    private static void done(Answer answer) {
        if (!(answer instanceof Answer.Done)) {
            throw new IllegalStateException("the invented event cannot begin: " + answer);
        }
    }

    private static String secret() {
        byte[] bytes = new byte[32];
        new SecureRandom().nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
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
                        Files.copy(in, path);
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
}
