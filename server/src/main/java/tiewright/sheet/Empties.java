package tiewright.sheet;

import java.util.List;
import java.util.Optional;
import tiewright.conditions.Conditions;
import tiewright.event.How;
import tiewright.event.PlayFact;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.scoring.Score;
import tiewright.scoring.SideNo;

/** What a rubber without a pair on one side or both stands at before a ball is played. */
final class Empties {
    private Empties() {}

    /**
     * One side empty: a walkover for the other, which counts what the conditions say. Both empty: void, under either
     * setting for two short clubs, so that fewer wins take the tie.
     */
    static Optional<PlayFact.CardEntered> card(
            TieId tie, RubberNo rubber, Tie.OpenedRubber pairs, Conditions conditions) {
        if (pairs.home().isPresent() && pairs.away().isPresent()) {
            return Optional.empty();
        }
        if (pairs.home().isEmpty() && pairs.away().isEmpty()) {
            return Optional.of(new PlayFact.CardEntered(tie, rubber, List.of(), How.VOID));
        }
        Side missing = pairs.home().isEmpty() ? Side.HOME : Side.AWAY;
        return Optional.of(new PlayFact.CardEntered(
                tie,
                rubber,
                score(rubber, missing, conditions),
                missing == Side.HOME ? How.WALKOVER_HOME : How.WALKOVER_AWAY));
    }

    private static List<Score> score(RubberNo rubber, Side missing, Conditions conditions) {
        SideNo side = missing == Side.HOME ? SideNo.ONE : SideNo.TWO;
        return conditions.walkover(rubber.isDecider(), side);
    }
}
