package tiewright.lineup;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tiewright.conditions.RubberKind;
import tiewright.conditions.TieRubbers;
import tiewright.event.Pair;
import tiewright.sheet.StrengthOrder;

/** The orders of a sheet in which pairs change places only among rubbers of one kind. */
final class KindOrders {
    private static final int MOST = 720;

    private final TieRules rules;
    private final Squad squad;

    KindOrders(TieRules rules, Squad squad) {
        this.rules = rules;
        this.squad = squad;
    }

    /** All of them that the order of strength allows; where there are very many, as many drawn by chance. */
    List<List<Optional<Pair>>> of(List<Optional<Pair>> sheet, Random random) {
        List<List<Integer>> places =
                Stream.of(RubberKind.values()).map(kind -> filled(sheet, kind)).toList();
        long all = places.stream()
                .mapToLong(of ->
                        IntStream.rangeClosed(1, of.size()).mapToLong(i -> i).reduce(1, (a, b) -> a * b))
                .reduce(1, (a, b) -> a > MOST ? a : a * b);
        List<List<Optional<Pair>>> orders = all <= MOST ? each(sheet, places) : drawn(sheet, places, random);
        return orders.stream().filter(this::isKept).toList();
    }

    private List<Integer> filled(List<Optional<Pair>> sheet, RubberKind kind) {
        return IntStream.range(0, sheet.size())
                .filter(rubber -> rules.each().kinds().of(rubber + 1) == kind
                        && sheet.get(rubber).isPresent())
                .boxed()
                .toList();
    }

    private static List<List<Optional<Pair>>> each(List<Optional<Pair>> sheet, List<List<Integer>> places) {
        List<List<Optional<Pair>>> orders = List.of(sheet);
        for (List<Integer> of : places) {
            List<List<Optional<Pair>>> more = new ArrayList<>();
            for (List<Optional<Pair>> before : orders) {
                Belief.permuted(of).forEach(turned -> more.add(turned(before, of, turned)));
            }
            orders = more;
        }
        return orders;
    }

    private static List<List<Optional<Pair>>> drawn(
            List<Optional<Pair>> sheet, List<List<Integer>> places, Random random) {
        List<List<Optional<Pair>>> orders = new ArrayList<>(List.of(sheet));
        for (int i = 1; i < MOST; i++) {
            List<Optional<Pair>> order = sheet;
            for (List<Integer> of : places) {
                List<Integer> turned = new ArrayList<>(of);
                Collections.shuffle(turned, random);
                order = turned(order, of, turned);
            }
            orders.add(order);
        }
        return orders;
    }

    private static List<Optional<Pair>> turned(List<Optional<Pair>> sheet, List<Integer> from, List<Integer> to) {
        List<Optional<Pair>> order = new ArrayList<>(sheet);
        for (int i = 0; i < from.size(); i++) {
            order.set(to.get(i), sheet.get(from.get(i)));
        }
        return order;
    }

    private boolean isKept(List<Optional<Pair>> sheet) {
        TieRubbers each = rules.each();
        return Stream.of(RubberKind.values())
                .allMatch(kind -> StrengthOrder.isKept(
                        rules.order(),
                        IntStream.range(0, sheet.size())
                                .filter(rubber -> each.kinds().of(rubber + 1) == kind)
                                .mapToObj(sheet::get)
                                .flatMap(Optional::stream)
                                .map(pair -> squad.rank(pair.first()) + squad.rank(pair.second()))
                                .toList()));
    }
}
