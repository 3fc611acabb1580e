package tiewright.correction;

import java.time.LocalTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tiewright.correction.Impact.Kind;
import tiewright.correction.Impact.State;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.Exchange;
import tiewright.event.ExchangeId;
import tiewright.event.How;
import tiewright.event.OfficialFact;
import tiewright.event.RubberScore;
import tiewright.event.SheetKind;
import tiewright.event.Side;
import tiewright.event.Slot;
import tiewright.event.SlotSource;
import tiewright.event.Tie;
import tiewright.event.TieProgress;
import tiewright.standings.Line;
import tiewright.standings.Row;
import tiewright.standings.Table;

/** Every thing of an event that people can look at and that may hang on a score. */
final class Snapshot {
    record Key(Kind kind, List<Object> subject) {}

    record Seen(Object value, State state) {}

    private final Event event;
    private final Map<Key, Seen> all = new LinkedHashMap<>();

    private Snapshot(Event event) {
        this.event = event;
    }

    static Map<Key, Seen> of(Event event) {
        Snapshot snapshot = new Snapshot(event);
        event.ties().values().forEach(snapshot::tie);
        event.pools().keySet().forEach(snapshot::pool);
        event.exchanges().values().forEach(snapshot::exchange);
        event.signed()
                .ifPresent(signed ->
                        snapshot.put(Kind.FINAL, List.of("event"), signed(signed.order(), signed.by()), State.SEEN));
        return snapshot.all;
    }

    private void tie(Tie tie) {
        TieProgress progress = event.progress(tie);
        State state = state(tie);
        progress.rubbers()
                .forEach(score -> put(Kind.RUBBER, List.of(tie.id(), score.rubber()), text(score), State.PLAYED));
        put(Kind.TIE, List.of(tie.id()), progress.won(Side.HOME) + "-" + progress.won(Side.AWAY), state);
        tie.calls()
                .forEach((rubber, call) -> put(
                        Kind.CALL,
                        List.of(tie.id(), rubber),
                        call.court(),
                        progress.rubbers().stream()
                                        .anyMatch(score -> score.rubber().equals(rubber))
                                ? State.PLAYED
                                : State.SEEN));
        if (tie.start().isPresent() || tie.court().isPresent()) {
            put(Kind.TIME, List.of(tie.id()), time(tie), later(state, State.SEEN));
        }
        for (Side side : Side.values()) {
            slot(tie, side, state);
        }
    }

    private void slot(Tie tie, Side side, State state) {
        Slot slot = tie.slot(side);
        if (slot.from().isEmpty()) {
            return;
        }
        Optional<ClubId> stands =
                slot.club().or(() -> Results.of(event, slot.from().get()));
        stands.ifPresent(club -> put(
                Kind.SLOT,
                List.of(tie.id(), side.code()),
                club,
                slot.club().isPresent() ? later(state, State.SEEN) : State.PLAIN));
        slot.club()
                .filter(club -> tie.start().isPresent())
                .ifPresent(club -> put(
                        Kind.TOLD,
                        List.of(club, tie.id()),
                        tie.start().map(LocalTime::toString).orElseThrow(),
                        later(state, State.SEEN)));
    }

    private void pool(String pool) {
        Table table = Results.table(event, pool);
        Optional<OfficialFact.TableSigned> signed =
                Optional.ofNullable(event.signedTables().get(pool));
        State atLeast = signed.isPresent() ? State.SEEN : State.PLAIN;
        table.rows().forEach(row -> put(Kind.PLACE, List.of(row.club()), row.place(), later(atLeast, from(pool, row))));
        Set<List<ClubId>> lots = new LinkedHashSet<>();
        table.rows()
                .forEach(row -> row.decidedBy().lines().forEach(line -> {
                    if (line.kind() == Line.Kind.BY_LOT) {
                        lots.add(line.level());
                    }
                }));
        lots.forEach(order ->
                put(Kind.LOT, List.of(pool, codes(order.stream().sorted().toList())), codes(order), State.SEEN));
        signed.ifPresent(table1 -> put(
                Kind.TABLE,
                List.of(pool),
                signed(table1.order(), table1.by()),
                event.ties().values().stream()
                        .filter(tie -> comesFrom(tie, pool))
                        .map(Snapshot::state)
                        .reduce(State.SEEN, Snapshot::later)));
    }

