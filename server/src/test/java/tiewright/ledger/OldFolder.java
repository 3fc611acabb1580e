package tiewright.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import tiewright.event.PrivateNote;

/** A folder as it is after some days of use: opened and closed many times, its file full of notes written over and deleted. */
final class OldFolder {
    private static final int DAYS = 6;
    private static final int STEPS = 40;
    /** Less than what is tidied up at a start, and many times what is in use. */
    private static final long SIZE = 8 << 20;

    private OldFolder() {}

    static void make(Path folder) throws SQLException, IOException {
        Appender.Moment clock = new Appender.Moment();
        for (int day = 0; day < DAYS; day++) {
            try (Ledger ledger = Ledger.open(folder, clock)) {
                if (day == 0) {
                    Steps.begin(ledger);
                }
                for (int number = day * STEPS; number < (day + 1) * STEPS; number++) {
                    clock.at(number);
                    if (!(ledger.decide(Steps.request(number), Steps.step(number)) instanceof Answer.Done)) {
                        throw new IllegalStateException("step " + number + " was refused");
                    }
                }
            }
        }
        leaveHoles(folder);
    }

    /**
     * Notes of which most are deleted again, and closed without the time to tidy up; past the ledger, whose own way of opening the file
     * would leave no holes in it.
     */
    private static void leaveHoles(Path folder) throws SQLException, IOException {
        Path file = folder.resolve("tiewright.mv.db");
        String url = "jdbc:h2:file:" + folder.resolve("tiewright") + ";MAX_COMPACT_TIME=0";
        try (Connection owner = DriverManager.getConnection(url, "OWNER", "");
                Statement delay = owner.createStatement()) {
            delay.execute("SET WRITE_DELAY 0");
            DSLContext jooq = Jooq.on(owner);
            int films = 0;
            for (; Files.size(file) < SIZE; films++) {
                FilmTable.put(jooq, new PrivateNote.FilmKept(Steps.HOME, "old" + films, "", "rally; ".repeat(500)));
            }
            for (int film = 0; film < films; film++) {
                if (film % 10 < 7) {
                    FilmTable.drop(jooq, new PrivateNote.FilmDropped(Steps.HOME, "old" + film));
                }
            }
        }
        if (Files.size(file) < SIZE || Files.size(file) > Growth.USUAL.atStart()) {
            throw new IllegalStateException(
                    "a file of " + Files.size(file) + " bytes has no holes, or is tidied up at the start");
        }
    }

    /** Into a folder of its own, which is emptied first. */
    static Path copy(Path from, Path to) throws IOException {
        clear(to);
        Files.createDirectories(to);
        try (Stream<Path> files = Files.list(from)) {
            for (Path file : files.toList()) {
                Files.copy(file, to.resolve(file.getFileName()));
            }
        }
        return to;
    }

    static void clear(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }
}
