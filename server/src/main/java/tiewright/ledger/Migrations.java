package tiewright.ledger;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.zip.CRC32;

/**
 * Whether a database has every migration of this version and no other, each as it is written here. Then Flyway has nothing to
 * do, and a start is spared what it takes to ask it. In every other case Flyway decides.
 */
final class Migrations {
    private static final String LIST = "/tiewright/migrations.txt";
    private static final String FILES = "/tiewright/migrations/";
    private static final String HISTORY = "flyway_schema_history";

    private Migrations() {}

    static boolean areDone(Connection owner) throws SQLException {
        return hasHistory(owner) && here().equals(done(owner));
    }

    private static boolean hasHistory(Connection owner) throws SQLException {
        try (ResultSet tables = owner.getMetaData().getTables(null, null, HISTORY, null)) {
            return tables.next();
        }
    }

    /** Checksums by file, as Flyway noted them; one that failed has none. A row of the type TABLE says who made the history. */
    private static Map<String, Integer> done(Connection owner) throws SQLException {
        Map<String, Integer> done = new HashMap<>();
        try (var statement = owner.createStatement();
                ResultSet rows =
                        statement.executeQuery("SELECT \"script\", CASE WHEN \"success\" THEN \"checksum\" END FROM \""
                                + HISTORY + "\" WHERE \"type\" <> 'TABLE'")) {
            while (rows.next()) {
                done.put(rows.getString(1), (Integer) rows.getObject(2));
            }
        }
        return done;
    }

    /** Checksums of this version's migrations by file. */
    static Map<String, Integer> here() {
        Map<String, Integer> here = new HashMap<>();
        lines(LIST).forEach(file -> here.put(file, checksum(lines(FILES + file))));
        return here;
    }

    /** As Flyway reckons it: CRC-32 of the lines without their ends. */
    private static int checksum(List<String> lines) {
        CRC32 sum = new CRC32();
        lines.forEach(line -> sum.update(line.getBytes(StandardCharsets.UTF_8)));
        return (int) sum.getValue();
    }

    private static List<String> lines(String resource) {
        try (InputStream in = Objects.requireNonNull(Migrations.class.getResourceAsStream(resource), resource);
                BufferedReader text = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return text.lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
