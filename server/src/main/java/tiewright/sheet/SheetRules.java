package tiewright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import tiewright.conditions.Conditions;
import tiewright.conditions.DeciderKind;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.SheetKind;

/** Which sheets the conditions of play allow a club. */
public final class SheetRules {
    private final Event event;
    private final ExchangeId exchange;
    private final Sheet sheet;
    private final Squad squad;
    private final Conditions conditions;

    private SheetRules(SheetOf whose, Sheet sheet) {
        this.event = whose.event();
        this.exchange = whose.exchange();
        this.sheet = sheet;
        this.squad = new Squad(whose);
        this.conditions = event.conditions();
    }

    /**
     * Every reason why the club may not name this sheet; empty when it is legal.
     *
     * @return each with the field {@code sheet-1}, {@code sheet-D}, … of its rubber, or {@code sheet}
     */
    public static List<Refusal> faults(SheetOf whose, Sheet sheet) {
        return new SheetRules(whose, sheet).faults(true);
    }

    /**
     * The same without who is here and when: for a sheet that was sealed in time and comes to the desk later. Who cannot
     * play any more is replaced through its door after the opening.
     */
    static List<Refusal> faultsOfOrder(SheetOf whose, Sheet sheet) {
        return new SheetRules(whose, sheet).faults(false);
    }

    /** The rubbers that a sheet of this exchange names, each of them. */
    static SortedSet<RubberNo> rubbers(Event event, ExchangeId exchange) {
        return new TreeSet<>(exchange.rubbers(event.conditions()));
    }

    static String field(RubberNo rubber) {
        return "sheet-" + rubber;
    }

    private List<Refusal> faults(boolean presence) {
        SortedSet<RubberNo> rubbers = rubbers(event, exchange);
        if (!sheet.pairs().keySet().equals(rubbers)) {
            return List.of(Why.RUBBERS.refusal().with("rubbers", rubbers).at("sheet"));
        }
        List<Refusal> faults = new ArrayList<>();
        people(presence, faults);
        kinds(faults);
        tooOften(faults);
        if (exchange.kind() == SheetKind.RUBBERS) {
            order(faults);
            gaps(presence, faults);
        } else {
            decider(presence, faults);
        }
        return List.copyOf(faults);
    }

    private void people(boolean presence, List<Refusal> faults) {
        sheet.pairs()
                .forEach((rubber, pair) -> players(pair)
                        .forEach(player -> squad.whyNot(player)
                                .filter(why -> presence || !isOfTheHour(why))
                                .map(why -> why.at(field(rubber)))
                                .ifPresent(faults::add)));
    }

    private void kinds(List<Refusal> faults) {
        sheet.pairs()
                .forEach((rubber, pair) -> pair.ifPresent(named -> KindRule.whyNot(squad, named, rubber).stream()
                        .map(why -> why.at(field(rubber)))
                        .forEach(faults::add)));
    }

    private static boolean isOfTheHour(Refusal why) {
        return List.of(Why.ABSENT.code(), Why.NOT_YET.code(), Why.LEAVES.code()).contains(why.code());
    }

    private void tooOften(List<Refusal> faults) {
        for (PlayerId player : sheet.players()) {
            List<RubberNo> in = sheet.pairs().entrySet().stream()
                    .filter(named ->
                            named.getValue().filter(pair -> pair.has(player)).isPresent())
                    .map(Map.Entry::getKey)
                    .toList();
            if (in.size() > conditions.maxRubbersPerPlayer()) {
                faults.add(tooOften(player, in, conditions).at(field(in.get(in.size() - 1))));
            }
        }
    }

    /** Named in more rubbers than one may play. */
    static Refusal tooOften(PlayerId player, List<RubberNo> in, Conditions conditions) {
        return conditions.maxRubbersPerPlayer() == 1
                ? Why.PLAYER_TWICE.refusal().with("player", player).with("rubbers", in)
                : Why.TOO_OFTEN
                        .refusal()
                        .with("player", player)
                        .with("rubbers", in)
                        .with("most", conditions.maxRubbersPerPlayer());
    }

    private void order(List<Refusal> faults) {
        List<StrengthOrder.Strength> pairs = new ArrayList<>();
        sheet.pairs()
                .forEach((rubber, pair) -> pair.ifPresent(p -> pairs.add(new StrengthOrder.Strength(rubber, sum(p)))));
        StrengthOrder.breaks(
                        conditions.orderOfStrength(), conditions.tieRubbers().kinds(), pairs)
                .stream()
                .map(broken -> order(broken, conditions).at(field(broken.rubber())))
                .forEach(faults::add);
    }

    private int sum(Pair pair) {
        return squad.rank(pair.first()) + squad.rank(pair.second());
    }

    /** A pair below a weaker one. */
    static Refusal order(StrengthOrder.Break broken, Conditions conditions) {
        Why why =
                switch (conditions.orderOfStrength()) {
                    case NONE, RANK_SUM -> Why.RANK_SUM;
                    case STRONGEST_FIRST -> Why.STRONGEST_FIRST;
                };
        return why.refusal()
                .with("rubber", broken.rubber())
                .with("sum", broken.sum())
                .with("above", broken.above())
                .with("sumAbove", broken.sumAbove());
    }

    /** Gaps stand at the bottom of each kind, and only where the squad cannot fill them. */
    private void gaps(boolean presence, List<Refusal> faults) {
        List<RubberNo> named = sheet.pairs().keySet().stream()
                .filter(rubber -> sheet.pair(rubber).isPresent())
                .toList();
        SortedSet<Integer> fillable = squad.fillable();
        for (RubberNo rubber : sheet.pairs().keySet()) {
            if (sheet.pair(rubber).isPresent()) {
                continue;
            }
            if (named.stream()
                    .anyMatch(below -> below.compareTo(rubber) > 0 && squad.kind(below) == squad.kind(rubber))) {
                faults.add(Why.GAP.refusal().with("rubber", rubber).at(field(rubber)));
            } else if (presence && fillable.contains(rubber.number())) {
                faults.add(Why.NOT_FULL
                        .refusal()
                        .with("rubber", rubber)
                        .with("possible", fillable.size())
                        .at(field(rubber)));
            }
        }
    }

    private void decider(boolean presence, List<Refusal> faults) {
        Optional<Pair> pair = sheet.pair(RubberNo.DECIDER);
        String field = field(RubberNo.DECIDER);
        if (event.conditions().decider() == DeciderKind.ONE_FROM_EACH && !Deciders.pairsAreKnown(event, exchange)) {
            faults.add(Why.DECIDER_NEEDS_PAIRS
                    .refusal()
                    .with("tie", exchange.tie())
                    .at(field));
        } else if (pair.isEmpty() && presence && Deciders.canFill(event, exchange, squad)) {
            faults.add(Why.DECIDER_EMPTY.refusal().at(field));
        } else {
            pair.map(p -> Deciders.whyNot(event, exchange, squad, p)).orElse(List.of()).stream()
                    .map(why -> why.at(field))
                    .forEach(faults::add);
        }
    }

    private static List<PlayerId> players(Optional<Pair> pair) {
        return pair.map(p -> p.players()).orElse(List.of());
    }
}
