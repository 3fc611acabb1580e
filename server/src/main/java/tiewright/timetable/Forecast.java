package tiewright.timetable;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.OrderOfPlay;
import tiewright.event.RubberNo;
import tiewright.event.SetUpFact;
import tiewright.event.Side;
import tiewright.event.SlotSource;
import tiewright.event.Tie;
import tiewright.event.TieId;

/** Plays the rest of the day in the published order, with rubbers of random length at the pace of today. Minutes of the day. */
final class Forecast {
  /** However often it is drawn anew: a rubber that has lasted longer than all of them ends soon. */
  private static final int REDRAWS = 20;

  private final Event event;
  private final Pace pace;
  private final Random random;
  private final ZoneId zone;
  private final double now;
  private final TodayPace today;
  private final RubberDraws draws;
  private final List<Tie> begun;
  private final List<Tie> waiting;
  private final Map<String, Double> courtFree = new HashMap<>();
  private final Map<TieId, Double> over = new HashMap<>();

  Forecast(Event event, Instant now, Pace pace, Random random) {
    this.event = event;
    this.pace = pace;
    this.random = random;
    this.zone = event.about().map(SetUpFact.EventDescribed::zone).orElse(ZoneOffset.UTC);
    this.now = minute(now);
    this.draws = new RubberDraws(event.conditions().scoring(), event.conditions().bestOf(), pace, random);
    double slot = RubberTime.of(event.conditions(), pace).mean() + pace.turnoverMinutes();
    this.today = TodayPace.of(event, slot);
    this.begun = event.ties().values().stream().filter(Forecast::hasBegun).toList();
    this.waiting = event.ties().values().stream()
        .filter(tie -> tie.start().isPresent() && !hasBegun(tie) && !isGone(tie))
        .sorted(Comparator.comparing((Tie tie) -> tie.start().orElseThrow()).thenComparing(Tie::round))
        .toList();
  }

  private static boolean hasBegun(Tie tie) {
    return !tie.calls().isEmpty() || !tie.cards().isEmpty();
  }

  private boolean isGone(Tie tie) {
    return Stream.of(Side.values()).flatMap(side -> tie.club(side).stream()).anyMatch(event.withdrawals()::containsKey);
  }

  List<Tie> waiting() {
    return waiting;
  }

  TodayPace today() {
    return today;
  }

  /** One way in which the day may go on: when each waiting tie begins. */
  double[] starts() {
    courtFree.clear();
    over.clear();
    begun.forEach(this::finish);
    double[] starts = new double[waiting.size()];
    for (int i = 0; i < starts.length; i++) {
      starts[i] = play(waiting.get(i));
    }
    return starts;
  }

  /** A tie that has begun: over with its last card, or when what is on court and what is left has been played. */
  private void finish(Tie tie) {
    double end = tie.cards().values().stream().flatMap(card -> card.entries().stream())
        .mapToDouble(entry -> minute(entry.receivedAt())).max().orElse(0);
    for (RubberNo rubber : event.progress(tie).left()) {
      Optional<Tie.Call> call = Optional.ofNullable(tie.calls().get(rubber));
      String court = call.map(Tie.Call::court).or(() -> tie.court()).orElse("");
      double free = Math.max(courtFree.getOrDefault(court, 0.0), call.map(c -> minute(TodayPace.since(tie, c, Instant.MAX))).orElse(now));
      double done = free + longerThan(now - free);
      courtFree.put(court, done);
      end = Math.max(end, done);
    }
    over.put(tie.id(), end);
  }

  private double longerThan(double elapsed) {
    for (int i = 0; i < REDRAWS; i++) {
      double minutes = rubber();
      if (minutes > elapsed) {
        return minutes;
      }
    }
    return Math.max(0, elapsed) + pace.turnoverMinutes();
  }

  private double rubber() {
    return (draws.draw(random) + pace.turnoverMinutes()) * today.factor();
  }

  /** @return when its first rubber begins */
  private double play(Tie tie) {
    double ready = Math.max(Clock.minute(tie.start().orElseThrow()), now);
    for (Side side : Side.values()) {
      ready = Math.max(ready, sideReady(tie, side));
    }
    Map<RubberNo, OrderOfPlay.Place> places = event.order().rubbers(tie.id());
    double start = Double.MAX_VALUE;
    double end = ready;
    List<RubberNo> left = event.progress(tie).left();
    for (int i = 0; i < left.size(); i++) {
      OrderOfPlay.Place place = places.getOrDefault(left.get(i), place(tie, i));
      double free = courtFree.getOrDefault(place.court(), 0.0);
      double begins = Math.max(Math.max(ready, Clock.minute(place.start())) + today.startDelay(), free);
      double done = begins + rubber();
      courtFree.put(place.court(), done);
      start = Math.min(start, begins);
      end = Math.max(end, done);
    }
    over.put(tie.id(), end);
    return left.isEmpty() ? ready : start;
  }

  /** Without a plan of its rubbers a tie has its share of the courts: those that it is published on, and as many lanes beside it. */
  private OrderOfPlay.Place place(Tie tie, int rubber) {
    LocalTime start = tie.start().orElseThrow();
    long beside = event.ties().values().stream().filter(other -> other.start().equals(tie.start())).count();
    long usable = event.courts().values().stream().filter(tiewright.event.Court::usable).count();
    int lanes = (int) Math.max(1, Math.round((double) usable / Math.max(1, beside)));
    int lane = rubber % lanes;
    String court = tie.court().orElse("without a court, tie " + tie.id());
    return new OrderOfPlay.Place(start, lane == 0 ? court : court + " and beside it, " + lane);
  }

  private double sideReady(Tie tie, Side side) {
    int rest = event.conditions().restMinutes();
    Optional<ClubId> club = tie.club(side);
    if (club.isPresent()) {
      return event.ties().values().stream()
          .filter(other -> other.has(club.get()) && over.containsKey(other.id()))
          .mapToDouble(other -> over.get(other.id()) + rest)
          .max()
          .orElse(0);
    }
    return tie.slot(side).from().stream()
        .flatMap(from -> event.ties().values().stream().filter(other -> feeds(other, from)))
        .filter(other -> over.containsKey(other.id()))
        .mapToDouble(other -> over.get(other.id()) + rest)
        .max()
        .orElse(0);
  }

  private static boolean feeds(Tie other, SlotSource from) {
    return from.kind() == SlotSource.Kind.POOL_PLACE
        ? other.pool().filter(from.of()::equals).isPresent()
        : other.id().code().equals(from.of());
  }

  private double minute(Instant at) {
    LocalTime time = LocalTime.ofInstant(at, zone);
    return time.toSecondOfDay() / 60.0;
  }
}
