package tiewright.lineup;

import tiewright.conditions.Conditions;
import tiewright.conditions.DeciderKind;
import tiewright.conditions.OrderOfStrength;
import tiewright.conditions.TiePoints;
import tiewright.scoring.Format;
import tiewright.sheet.StrengthOrder;

/**
 * What the conditions of play say about the sheet and the odds of one tie.
 *
 * @param mostPerPlayer rubbers that one player may play in the tie
 * @param drawWorth what a drawn tie is worth where there is no decider, as a share of a win: 0 to 1
 */
public record TieRules(
        int rubbers,
        int mostPerPlayer,
        OrderOfStrength order,
        Format scoring,
        int bestOf,
        DeciderKind decider,
        Format deciderScoring,
        double drawWorth) {

    public TieRules {
        if (rubbers < 1 || mostPerPlayer < 1 || !(drawWorth >= 0 && drawWorth <= 1)) {
            throw new IllegalArgumentException(
                    "no tie has such rules: " + rubbers + ", " + mostPerPlayer + ", " + drawWorth);
        }
    }

    public static TieRules of(Conditions conditions) {
        TiePoints points = conditions.tiePoints();
        return new TieRules(
                conditions.rubbers(),
                conditions.maxRubbersPerPlayer(),
                conditions.orderOfStrength(),
                conditions.scoring(),
                conditions.bestOf(),
                conditions.decider(),
                conditions.deciderScoring(),
                (double) (points.draw() - points.loss()) / (points.win() - points.loss()));
    }

    /** How many rubbers so many players can fill, from rubber 1 down; the others stay empty at the bottom. */
    public int fillable(int players) {
        return StrengthOrder.fullest(players, mostPerPlayer, rubbers);
    }
}
