package tiewright.ledger;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jooq.DSLContext;
import org.jooq.Table;
import org.jooq.impl.DSL;
import tiewright.schema.DefaultSchema;

/**
 * What only the owner of the database may do: bring its tables up to date, make the service's own user, copy everything.
 * The one place with SQL in words, for users and settings differ from database to database.
 */
final class Owner {
    private static final String NAME = "OWNER";
    private static final String SERVICE = "SERVICE";
    private static final String PRIVATE = "private_";

    /** H2 shall write no trace of statements, for they may hold names, and leave closing to the ledger. */
    private static final String SETTINGS = ";DB_CLOSE_ON_EXIT=FALSE;TRACE_LEVEL_FILE=0";

    private final DataFolder folder;

    Owner(DataFolder folder) {
        this.folder = folder;
    }

    /**
     * Brings the database up to date and returns the service's connection. Its user may SELECT and INSERT, and change
     * nothing but what is private; its password is random, lives in memory only and is new each time.
     */
    Connection open() {
        try (Connection owner = connection()) {
            if (!Migrations.areDone(owner)) {
                migrate();
            }
            // H2 answers a commit before it is written unless told to write at once.
            run(owner, "SET WRITE_DELAY 0");
            String password = password();
            run(owner, "CREATE USER IF NOT EXISTS " + SERVICE + " PASSWORD '" + password + "'");
            run(owner, "ALTER USER " + SERVICE + " SET PASSWORD '" + password + "'");
            grant(Jooq.on(owner), granted(owner));
            return DriverManager.getConnection(folder.url(), SERVICE, password);
        } catch (SQLException e) {
            throw cannotBeOpened(e);
        }
    }

    private LedgerException cannotBeOpened(Exception cause) {
        return WriteFailure.isOfTheDisk(folder, cause) ? WriteFailure.atStart(folder, cause) : damaged(folder, cause);
    }

    /** What the library says about it helps nobody in the hall; it is the cause, for the log. */
    static LedgerException damaged(DataFolder folder, Exception cause) {
        return new LedgerException(
                "The database file " + folder.database()
                        + " is damaged or not one of Tiewright's, and was left as it is."
                        + " Lay the last backup into a new folder with restore and go on from there. Keep this folder: somebody may still read"
                        + " parts of it.",
                cause);
    }

    /** Copies the database as it stands into a zip file. */
    void copyTo(Path zip) {
        try (Connection owner = connection()) {
            run(owner, "BACKUP TO '" + zip.toString().replace("'", "''") + "'");
        } catch (SQLException e) {
            throw new LedgerException("The backup " + zip + " could not be written: " + e.getMessage(), e);
        }
    }

    private Connection connection() throws SQLException {
        return DriverManager.getConnection(folder.url() + SETTINGS, NAME, "");
    }

    private void migrate() {
        try {
            Flyway.configure()
                    .dataSource(folder.url() + SETTINGS, NAME, "")
                    .locations("classpath:tiewright/migrations")
                    .ignoreMigrationPatterns(new String[0])
                    .load()
                    .migrate();
        } catch (FlywayException e) {
            if (e.getCause() instanceof SQLException) {
                throw cannotBeOpened(e);
            }
            throw new LedgerException(
                    "The database in " + folder.path() + " was not written by this version of Tiewright."
                            + " Start the version that wrote it, or choose another folder.",
                    e);
        }
    }

    /** What is granted already is left alone: a start would spend a tenth of its time on it. */
    private static void grant(DSLContext jooq, Map<String, String> granted) {
        for (Table<?> table : DefaultSchema.DEFAULT_SCHEMA.getTables()) {
            boolean isPrivate = table.getName().startsWith(PRIVATE);
            if ((isPrivate ? "ALL" : "SELECT, INSERT").equals(granted.get(table.getName()))) {
                continue;
            }
            jooq.grant(DSL.privilege("SELECT"), DSL.privilege("INSERT"))
                    .on(table)
                    .to(DSL.user(SERVICE))
                    .execute();
            if (isPrivate) {
                jooq.grant(DSL.privilege("UPDATE"), DSL.privilege("DELETE"))
                        .on(table)
                        .to(DSL.user(SERVICE))
                        .execute();
            }
        }
    }

    /** The rights of the service's user by table, in H2's words. */
    private static Map<String, String> granted(Connection owner) throws SQLException {
        Map<String, String> rights = new HashMap<>();
        try (var statement = owner.createStatement();
                var rows = statement.executeQuery(
                        "SELECT LOWER(TABLE_NAME), RIGHTS FROM INFORMATION_SCHEMA.RIGHTS WHERE GRANTEE = '" + SERVICE
                                + "'")) {
            while (rows.next()) {
                rights.put(rows.getString(1), rows.getString(2));
            }
        }
        return rights;
    }

    private static String password() {
        byte[] random = new byte[32];
        new SecureRandom().nextBytes(random);
        return HexFormat.of().formatHex(random);
    }

    private static void run(Connection owner, String sql) throws SQLException {
        try (var statement = owner.createStatement()) {
            statement.execute(sql);
        }
    }
}
