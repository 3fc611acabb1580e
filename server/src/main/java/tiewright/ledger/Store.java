package tiewright.ledger;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jooq.exception.DataAccessException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tiewright.event.ClubId;
import tiewright.event.ClubNotes;
import tiewright.event.Decision.SealedRef;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.KeptGame;
import tiewright.event.Noted;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.PrivateNote.PastGame;
import tiewright.event.Recorded;

/** The open database: reads it, and writes what belongs together in one transaction. For one thread only. */
final class Store implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Store.class);

    private final DataFolder folder;
    private final Growth growth;
    private Connection connection;
    private DSLContext jooq;
    private SealedSheets sheets;
    private boolean isDoubtful;
    private long sizeWhenOpened;

    /** Read by any thread. */
    private volatile Map<ClubId, Long> counts;

    /** One answer to one request: all of it is written, or nothing. */
    record Entry(
            String key,
            long before,
            List<Recorded> facts,
            List<PrivateNote> notes,
            Changes changes,
            Set<PlayerId> left,
            Set<ClubId> gone) {}

    /** Work on the files. */
    interface OnFiles {
        void run() throws IOException;
    }

    private Store(DataFolder folder, Growth growth) {
        this.folder = folder;
        this.growth = growth;
        if (folder.size() > growth.atStart()) {
            tidy(() -> Rewriting.rewrite(folder.database()));
        }
        this.sheets = new SealedSheets(Seal.withKeyIn(folder.key()));
        this.connection = new Owner(folder).open();
        this.jooq = Jooq.on(connection);
        this.counts = ChangeTables.counts(jooq);
        folder.databaseIsThere();
        this.sizeWhenOpened = folder.size();
    }

    static Store open(Path path) {
        return open(path, Growth.USUAL);
    }

    static Store open(Path path, Growth growth) {
        return open(DataFolder.take(path), growth);
    }

    static Store open(DataFolder folder, Growth growth) {
        try {
            folder.mustHoldWhatIsThere();
            folder.clearParts();
            Store store = new Store(folder, growth);
            Erasing.finish(store);
            return store;
        } catch (RuntimeException e) {
            folder.close();
            throw e;
        }
    }

    DataFolder folder() {
        return folder;
    }

    DSLContext jooq() {
        return jooq;
    }

    List<Recorded> facts() {
        return FactTables.read(jooq);
    }

    Directory directory() {
        return new Directory(PrivateTables.people(jooq));
    }

    Optional<long[]> answered(String key) {
        return FactTables.answered(jooq, key);
    }

    boolean answered(ClubId club, String key) {
        return ChangeTables.answered(jooq, club, key);
    }

    /** How often each club's notes were changed. */
    Map<ClubId, Long> counts() {
        return counts;
    }

    List<Changes.Change> changedSince(ClubId club, long number) {
        return ChangeTables.since(jooq, club, number);
    }

    Noted noted(Event event, ClubId club) {
        List<PlayerId> squad = event.squad(club).stream().map(Player::id).toList();
        return new Noted(
                club,
                notesOf(club, squad),
                filmsOf(club),
                pastGamesOf(club),
                hurt().stream().filter(squad::contains).collect(Collectors.toSet()));
    }

    SealedSheets.Opened open(Collection<SealedRef> wanted) {
        return sheets.open(jooq, wanted);
    }

    List<SealedRef> unreadable() {
        return sheets.unreadable(jooq);
    }

    ClubNotes notesOf(ClubId club, Collection<PlayerId> squad) {
        return PrivateTables.of(jooq, club, squad);
    }

    Set<PlayerId> hurt() {
        return PrivateTables.hurt(jooq);
    }

    List<PrivateNote.Forecast> forecasts(ClubId club) {
        return PrivateTables.forecasts(jooq, club);
    }

    List<PastGame> pastGames() {
        return PastGameTables.all(jooq);
    }

    List<PrivateNote.FilmKept> filmsOf(ClubId club) {
        return FilmTable.of(jooq, club);
    }

    List<KeptGame> pastGamesOf(ClubId club) {
        return PastGameTables.of(jooq, club);
    }

    /** Returns when the entry is on the disk. */
    void write(Entry entry) {
        heedGrowth();
        durably(inside -> {
            FactTables.append(inside, entry.key(), entry.before(), entry.facts());
            entry.left().forEach(player -> {
                PrivateTables.forget(inside, player);
                PromiseTable.forget(inside, player);
            });
            entry.gone().forEach(club -> forget(inside, club));
            NoteTables tables = new NoteTables(inside, sheets);
            entry.notes().forEach(tables::put);
            ChangeTables.append(inside, entry.changes());
        });
        counts = entry.notes().isEmpty() ? counts : ChangeTables.counts(jooq);
    }

    /** Returns when the notes are on the disk: all of them, and that the request was answered. */
    void write(PrivateRequest request, List<PrivateNote> notes, Changes changes) {
        heedGrowth();
        durably(inside -> {
            ChangeTables.answer(inside, request.club(), request.key());
            NoteTables tables = new NoteTables(inside, sheets);
            notes.forEach(tables::put);
            ChangeTables.append(inside, changes);
        });
        counts = ChangeTables.counts(jooq);
    }

    private void heedGrowth() {
        if (folder.size() > sizeWhenOpened + growth.whileOpen()) {
            tidy(() -> whileClosed(() -> Rewriting.rewrite(folder.database())));
            sizeWhenOpened = folder.size();
        }
    }

    private static void forget(DSLContext inside, ClubId club) {
        PrivateTables.forget(inside, club);
        FilmTable.forget(inside, club);
        PastGameTables.forget(inside, club);
        ChangeTables.forget(inside, club);
    }

    /** Works on the files while the database is closed, and opens it again whatever came of the work. */
    void whileClosed(OnFiles work) throws IOException {
        isDoubtful = true;
        try {
            closeConnection();
            folder.databaseIsClosed();
            work.run();
        } finally {
            sheets = new SealedSheets(Seal.withKeyIn(folder.key()));
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
        try {
            new Owner(folder).copyTo(zip);
        } catch (SQLException e) {
            throw new LedgerException("The backup " + zip + " could not be written: " + e.getMessage(), e);
        }
    }

    @Override
    public void close() {
        try (folder) {
            connection.close();
        } catch (SQLException e) {
            throw new LedgerException("The database in " + folder.path() + " did not close: " + e.getMessage(), e);
        }
    }

    /** What fails before the commit leaves no trace; after that only reading anew can tell what was written. */
    void durably(java.util.function.Consumer<DSLContext> work) {
        if (isDoubtful) {
            throw cannotBeWritten(null);
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
        } catch (SQLException | IOException e) {
            throw doubted(e);
        }
    }

    /** Whether the database must be opened anew before anything else: a file that it could not write it closes for good. */
    boolean isDoubtful() {
        return isDoubtful;
    }

    /** The database failed; what it holds is known only when it is read anew. */
    LedgerException doubted(Exception failure) {
        isDoubtful = true;
        return cannotBeWritten(failure);
    }

    /**
     * Opens the database anew, as at a start.
     *
     * @throws LedgerException if it still cannot be written
     */
    void reopen() {
        try {
            whileClosed(() -> {});
            counts = ChangeTables.counts(jooq);
        } catch (IOException | DataAccessException | LedgerException still) {
            throw doubted(still);
        }
    }

    private LedgerException cannotBeWritten(@org.jspecify.annotations.Nullable Exception cause) {
        return folder.isFull(cause)
                ? LedgerException.forNow(
                        "The disk of the folder " + folder.path() + " is full, so nothing of this was kept."
                                + " Make room on that disk and send it again: Tiewright goes on by itself, and what is sent twice counts once.",
                        cause)
                : LedgerException.forNow(
                        "The database in " + folder.path() + " could not be written, so nothing of this was kept."
                                + " Look at that disk, then send it again: Tiewright tries anew, and what is sent twice counts once.",
                        cause);
    }
}
