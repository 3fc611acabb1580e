package tiewright.desk;

import java.util.ArrayList;
import java.util.List;
import tiewright.conditions.Conditions;
import tiewright.conditions.RetirementScore;
import tiewright.event.How;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.scoring.Awarded;
import tiewright.scoring.Format;
import tiewright.scoring.Legality;
import tiewright.scoring.Score;
import tiewright.scoring.ScoreFault;
import tiewright.scoring.SideNo;

/**
 * What somebody read off a card, under the format of its rubber: can it be, and what does the table hold of it?
 *
 * @param games as written on the card, home first; for a retirement as it stood, or as the table holds it
 */
record Reading(Conditions conditions, boolean decider, List<Score> games, How how) {
    /** More games than any rubber has: nobody needs a fault for each. */
    private static final int MOST_GAMES = 9;

    Reading {
        games = List.copyOf(games);
    }

    static Reading of(Conditions conditions, RubberNo rubber, List<Score> games, How how) {
        return new Reading(conditions, rubber.isDecider(), games, how);
    }

    private Format format() {
        return decider ? conditions.deciderScoring() : conditions.scoring();
    }

    private int bestOf() {
        return decider ? 1 : conditions.bestOf();
    }

    /** Every reason why a card cannot read so; empty = it can. */
    List<Refusal> faults() {
        if (games.size() > MOST_GAMES) {
            return List.of(
                    Refusal.of("desk.too-many-games").with("bestOf", bestOf()).at("games"));
        }
        return switch (how) {
            case PLAYED -> said(Legality.rubber(format(), bestOf(), games));
            case RETIRED_HOME, RETIRED_AWAY -> retired();
            case WALKOVER_HOME, WALKOVER_AWAY ->
                games.isEmpty() || games.equals(walkover())
                        ? List.of()
                        : List.of(Refusal.of("desk.walkover-score")
                                .with("score", walkover())
                                .at("games"));
            case VOID ->
                games.isEmpty()
                        ? List.of()
                        : List.of(Refusal.of("desk.void-score").at("games"));
        };
    }

    /** The games as the table holds them. Only for a reading without faults. */
    List<Score> counted() {
        return switch (how) {
            case PLAYED -> games;
            case RETIRED_HOME, RETIRED_AWAY -> isAsItStood() ? madeUp() : games;
            case WALKOVER_HOME, WALKOVER_AWAY -> walkover();
            case VOID -> List.of();
        };
    }

    /** What the card says, where the table holds something else: it must not be lost. */
    List<Score> asItStood() {
        return how.isRetirement() && !games.equals(counted()) ? games : List.of();
    }

    private List<Refusal> retired() {
        if (isAsItStood() || (conditions.retirementScore() == RetirementScore.ZERO && games.equals(walkover()))) {
            return List.of();
        }
        List<ScoreFault> faults = Legality.retiredForTheTable(format(), bestOf(), games, missing());
        if (!faults.isEmpty()) {
            return said(faults);
        }
        return switch (conditions.retirementScore()) {
            case KEEP_POINTS -> List.of();
            case ZERO ->
                List.of(Refusal.of("desk.retired-to-nil")
                        .with("score", walkover())
                        .at("games"));
            case AS_IT_STOOD -> List.of(Refusal.of("desk.retired-as-it-stood").at("games"));
        };
    }

    private boolean isAsItStood() {
        return Legality.retiredRubber(format(), bestOf(), games).isEmpty();
    }

    private List<Score> madeUp() {
        return switch (conditions.retirementScore()) {
            case KEEP_POINTS -> Awarded.lifted(format(), bestOf(), games, missing());
            case ZERO -> walkover();
            case AS_IT_STOOD -> games;
        };
    }

    private List<Score> walkover() {
        return conditions.walkover(decider, missing());
    }

    private SideNo missing() {
        return how.missing().orElseThrow() == Side.HOME ? SideNo.ONE : SideNo.TWO;
    }

    private List<Refusal> said(List<ScoreFault> faults) {
        List<Refusal> reasons = new ArrayList<>();
        for (ScoreFault fault : faults) {
            reasons.add(Refusal.of(bestOf() == 1 ? "desk.score" : "desk.score-of-game")
                    .with("fault", fault)
                    .with("game", fault.game())
                    .at("games"));
        }
        return reasons;
    }
}
