package tiewright.lineup;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;

/**
 * What the captain expects of the other club's sheet: one or more sheets with weights that add up to 1.
 *
 * @param anyOrder their full sheet in all its orders, each as likely as any other: then the order of our own pairs is worth
 *     nothing
 */
public record Belief(List<Expected> sheets, boolean anyOrder) {
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

    /** How many pairs the first sheet names. */
    int pairs() {
        return (int) sheets.get(0).sheet().pairs().values().stream()
                .filter(Optional::isPresent)
                .count();
    }

    /** Any of these, each as likely as any other: what they named in earlier ties, say. */
    public static Belief anyOf(List<Sheet> sheets) {
        return new Belief(
                sheets.stream()
                        .map(sheet -> new Expected(sheet, 1.0 / sheets.size()))
                        .toList(),
                false);
    }

    /** Their players two by two down the order of strength, as far as each may stand there, the strongest pair in rubber 1. */
    public static Belief straight(TieRules rules, Squad theirs) {
        return surely(Sheet.of(StraightSheet.of(rules, theirs)));
    }

    /** The same pairs in every order that their own order of strength allows. */
    public static Belief unknownOrder(TieRules rules, Squad theirs, long seed) {
        List<Optional<Pair>> straight = StraightSheet.of(rules, theirs);
        List<Sheet> allowed = new KindOrders(rules, theirs)
                .of(straight, new Random(seed)).stream().map(Sheet::of).toList();
        return new Belief(
                anyOf(allowed).sheets(),
                rules.isOrderFree() && straight.stream().allMatch(Optional::isPresent));
    }

    /** The first with this chance, the other otherwise. */
    public static Belief leaning(Belief first, Belief other, double chance) {
        List<Expected> both = new ArrayList<>();
        first.sheets().forEach(sheet -> both.add(new Expected(sheet.sheet(), chance * sheet.weight())));
        other.sheets().forEach(sheet -> both.add(new Expected(sheet.sheet(), (1 - chance) * sheet.weight())));
        return new Belief(both, false);
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

    public Optional<Pair> pair(int line, int rubber) {
        return sheets.get(line).sheet().pair(RubberNo.of(rubber));
    }
}
