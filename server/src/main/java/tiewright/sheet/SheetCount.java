package tiewright.sheet;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import tiewright.conditions.Conditions;
import tiewright.conditions.OrderOfStrength;
import tiewright.conditions.Plays;
import tiewright.conditions.RubberKind;
import tiewright.conditions.TieRubbers;

/**
 * How many sheets a squad can hand in: as full as the squad allows, gaps only at the bottom.
 *
 * @param legal those that also obey the order of strength
 * @param all the same without the order of strength
 */
public record SheetCount(BigInteger legal, BigInteger all) {

    /**
     * @param ranks place in the order of strength of each player present, 1 the strongest; empty where none is given
     * @return empty where the squad is too large to be counted under an order of strength, see {@link SheetCounter}
     */
    public static Optional<SheetCount> of(List<OptionalInt> ranks, Conditions conditions) {
        return of(ranks, ranks.stream().map(any -> Optional.<Plays>empty()).toList(), conditions);
    }

    /** @param plays what the same players play in beside open rubbers */
    public static Optional<SheetCount> of(List<OptionalInt> ranks, List<Optional<Plays>> plays, Conditions conditions) {
        OrderOfStrength order = conditions.orderOfStrength();
        if (order != OrderOfStrength.NONE && ranks.stream().anyMatch(OptionalInt::isEmpty)) {
            throw new IllegalArgumentException("the order of strength needs a rank for every player");
        }
        int most = conditions.maxRubbersPerPlayer();
        if (!conditions.tieRubbers().kinds().areOpen()) {
            return ofKinds(ranks, plays, conditions);
        }
        int pairs = StrengthOrder.fullest(ranks.size(), most, conditions.rubbers());
        List<Integer> alike = ranks.stream().map(any -> 0).toList();
        List<Integer> ranked = ranks.stream().map(rank -> rank.orElse(0)).toList();
        BigInteger all =
                new SheetCounter(alike, most, pairs).inAnyOrder().orElseThrow(); // so few states that none is missing
        SheetCounter inOrder = new SheetCounter(ranked, most, pairs);
        Optional<BigInteger> legal =
                switch (order) {
                    case NONE -> Optional.of(all);
                    case RANK_SUM -> inOrder.bySum();
                    case STRONGEST_FIRST -> inOrder.strongestFirst();
                };
        return legal.map(sheets -> new SheetCount(sheets, all));
    }

    private static Optional<SheetCount> ofKinds(
            List<OptionalInt> ranks, List<Optional<Plays>> plays, Conditions conditions) {
        TieRubbers rubbers = conditions.tieRubbers();
        int most = conditions.maxRubbersPerPlayer();
        List<RubberKind> filled = Fillable.of(plays, most, rubbers).stream()
                .map(rubbers.kinds()::of)
                .toList();
        List<KindCounter.Standing> players = IntStream.range(0, ranks.size())
                .mapToObj(player -> new KindCounter.Standing(
                        plays.get(player), ranks.get(player).orElse(0), 0))
                .toList();
        Optional<BigInteger> all = new KindCounter(players, most, OrderOfStrength.NONE).count(filled);
        return new KindCounter(players, most, conditions.orderOfStrength())
                .count(filled)
                .flatMap(legal -> all.map(any -> new SheetCount(legal, any)));
    }
}
