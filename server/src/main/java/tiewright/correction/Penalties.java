package tiewright.correction;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.conditions.Setting;
import tiewright.event.Card;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.How;
import tiewright.event.Penalty;
import tiewright.event.PlayFact;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieScore;
import tiewright.scoring.Score;
import tiewright.scoring.SideNo;

/** The published consequences of a sheet that was not as it should be, and what each would do to its tie. */
public final class Penalties {
    private Penalties() {}

    /** What the conditions announce for this case; empty where they leave it to the ruling. */
    public static Optional<Penalty> announced(Event event, RulingNeeded.Case one) {
        if (one.kind() != RulingNeeded.Kind.WRONG_ORDER) {
            return Optional.empty();
        }
        return switch (event.conditions().value(Setting.WRONG_ORDER_LATE)) {
            case "fix-or-stands" -> Optional.of(Penalty.NONE);
            case "forfeit-rubbers" -> Optional.of(Penalty.RUBBERS);
            case "lose-tie" -> Optional.of(Penalty.TIE);
            default -> Optional.empty();
        };
    }

    /**
     * The cards that make the club lose the rubbers concerned, or all of them; none where the sheet stands.
     *
     * @param ruling the number of the ruling that says so
     */
    public static List<Fact> facts(Event event, RulingNeeded.Case one, Penalty penalty, int ruling) {
        Tie tie = event.tie(one.tie()).orElseThrow();
        Side side = tie.sideOf(one.club()).orElseThrow();
        List<RubberNo> rubbers =
                switch (penalty) {
                    case NONE -> List.of();
                    case RUBBERS -> List.copyOf(one.rubbers());
                    case TIE -> RubberNo.upTo(event.conditions().rubbers());
                };
        List<Fact> facts = new ArrayList<>();
        rubbers.forEach(rubber -> facts.add(lost(event, tie, rubber, side, ruling)));
        return facts;
    }

    private static Fact lost(Event event, Tie tie, RubberNo rubber, Side side, int ruling) {
        How how = side == Side.HOME ? How.WALKOVER_HOME : How.WALKOVER_AWAY;
        List<Score> nil = event.conditions().walkover(false, side == Side.HOME ? SideNo.ONE : SideNo.TWO);
        return tie.card(rubber).standing() == Card.Standing.EMPTY
                ? new PlayFact.CardEntered(tie.id(), rubber, nil, how)
                : new PlayFact.CardCorrected(tie.id(), rubber, nil, how, List.of(), "", OptionalInt.of(ruling));
    }

    /** The tie after this consequence. */
    public static TieScore tie(Event event, Decision.Given given, RulingNeeded.Case one, Penalty penalty) {
        Event after = event.after(facts(event, one, penalty, 0), given);
        Tie tie = after.tie(one.tie()).orElseThrow();
        return after.progress(tie).score(tie).orElseThrow();
    }
}