    /** How far the club has gone on from its place. */
    private State from(String pool, Row row) {
        return event.ties().values().stream()
                .filter(tie -> Stream.of(Side.values())
                        .anyMatch(side -> isOf(tie.slot(side), pool)
                                && tie.club(side).filter(row.club()::equals).isPresent()))
                .map(tie -> later(State.SEEN, state(tie)))
                .reduce(State.PLAIN, Snapshot::later);
    }

    private static boolean comesFrom(Tie tie, String pool) {
        return Stream.of(Side.values()).anyMatch(side -> isOf(tie.slot(side), pool));
    }

    private static boolean isOf(Slot slot, String pool) {
        return slot.from()
                .filter(from ->
                        from.kind() == SlotSource.Kind.POOL_PLACE && from.of().equals(pool))
                .isPresent();
    }

    private void exchange(Exchange exchange) {
        Optional<Tie> found = event.tie(exchange.id().tie());
        for (Side side : Side.values()) {
            Exchange.SideOfExchange one = exchange.side(side);
            found.flatMap(tie -> tie.club(side)).ifPresent(club -> {
                String value = stands(exchange, one);
                List<Object> subject = subject(exchange.id(), club);
                if (isUseful(exchange, found.get()) && !value.isEmpty()) {
                    put(
                            Kind.SHEET,
                            subject,
                            value,
                            exchange.isOpened() ? later(State.SEEN, played(exchange, found.get())) : State.PLAIN);
                    // before the opening the fingerprint would betray to others that a sheet was replaced
                    one.receipt()
                            .ifPresent(receipt -> put(
                                    Kind.RECEIPT,
                                    subject,
                                    exchange.isOpened() ? receipt : "sealed",
                                    exchange.isOpened() ? State.SEEN : State.PLAIN));
                }
            });
        }
    }

    private static List<Object> subject(ExchangeId exchange, ClubId club) {
        return exchange.kind() == SheetKind.DECIDER
                ? List.of(exchange.tie(), "D", club)
                : List.of(exchange.tie(), club);
    }

    private static String stands(Exchange exchange, Exchange.SideOfExchange one) {
        return exchange.isOpened() ? "opened" : one.ruled().isPresent() ? "ruled" : one.isIn() ? "sealed" : "";
    }

    /** Pairs for a decider that is not played count for nothing any more. */
    private boolean isUseful(Exchange exchange, Tie tie) {
        TieProgress progress = event.progress(tie);
        return exchange.id().kind() == SheetKind.RUBBERS || progress.deciderNeeded() || !progress.finished();
    }

    private State played(Exchange exchange, Tie tie) {
        boolean decider = exchange.id().kind() == SheetKind.DECIDER;
        return event.progress(tie).rubbers().stream()
                        .anyMatch(score -> score.rubber().isDecider() == decider)
                ? State.PLAYED
                : State.PLAIN;
    }

    private static State state(Tie tie) {
        if (tie.cards().values().stream().anyMatch(card -> !card.inForce().isEmpty())) {
            return State.PLAYED;
        }
        return tie.isOpened() || !tie.calls().isEmpty() ? State.SEEN : State.PLAIN;
    }

    private static State later(State one, State other) {
        return Collections.max(List.of(one, other));
    }

    private void put(Kind kind, List<Object> subject, Object value, State state) {
        all.put(new Key(kind, List.copyOf(subject)), new Seen(value, state));
    }

    private static String text(RubberScore score) {
        String games = score.games().stream()
                .map(game -> game.home() + "-" + game.away())
                .collect(Collectors.joining(" "));
        return score.how() == How.PLAYED ? games : (games + " " + score.how().code()).strip();
    }

    private static String time(Tie tie) {
        return Stream.of(tie.start().map(LocalTime::toString), tie.court())
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", court "));
    }

    private static String codes(List<ClubId> order) {
        return order.stream().map(ClubId::code).collect(Collectors.joining(">"));
    }

    private static String signed(List<ClubId> order, String by) {
        return codes(order) + (by.isBlank() ? "" : ", by " + by);
    }
}
