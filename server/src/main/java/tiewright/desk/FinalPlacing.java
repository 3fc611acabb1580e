package tiewright.desk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.KnockoutFinal;
import tiewright.event.Refusal;
import tiewright.event.Saying;
import tiewright.event.Stage;
import tiewright.event.Tie;
import tiewright.event.TieId;

/**
 * The final standings of the event, champion first.
 *
 * <p>The two clubs of the final, then those of the tie for third place, then the others by the round of the knockout in
 * which they went out, the later the better, and by the ties that are played for places; then the clubs that did not reach it. Clubs level in this are ordered by
 * {@link PoolRecord} (common practice, no source).
 */
public final class FinalPlacing {
    private final Event event;
    private final List<Tie> knockout;
    private final PoolRecord pools;
    private final FinalReasons reasons;
    private final Map<ClubId, List<Saying>> order = new LinkedHashMap<>();

    private FinalPlacing(Event event) {
        this.event = event;
        this.knockout = event.ties().values().stream()
                .filter(tie -> tie.stage() != Stage.POOL)
                .toList();
        this.pools = PoolRecord.of(event);
        this.reasons = new FinalReasons(event, pools);
    }

    /** Empty until every table is signed and the knockout is finished. */
    public static List<ClubId> of(Event event) {
        return List.copyOf(reasons(event).keySet());
    }

    /** Each club with what put it there: its last tie or its pool, and what parts it from its like. */
    private static Map<ClubId, List<Saying>> reasons(Event event) {
        return unfinished(event).isEmpty() ? new FinalPlacing(event).order() : Map.of();
    }

    /** The same order as a notice says it: the number of each place, the club's name as it stands, and why. */
    public static List<Saying> said(Event event) {
        List<Saying> places = new ArrayList<>();
        reasons(event)
                .forEach((club, why) -> places.add(Saying.of("notices.final-place")
                        .with("place", places.size() + 1)
                        .with(
                                "club",
                                event.club(club).map(known -> known.name()).orElse(club.code()))
                        .with("why", why)));
        return places;
    }

    /** The winner of the final, as soon as it is finished. */
    static Optional<ClubId> champion(Event event) {
        FinalPlacing placing = new FinalPlacing(event);
        return placing.finalTie().flatMap(tie -> placing.club(tie, true));
    }

    /** Every reason why the final standings are not there yet; empty = they are. */
    static List<Refusal> unfinished(Event event) {
        List<Refusal> reasons = new ArrayList<>();
        List<Tie> knockout = new FinalPlacing(event).knockout;
        if (event.ties().isEmpty()) {
            reasons.add(Refusal.of("desk.nothing-played"));
        }
        event.pools().keySet().stream()
                .filter(pool -> !event.signedTables().containsKey(pool))
                .forEach(pool -> reasons.add(Refusal.of("desk.table-not-signed").with("pool", pool)));
        List<Tie> left =
                knockout.stream().filter(tie -> !event.progress(tie).finished()).toList();
        if (!left.isEmpty()) {
            reasons.add(Refusal.of("desk.knockout-not-finished")
                    .with("ties", left.stream().map(Tie::id).toList()));
        }
        level(event)
                .forEach(tie -> reasons.add(Refusal.of("desk.knockout-level").with("tie", tie)));
        return reasons;
    }

    /** Ties of the knockout that are finished and have no winner. */
    static List<TieId> level(Event event) {
        return new FinalPlacing(event)
                .knockout.stream()
                        .filter(tie -> tie.isReady()
                                && event.progress(tie).finished()
                                && event.progress(tie).winner().isEmpty())
                        .map(Tie::id)
                        .toList();
    }

    private Map<ClubId, List<Saying>> order() {
        finalTie().ifPresent(this::add);
        if (knockout.stream().anyMatch(tie -> tie.stage() == Stage.PLACING)) {
            addByWay();
        }
        knockout.stream().filter(Tie::isOfLosers).sorted(laterFirst()).forEach(this::add);
        knockout.stream()
                .map(Tie::round)
                .distinct()
                .sorted(Comparator.reverseOrder())
                .forEach(this::addRound);
        addGroup(
                Stream.concat(event.pools().values().stream().flatMap(List::stream), pools.clubs().stream())
                        .distinct()
                        .filter(pools::has),
                reasons::pool);
        return Collections.unmodifiableMap(order);
    }

    /** Where places are played for: who lost later, and then less, is ahead; clubs that came the same way are parted by their pools. */
    private void addByWay() {
        Map<String, List<ClubId>> byWay = new TreeMap<>();
        knockout.stream()
                .flatMap(tie -> tie.clubs().stream())
                .distinct()
                .forEach(club -> byWay.computeIfAbsent(way(club), any -> new ArrayList<>())
                        .add(club));
        byWay.values().forEach(clubs -> addGroup(clubs.stream(), club -> reasons.tie(lastTie(club), club)));
    }

    /** A letter for each round of the knockout: {@code a} where the club did not lose, {@code b} where it did. */
    private String way(ClubId club) {
        int rounds = knockout.stream().mapToInt(Tie::round).max().orElse(0);
        return IntStream.rangeClosed(1, rounds)
                .mapToObj(round -> knockout.stream()
                                .anyMatch(tie -> tie.round() == round
                                        && club(tie, false).filter(club::equals).isPresent())
                        ? "b"
                        : "a")
                .collect(Collectors.joining());
    }

    private Tie lastTie(ClubId club) {
        return knockout.stream()
                .filter(tie -> tie.has(club))
                .max(Comparator.comparingInt(Tie::round))
                .orElseThrow();
    }

    /** Who won a last tie of this round and went no further, then who lost in it. */
    private void addRound(int round) {
        for (boolean won : new boolean[] {true, false}) {
            Map<ClubId, Tie> last = new LinkedHashMap<>();
            knockout.stream()
                    .filter(tie -> tie.round() == round)
                    .forEach(tie -> club(tie, won)
                            .filter(club -> lastRound(club) == round)
                            .ifPresent(club -> last.putIfAbsent(club, tie)));
            addGroup(last.keySet().stream(), club -> reasons.tie(Objects.requireNonNull(last.get(club)), club));
        }
    }

    /** Clubs that nothing but their pools part. */
    private void addGroup(Stream<ClubId> clubs, Function<ClubId, Saying> why) {
        List<ClubId> group =
                clubs.filter(club -> !order.containsKey(club)).sorted(pools).toList();
        for (int at = 0; at < group.size(); at++) {
            List<Saying> all = new ArrayList<>(List.of(why.apply(group.get(at))));
            all.addAll(reasons.parted(group, at));
            order.put(group.get(at), all);
        }
    }

    private int lastRound(ClubId club) {
        return knockout.stream()
                .filter(tie -> tie.has(club))
                .mapToInt(Tie::round)
                .max()
                .orElse(0);
    }

    private void add(Tie tie) {
        Stream.of(club(tie, true), club(tie, false))
                .flatMap(Optional::stream)
                .forEach(club -> order.putIfAbsent(club, List.of(reasons.tie(tie, club))));
    }

    private Optional<ClubId> club(Tie tie, boolean winner) {
        return event.progress(tie).winner().flatMap(side -> tie.club(winner ? side : side.other()));
    }

    private Optional<Tie> finalTie() {
        return KnockoutFinal.of(knockout);
    }

    private static Comparator<Tie> laterFirst() {
        return Comparator.comparingInt(Tie::round).reversed();
    }
}
