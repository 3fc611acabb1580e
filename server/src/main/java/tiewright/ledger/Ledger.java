package tiewright.ledger;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jooq.exception.DataAccessException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tiewright.event.ClubId;
import tiewright.event.ClubNotes;
import tiewright.event.Decision;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.event.Held;
import tiewright.event.KeptGame;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote;
import tiewright.event.PrivateNote.PastGame;
import tiewright.event.Recorded;

/**
 * What happened at one event, in one folder. Decisions are asked one after the other; what is accepted is on the disk
 * before the answer is given. Reading never waits for writing. Safe for any number of threads.
 */
public final class Ledger implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Ledger.class);

    /** As long as a request waits for a thread. */
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    final Store store;
    private final InstantSource clock;
    private final Asking asking;
    private final Noting noting;
    private final Writer writer;
    private final Listeners listeners = new Listeners();
    private volatile Memory now;

    private Ledger(Store store, InstantSource clock, Duration patience) {
        this.store = store;
        this.clock = clock;
        this.writer = new Writer(store, patience, this::readAnew);
        this.asking = new Asking(store, clock);
        this.noting = new Noting(store, clock);
        this.now = Memory.of(store);
    }

    /**
     * Opens the folder, or begins a new event in it.
     *
     * @throws LedgerException if another process has it open, another version wrote it, or it cannot be used
     */
    public static Ledger open(Path folder, InstantSource clock) {
        return open(Store.open(folder), clock);
    }

    static Ledger open(Store store, InstantSource clock) {
        return open(store, clock, PATIENCE);
    }

    /** @param patience how long anybody waits for the disk */
    static Ledger open(Store store, InstantSource clock, Duration patience) {
        try {
            Ledger ledger = new Ledger(store, clock, patience);
            store.unreadable()
                    .forEach(where -> LOG.warn(
                            "The sealed sheet of {} for {} cannot be read with the key in {}. The club must seal again.",
                            where.club(),
                            where.exchange().tie(),
                            store.folder().key()));
            return ledger;
        } catch (DataAccessException damaged) {
            store.close();
            throw Owner.damaged(store.folder(), damaged);
        } catch (RuntimeException e) {
            store.close();
            throw e;
        }
    }

    /** Whether an event lies in this folder already. */
    public static boolean isIn(Path folder) {
        return DataFolder.holdsEvent(folder);
    }

    public Path folder() {
        return store.folder().path();
    }

    /** The event as it stands. */
    public Event event() {
        return now.event();
    }

    /** The names behind the codes. */
    public Directory directory() {
        return now.directory();
    }

    /**
     * The event as it stood after fact number {@code seq}; 0 is before anything happened.
     *
     * @throws IllegalArgumentException if there is no such fact
     */
    public Event asOf(long seq) {
        return now.asOf(seq);
    }

    /** The facts that came after number {@code afterSeq}, in order; 0 gives all of them. */
    public List<Recorded> facts(long afterSeq) {
        return now.after(afterSeq);
    }

    /**
     * Asks the decision about the event as it stands and writes down what it says. What was answered to the same key is
     * answered again, also after a restart; a refusal is not remembered.
     */
    public Answer decide(Request request, Decision decision) {
        return call(() -> decideNow(request, decision));
    }

    /**
     * Asks a private decision about what its club has noted so far and keeps what it says: all of it or none. What was answered to
     * the same key is answered again, also after a restart; a refusal is not remembered. Nobody else hears of it.
     */
    public PrivateAnswer decide(PrivateRequest request, PrivateDecision decision) {
        return call(() -> noting.ask(now.event(), request, decision));
    }

    /** How often the club's own notes were changed: what a form of that club has seen. To be read before the notes; for nobody else. */
    public long noted(ClubId club) {
        return store.counts().getOrDefault(club, 0L);
    }

    /** How much is held that must be deleted on a date. */
    public Held held() {
        return call(this::heldNow);
    }

    private Held heldNow() {
        return PrivateData.held(store.jooq(), now.event(), now.directory());
    }

    /**
     * Asks a decision that may delete everything private. Once it is answered nothing of it is left in the database file, in
     * backups inside the folder or under the key of the sealed sheets; {@link #backups} names copies that lie elsewhere.
     *
     * @param decision made from what is held at that moment
     */
    public Answer erase(Request request, Function<Held, Decision> decision) {
        return writer.callHoweverLong(() -> tell(
                now,
                Erasing.everything(store, request.key(), () -> asking.ask(now, request, decision.apply(heldNow())))));
    }

    /**
     * Asks a private decision that may delete what the club noted about one of its own. Once it is answered nothing of it is left
     * in the database file.
     */
    public PrivateAnswer forget(PrivateRequest request, PrivateDecision decision) {
        return writer.callHoweverLong(() -> Erasing.onePlayer(store, () -> noting.ask(now.event(), request, decision)));
    }

    /** Copies of the data that were made, whatever has become of them; oldest first. */
    public List<KnownBackup> backups() {
        return BackupList.of(folder());
    }

    /** Notes where a backup lies that was written by others than {@link #backUp}; empty: somebody downloaded it. */
    public static void noteBackup(Path folder, Instant at, Optional<Path> file) {
        BackupList.note(folder, at, file);
    }

    /** The club's own sealed sheet in the clear; only for its captain. Empty too if the key does not open it. */
    public Optional<Decision.Sealed> ownSheet(ExchangeId exchange, ClubId club) {
        Decision.SealedRef where = new Decision.SealedRef(exchange, club);
        return call(() -> Optional.ofNullable(store.open(Set.of(where)).sheets().get(where)));
    }

    /** The sealed sheets that this folder holds but its key does not open; their clubs must seal again. */
    public List<Decision.SealedRef> unreadableSheets() {
        return call(store::unreadable);
    }

    /** What the club noted from film, in the order of the games' codes; for nobody else. */
    public List<PrivateNote.FilmKept> filmsOf(ClubId club) {
        return call(() -> store.filmsOf(club));
    }

    /** Earlier games that the club keeps for itself, by day; for nobody else. */
    public List<KeptGame> pastGamesOf(ClubId club) {
        return call(() -> store.pastGamesOf(club));
    }

    /** What the club's captain noted about those who are in the squad now; for nobody else. */
    public ClubNotes privateOf(ClubId club) {
        return call(() -> store.notesOf(
                club, now.event().squad(club).stream().map(Player::id).toList()));
    }

    /** Who is marked as hurt or ill; for officials and each player's own captain. */
    public Set<PlayerId> hurt() {
        return call(store::hurt);
    }

    /** What the advice to a club expected at the openings so far; for that club's captain alone. */
    public List<PrivateNote.Forecast> forecasts(ClubId club) {
        return call(() -> store.forecasts(club));
    }

    /** Earlier games that feed everybody's ratings, in the order they were brought in. */
    public List<PastGame> pastGames() {
        return call(store::pastGames);
    }

    /** Tells the event after every change, in order, on a thread of its own: a listener may take its time and may decide. */
    public void onChange(Consumer<Event> listener) {
        listeners.add(listener);
    }

    /** A consistent copy while the event goes on, without the key of the sealed sheets. */
    public void backUp(Path zip) {
        backUp(zip, false);
    }

    /**
     * @param withKey writes the key of the sealed sheets too, to a second file {@code <zip>.key}; keep it elsewhere
     * @throws LedgerException if a file of that name is already there or it cannot be written
     */
    public void backUp(Path zip, boolean withKey) {
        writer.callHoweverLong(() -> {
            Backup.write(store, zip, withKey, clock.instant());
            return true;
        });
    }

    /** {@link #backUp(Path)} for somebody who takes it along at once; nothing is noted about where it goes. */
    public byte[] backedUp() {
        return writer.callHoweverLong(() -> Backup.bytes(store));
    }

    /** {@link #restore(Path, Optional, Path)} without a key: clubs whose sheets were sealed must seal again. */
    public static Restored restore(Path zip, Path folder) {
        return restore(zip, Optional.empty(), folder);
    }

    /**
     * Lays a backup into a folder that is new or empty, from which the event can go on.
     *
     * @throws LedgerException if the folder is not empty or the file is no backup
     */
    public static Restored restore(Path zip, Optional<Path> key, Path folder) {
        return Backup.restore(zip, key, folder);
    }

    /** Ends what is begun and gives the folder free. */
    @Override
    public void close() {
        try (listeners) {
            writer.close();
        }
    }

    <T> T call(Supplier<T> work) {
        return writer.call(work);
    }

    private void readAnew() {
        now = Memory.of(store);
        listeners.tell(now.event());
    }

    private Answer decideNow(Request request, Decision decision) {
        return tell(now, asking.ask(now, request, decision));
    }

    private Answer tell(Memory before, Asking.Result result) {
        now = result.after();
        if (now.event().seq() != before.event().seq() || !now.directory().equals(before.directory())) {
            listeners.tell(now.event());
        }
        return result.answer();
    }
}
