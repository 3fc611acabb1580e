package tiewright.ledger;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.h2.engine.SessionLocal;
import org.h2.jdbc.JdbcConnection;
import org.h2.mvstore.MVStore;
import org.jooq.DSLContext;
import org.jooq.exception.DataAccessException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tiewright.event.Recorded;

/** The one connection to the database of a folder: transactions, what to do when one fails, and how large the file may grow. */
final class OpenDatabase implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(OpenDatabase.class);

    private final DataFolder folder;
    private final Growth growth;
    private Connection connection;
    private DSLContext jooq;
    private boolean isDoubtful;
    private long sizeWhenOpened;
    private final Acknowledged acknowledged;
    /** Of what was acknowledged last; known once the facts were read. */
    private Optional<FactSum> sum = Optional.empty();

    private long written;

    /** Work on the files. */
    interface OnFiles {
        void run() throws IOException;
    }

    OpenDatabase(DataFolder folder, Growth growth) {
        this.folder = folder;
        this.growth = growth;
        this.acknowledged = folder.acknowledged();
        if (folder.size() > growth.atStart()) {
            tidy(() -> Rewriting.rewrite(folder.database()));
        }
        this.connection = new Owner(folder).open();
        this.jooq = Jooq.on(connection);
        mustBeWritable();
        this.sizeWhenOpened = folder.size();
    }

    /** The database itself opens one that can only be read, and says so at the first write. */
    private void mustBeWritable() {
        try {
            folder.databaseIsThere();
        } catch (IOException failure) {
            closeConnection();
            throw WriteFailure.atStart(folder, failure);
        }
    }

    DataFolder folder() {
        return folder;
    }

    DSLContext jooq() {
        return jooq;
    }

    /**
     * Every fact in order.
     *
     * @throws LedgerException if they are not those that were acknowledged
     */
    List<Recorded> facts() {
        List<Recorded> facts = FactTables.read(jooq);
        sum = Optional.of(acknowledged.added(facts));
        try {
            folder.force();
            noteAcknowledged();
        } catch (SQLException | IOException stays) {
            LOG.debug("nobody was answered since the mark, which may stay", stays);
        }
        return facts;
    }

    /**
     * What fails before the commit leaves no trace; after that only reading anew can tell what was written.
     *
     * @param facts those that the work appends
     */
    void durably(List<Recorded> facts, Consumer<DSLContext> work) {
        if (isDoubtful) {
            throw WriteFailure.of(folder, null);
        }
        try {
            connection.setAutoCommit(false);
            try {
                work.accept(jooq);
            } catch (DataAccessException e) {
                throw doubted(e);
            } catch (RuntimeException e) {
                connection.rollback();
                throw e;
            }
            isDoubtful = true;
            connection.commit();
            folder.force();
            isDoubtful = false;
            sum = sum.map(before -> facts.stream().reduce(before, FactSum::then, (one, other) -> other));
            noteAcknowledged();
        } catch (SQLException | IOException | OutOfMemoryError e) {
            throw doubted(e);
        }
    }

    /** The database counts how often its file was written; while it has something that is not in the file, its count says nothing. */
    private void noteAcknowledged() throws SQLException, IOException {
        if (sum.isEmpty()) {
            return; // nobody has asked for anything yet
        }
        MVStore file = ((SessionLocal) connection.unwrap(JdbcConnection.class).getSession())
                .getDatabase()
                .getStore()
                .getMvStore();
        written = file.hasUnsavedChanges() ? written : file.getCurrentVersion();
        acknowledged.note(written, sum.get());
    }

    /** Whether the database must be opened anew before anything else: a file that it could not write it closes for good. */
    boolean isDoubtful() {
        return isDoubtful;
    }

    /** The database failed; what it holds is known only when it is read anew. */
    LedgerException doubted(Throwable failure) {
        isDoubtful = true;
        return WriteFailure.of(folder, failure);
    }

    /** Before a write: a file that has grown much since it was opened is written anew. */
    void heedGrowth() {
        if (folder.size() > sizeWhenOpened + growth.whileOpen()) {
            tidy(() -> whileClosed(() -> Rewriting.rewrite(folder.database())));
            sizeWhenOpened = folder.size();
        }
    }

    /** Works on the files while the database is closed, and opens it again whatever came of the work. */
    void whileClosed(OnFiles work) throws IOException {
        isDoubtful = true;
        try {
            closeConnection();
            folder.databaseIsClosed();
            written = 0;
            work.run();
        } finally {
            connection = new Owner(folder).open();
            jooq = Jooq.on(connection);
            folder.databaseIsThere();
            isDoubtful = false;
        }
    }

    /** One that the database has given up is closed already. */
    private void closeConnection() {
        try {
            connection.close();
        } catch (SQLException given) {
            LOG.debug("the connection was closed already", given);
        }
    }

    /** Without room on the disk the old file does as well, only larger. */
    private void tidy(OnFiles rewriting) {
        long before = folder.size();
        long start = System.nanoTime();
        try {
            rewriting.run();
            LOG.info(
                    "The database in {} was written anew: {} kB instead of {} kB, in {} ms.",
                    folder.path(),
                    folder.size() >> 10,
                    before >> 10,
                    (System.nanoTime() - start) / 1_000_000);
        } catch (IOException failure) {
            LOG.warn(
                    "The database in {} could not be written anew and stays as large as it is: {}.",
                    folder.path(),
                    failure.getMessage());
        }
    }

    void copyTo(Path zip) {
        new Owner(folder).copyTo(zip);
    }

    /** The mark goes on to where the closing has written to; if not, the next start leaves that out. */
    @Override
    public void close() {
        try (folder;
                acknowledged) {
            connection.close();
            if (!isDoubtful) {
                folder.force();
                acknowledged.noteTheEnd();
            }
        } catch (IOException stays) {
            LOG.debug("the mark stays behind, which does no harm", stays);
        } catch (SQLException e) {
            throw new LedgerException("The database in " + folder.path() + " did not close: " + e.getMessage(), e);
        }
    }
}
