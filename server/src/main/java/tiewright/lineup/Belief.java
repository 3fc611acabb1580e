package tiewright.lineup;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.sheet.StrengthOrder;

/**
 * What the captain expects of the other club's sheet: one or more sheets with weights that add up to 1.
 *
 * @param anyOrder their full sheet in all its orders, each as likely as any other: then the order of our own pairs is worth
 *     nothing
 */
public record Belief(List<Expected> sheets, boolean anyOrder) {
    /** Up to this many rubbers every order is counted; above, as many drawn by the seed. */
    private static final int MOST_RUBBERS = 6;

    private static final int MOST_ORDERS = 720;

    public Belief {
        sheets = List.copyOf(sheets);
        double sum = sheets.stream().mapToDouble(Expected::weight).sum();
        if (sheets.isEmpty() || Math.abs(sum - 1) > 1e-9 || sheets.stream().anyMatch(sheet -> sheet.weight() < 0)) {
            throw new IllegalArgumentException("weights add up to 1, not " + sum);
        }
    }

    /** A sheet and how likely it is. */
    public record Expected(Sheet sheet, double weight) {}

    public static Belief surely(Sheet sheet) {
        return new Belief(List.of(new Expected(sheet, 1)), false);
    }

    /** Any of these, each as likely as any other: what they named in earlier ties, say. */
    public static Belief anyOf(List<Sheet> sheets) {
        return new Belief(
                sheets.stream()
                        .map(sheet -> new Expected(sheet, 1.0 / sheets.size()))
                        .toList(),
                false);
    }

    /** Their players two by two down the order of strength, the strongest pair in rubber 1. */
    public static Belief straight(TieRules rules, Squad theirs) {
        return rules.each().kinds().areOpen()
                ? surely(sheet(rules, straightPairs(rules, theirs)))
                : surely(Sheet.of(StraightSheet.of(rules, theirs)));
    }

    /** The same pairs in every order that their own order of strength allows. */
    public static Belief unknownOrder(TieRules rules, Squad theirs, long seed) {
        if (!rules.each().kinds().areOpen()) {
            List<Optional<Pair>> straight = StraightSheet.of(rules, theirs);
            return anyOf(new KindOrders(rules, theirs)
                    .of(straight, new Random(seed)).stream().map(Sheet::of).toList());
        }
        List<Pair> pairs = straightPairs(rules, theirs);
        List<Sheet> allowed = new ArrayList<>();
        for (List<Pair> order : orders(pairs, new Random(seed))) {
            if (StrengthOrder.isKept(
                    rules.order(),
                    order.stream().map(pair -> rankSum(theirs, pair)).toList())) {
                allowed.add(sheet(rules, order));
            }
        }
        boolean free = rules.isOrderFree() && pairs.size() == rules.rubbers();
        return new Belief(anyOf(allowed).sheets(), free);
    }

    /** The first with this chance, the other otherwise. */
    public static Belief leaning(Belief first, Belief other, double chance) {
        List<Expected> both = new ArrayList<>();
        first.sheets().forEach(sheet -> both.add(new Expected(sheet.sheet(), chance * sheet.weight())));
        other.sheets().forEach(sheet -> both.add(new Expected(sheet.sheet(), (1 - chance) * sheet.weight())));
        return new Belief(both, false);
    }

    private static List<Pair> straightPairs(TieRules rules, Squad theirs) {
        List<Squad.Member> present = new ArrayList<>(theirs.present());
        present.sort(Comparator.comparingInt(member -> theirs.rank(member.id())));
        List<Pair> pairs = new ArrayList<>();
        for (int rubber = 0; rubber < rules.fillable(present.size()); rubber++) {
            Squad.Member one = present.get(2 * rubber % present.size());
            Squad.Member other = present.get((2 * rubber + 1) % present.size());
            pairs.add(Pair.of(one.id(), other.id()));
        }
        pairs.sort(Comparator.comparingInt(pair -> rankSum(theirs, pair)));
        return pairs;
    }

    private static int rankSum(Squad squad, Pair pair) {
        return squad.rank(pair.first()) + squad.rank(pair.second());
    }

    private static List<List<Pair>> orders(List<Pair> pairs, Random random) {
        List<List<Pair>> orders = new ArrayList<>();
        if (pairs.size() <= MOST_RUBBERS) {
            return permuted(pairs);
        }
        orders.add(pairs);
        for (int i = 1; i < MOST_ORDERS; i++) {
            List<Pair> order = new ArrayList<>(pairs);
            Collections.shuffle(order, random);
            orders.add(order);
        }
        return orders;
    }

    /** Every order of these. */
    public static <T> List<List<T>> permuted(List<T> items) {
        List<List<T>> orders = new ArrayList<>();
        permute(new ArrayList<>(items), 0, orders);
        return orders;
    }

    private static <T> void permute(List<T> items, int from, List<List<T>> orders) {
        if (from == items.size()) {
            orders.add(List.copyOf(items));
        }
        for (int i = from; i < items.size(); i++) {
            Collections.swap(items, from, i);
            permute(items, from + 1, orders);
            Collections.swap(items, from, i);
        }
    }

    private static Sheet sheet(TieRules rules, List<Pair> pairs) {
        List<Optional<Pair>> rubbers = new ArrayList<>();
        for (int rubber = 0; rubber < rules.rubbers(); rubber++) {
            rubbers.add(rubber < pairs.size() ? Optional.of(pairs.get(rubber)) : Optional.empty());
        }
        return Sheet.of(rubbers);
    }

    public Optional<Pair> pair(int line, int rubber) {
        return sheets.get(line).sheet().pair(RubberNo.of(rubber));
    }
}
