package tiewright.ledger;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jooq.exception.DataAccessException;
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

/** What is kept: reads it, and writes what belongs together in one transaction. For one thread only. */
final class Store implements AutoCloseable {
    private final OpenDatabase database;
    SealedSheets sheets;

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

    private Store(DataFolder folder, Growth growth) {
        this.database = new OpenDatabase(folder, growth);
        this.sheets = new SealedSheets(Seal.withKeyIn(folder.key()));
        this.counts = ChangeTables.counts(jooq());
    }

    static Store open(Path path) {
        return open(path, Growth.USUAL);
    }

    static Store open(Path path, Growth growth) {
        return open(DataFolder.take(path), growth);
    }

    static Store open(DataFolder folder, Growth growth) {
        try {
            FoundDatabase.mustHoldWhatIsThere(folder);
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
        return database.folder();
    }

    DSLContext jooq() {
        return database.jooq();
    }

    List<Recorded> facts() {
        return database.facts();
    }

    Directory directory() {
        return new Directory(PrivateTables.people(jooq()));
    }

    Optional<long[]> answered(String key) {
        return FactTables.answered(jooq(), key);
    }

    boolean answered(ClubId club, String key) {
        return ChangeTables.answered(jooq(), club, key);
    }

    /** How often each club's notes were changed. */
    Map<ClubId, Long> counts() {
        return counts;
    }

    List<Changes.Change> changedSince(ClubId club, long number) {
        return ChangeTables.since(jooq(), club, number);
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
        return sheets.open(jooq(), wanted);
    }

    List<SealedRef> unreadable() {
        return sheets.unreadable(jooq());
    }

    ClubNotes notesOf(ClubId club, Collection<PlayerId> squad) {
        return PrivateTables.of(jooq(), club, squad);
    }

    Set<PlayerId> hurt() {
        return PrivateTables.hurt(jooq());
    }

    List<PrivateNote.Forecast> forecasts(ClubId club) {
        return ForecastTable.of(jooq(), club);
    }

    List<PastGame> pastGames() {
        return PastGameTables.all(jooq());
    }

    List<PrivateNote.FilmKept> filmsOf(ClubId club) {
        return FilmTable.of(jooq(), club);
    }

    List<KeptGame> pastGamesOf(ClubId club) {
        return PastGameTables.of(jooq(), club);
    }

    /** Returns when the entry is on the disk. */
    void write(Entry entry) {
        database.heedGrowth();
        database.durably(entry.facts(), inside -> {
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
        counts = entry.notes().isEmpty() ? counts : ChangeTables.counts(jooq());
    }

    /** Returns when the notes are on the disk: all of them, and that the request was answered. */
    void write(PrivateRequest request, List<PrivateNote> notes, Changes changes) {
        database.heedGrowth();
        database.durably(List.of(), inside -> {
            ChangeTables.answer(inside, request.club(), request.key());
            NoteTables tables = new NoteTables(inside, sheets);
            notes.forEach(tables::put);
            ChangeTables.append(inside, changes);
        });
        counts = ChangeTables.counts(jooq());
    }

    private static void forget(DSLContext inside, ClubId club) {
        PrivateTables.forget(inside, club);
        WishTable.forget(inside, club);
        ForecastTable.forget(inside, club);
        FilmTable.forget(inside, club);
        PastGameTables.forget(inside, club);
        ChangeTables.forget(inside, club);
    }

    /** Works on the files while the database is closed; what is read and written after that lies under the key that is there then. */
    void whileClosed(OpenDatabase.OnFiles work) throws IOException {
        try {
            database.whileClosed(work);
        } finally {
            sheets = new SealedSheets(Seal.withKeyIn(folder().key()));
        }
    }

    /** Whether the database must be opened anew before anything else: a file that it could not write it closes for good. */
    boolean isDoubtful() {
        return database.isDoubtful();
    }

    /** The database failed; what it holds is known only when it is read anew. */
    LedgerException doubted(Throwable failure) {
        return database.doubted(failure);
    }

    /**
     * Opens the database anew, as at a start.
     *
     * @throws LedgerException if it still cannot be written
     */
    void reopen() {
        try {
            whileClosed(() -> {});
            counts = ChangeTables.counts(jooq());
        } catch (IOException | DataAccessException | LedgerException still) {
            throw doubted(still);
        }
    }

    void copyTo(Path zip) {
        database.copyTo(zip);
    }

    @Override
    public void close() {
        database.close();
    }
}
