package tiewright.ledger;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.Player;
import tiewright.event.PrivateNote;
import tiewright.event.PrivateNote.PastGame;
import tiewright.event.Recorded;
import tiewright.event.Refusal;

/**
 * What happened at one event, in one folder. Decisions are asked one after the other; what is accepted is on the disk
 * before the answer is given. Reading never waits for writing. Safe for any number of threads.
 */
public final class Ledger implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(Ledger.class);

  private final Store store;
  private final Clock clock;
  private final OneThread writer = new OneThread("tiewright-ledger");
  private final OneThread teller = new OneThread("tiewright-changes");
  private final List<Consumer<Event>> listeners = new CopyOnWriteArrayList<>();
  private volatile State now;

  /** Everything in memory, as of one moment. */
  private record State(List<Recorded> facts, Event event, Directory directory) {
    State then(List<Recorded> more, Event event, Directory directory) {
      List<Recorded> all = new ArrayList<>(facts);
      all.addAll(more);
      return new State(Collections.unmodifiableList(all), event, directory);
    }
  }

  private Ledger(Store store, Clock clock) {
    this.store = store;
    this.clock = clock;
    List<Recorded> facts = store.facts();
    this.now = new State(facts, Event.of(facts), store.directory());
  }

  /**
   * Opens the folder, or begins a new event in it.
   *
   * @throws LedgerException if another process has it open, another version wrote it, or it cannot be used
   */
  public static Ledger open(Path folder, Clock clock) {
    Store store = Store.open(folder);
    try {
      Ledger ledger = new Ledger(store, clock);
      store.unreadable().forEach(where -> LOG.warn(
          "The sealed sheet of {} for {} cannot be read with the key in {}. The club must seal again.",
          where.club(), where.exchange().tie(), store.folder().key()));
      return ledger;
    } catch (RuntimeException e) {
      store.close();
      throw e;
    }
  }

  public Path folder() {
    return store.folder().path();
  }

  /** The event as it stands. */
  public Event event() {
    return now.event;
  }

  /** The names behind the codes. */
  public Directory directory() {
    return now.directory;
  }

  /**
   * The event as it stood after fact number {@code seq}; 0 is before anything happened.
   *
   * @throws IllegalArgumentException if there is no such fact
   */
  public Event asOf(long seq) {
    List<Recorded> facts = now.facts;
    if (seq < 0 || seq > facts.size()) {
      throw new IllegalArgumentException("there is no fact " + seq + ", the last is " + facts.size());
    }
    return Event.of(facts.subList(0, Math.toIntExact(seq)));
  }

  /** The facts that came after number {@code afterSeq}, in order; 0 gives all of them. */
  public List<Recorded> facts(long afterSeq) {
    List<Recorded> facts = now.facts;
    return facts.subList(Math.toIntExact(Math.min(Math.max(afterSeq, 0), facts.size())), facts.size());
  }

  /**
   * Asks the decision about the event as it stands and writes down what it says. What was answered to the same key is
   * answered again, also after a restart; a refusal is not remembered.
   */
  public Answer decide(Request request, Decision decision) {
    return writer.call(() -> decideNow(request, decision));
  }

  /** The club's own sealed sheet in the clear; only for its captain. Empty too if the key does not open it. */
  public Optional<Decision.Sealed> ownSheet(ExchangeId exchange, ClubId club) {
    Decision.SealedRef where = new Decision.SealedRef(exchange, club);
    return writer.call(() -> Optional.ofNullable(store.open(Set.of(where)).sheets().get(where)));
  }

  /** The sealed sheets that this folder holds but its key does not open; their clubs must seal again. */
  public List<Decision.SealedRef> unreadableSheets() {
    return writer.call(store::unreadable);
  }

  /**
   * Keeps a captain's judgement or wish instead of the earlier one; one that says nothing ends it.
   *
   * @throws IllegalArgumentException if it is not about the own squad, or not a captain's to note
   */
  public void note(ClubId club, PrivateNote note) {
    writer.run(() -> {
      if (!OwnNotes.mayNote(now.event, club, note)) {
        throw new IllegalArgumentException("the captain of " + club + " may not note this");
      }
      store.write(note);
    });
  }

  /** What the club's captain noted about those who are in the squad now; for nobody else. */
  public ClubNotes privateOf(ClubId club) {
    return writer.call(() -> store.notesOf(club, now.event.squad(club).stream().map(Player::id).toList()));
  }

  /** Earlier games that feed the ratings, in the order they were brought in. */
  public List<PastGame> pastGames() {
    return writer.call(store::pastGames);
  }

  /**
   * Tells the event after every change, in order, on a thread of its own: a listener may take its time and may decide.
   */
  public void onChange(Consumer<Event> listener) {
    listeners.add(listener);
  }

  /** Ends what is begun and gives the folder free. */
  @Override
  public void close() {
    writer.close();
    teller.close();
    store.close();
  }

  private Answer decideNow(Request request, Decision decision) {
    Optional<long[]> first = store.answered(request.key());
    if (first.isPresent()) {
      return new Answer.Done(now.facts.subList((int) first.get()[0] - 1, (int) first.get()[1]), true);
    }
    List<Recorded> since = staling(request, decision);
    if (!since.isEmpty()) {
      return new Answer.Stale(since);
    }
    Instant at = clock.instant().truncatedTo(ChronoUnit.MILLIS);
    SealedSheets.Opened opened = store.open(decision.needs(now.event));
    Decision.Outcome outcome =
        decision.decide(now.event, new Decision.Given(at, request.by(), now.directory, opened.sheets()));
    if (outcome instanceof Decision.Refused refused) {
      return new Answer.Refused(Faults.withUnreadable(opened.unreadable(), refused.reasons()));
    }
    return append(request, at, (Decision.Accepted) outcome);
  }

  private List<Recorded> staling(Request request, Decision decision) {
    if (request.seenSeq().isEmpty()) {
      return List.of();
    }
    return facts(request.seenSeq().getAsLong()).stream()
        .filter(recorded -> decision.isStaledBy(recorded.fact()))
        .toList();
  }

  private Answer append(Request request, Instant at, Decision.Accepted accepted) {
    List<Refusal> tooLong = Faults.tooLong(accepted);
    if (!tooLong.isEmpty()) {
      return new Answer.Refused(tooLong);
    }
    State before = now;
    List<Recorded> facts = numbered(before.event.seq(), request, at, accepted.facts());
    // Folded first: what cannot be folded must not be written.
    Event event = before.event.then(facts);
    store.write(new Store.Entry(
        request.key(), before.event.seq(), facts, accepted.notes(), OwnNotes.left(before.event, event)));
    now = before.then(facts, event, OwnNotes.named(before.directory, accepted.notes()));
    if (!facts.isEmpty() || !now.directory.equals(before.directory)) {
      listeners.forEach(listener -> teller.later(() -> tell(listener, event)));
    }
    return new Answer.Done(facts, false);
  }

  private static List<Recorded> numbered(long before, Request request, Instant at, List<Fact> facts) {
    Optional<Instant> deviceTime = request.deviceTime().map(time -> time.truncatedTo(ChronoUnit.MILLIS));
    List<Recorded> recorded = new ArrayList<>();
    for (Fact fact : facts) {
      recorded.add(new Recorded(before + recorded.size() + 1, fact, request.by(), deviceTime, at));
    }
    return List.copyOf(recorded);
  }

  private static void tell(Consumer<Event> listener, Event event) {
    try {
      listener.accept(event);
    } catch (RuntimeException e) {
      LOG.error("A listener failed at fact {}.", event.seq(), e);
    }
  }
}
