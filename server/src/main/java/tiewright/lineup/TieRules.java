package tiewright.lineup;

import tiewright.conditions.Conditions;
import tiewright.conditions.DeciderKind;
import tiewright.conditions.OrderOfStrength;
import tiewright.conditions.RubberKinds;
import tiewright.conditions.TiePoints;
import tiewright.conditions.TieRubbers;
import tiewright.scoring.Format;
import tiewright.sheet.StrengthOrder;

/**
 * What the conditions of play say about the sheet and the odds of one tie.
 *
 * @param each what the rubbers are
 * @param mostPerPlayer rubbers that one player may play in the tie
 * @param drawWorth what a drawn tie is worth where there is no decider, as a share of a win: 0 to 1
 */
public record TieRules(
        TieRubbers each,
        int mostPerPlayer,
        OrderOfStrength order,
        Format scoring,
        int bestOf,
        DeciderKind decider,
        Format deciderScoring,
        double drawWorth) {

    /** A draw where the end of a tie brings no points: half a win. */
    private static final double HALF = 0.5;

    public TieRules {
        if (mostPerPlayer < 1 || !(drawWorth >= 0 && drawWorth <= 1)) {
            throw new IllegalArgumentException("no tie has such rules: " + mostPerPlayer + ", " + drawWorth);
        }
    }

    public static TieRules of(Conditions conditions) {
        TiePoints points = conditions.tiePoints();
        return new TieRules(
                conditions.tieRubbers(),
                conditions.maxRubbersPerPlayer(),
                conditions.orderOfStrength(),
                conditions.scoring(),
                conditions.bestOf(),
                conditions.decider(),
                conditions.deciderScoring(),
                points.isWithoutEnd()
                        ? HALF
                        : (double) (points.draw() - points.loss()) / (points.win() - points.loss()));
    }

    /** The same as if anybody might stand anywhere. */
    TieRules withOpenRubbers() {
        return new TieRules(
                new TieRubbers(each.count(), each.weights(), RubberKinds.OPEN),
                mostPerPlayer,
                order,
                scoring,
                bestOf,
                decider,
                deciderScoring,
                drawWorth);
    }

    public int rubbers() {
        return each.count();
    }

    /** The same pairs in another order are as legal and worth as much, as long as nothing is known of the other club's order. */
    public boolean isOrderFree() {
        return order == OrderOfStrength.NONE && each.areAlike();
    }

    /** How many rubbers so many players can fill, from rubber 1 down; the others stay empty at the bottom. */
    public int fillable(int players) {
        return StrengthOrder.fullest(players, mostPerPlayer, rubbers());
    }
}
