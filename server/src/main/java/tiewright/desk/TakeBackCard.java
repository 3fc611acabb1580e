package tiewright.desk;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.PlayFact;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.TieId;

/**
 * An official says that the rubber was not played: its entries stay in the log and count no longer.
 *
 * @param ruling the number of the ruling that it rests on, if any
 */
public record TakeBackCard(TieId tie, RubberNo rubber, String reason, OptionalInt ruling) implements Decision {
    /** Resting on no ruling. */
    public TakeBackCard(TieId tie, RubberNo rubber, String reason) {
        this(tie, rubber, reason, OptionalInt.empty());
    }

    @Override
    public Outcome decide(Event event, Given given) {
        Optional<Tie> found = event.tie(tie);
        if (found.isEmpty()) {
            return Asked.noTie(tie);
        }
        Changing changing = new Changing(event, given, reason, ruling);
        Asked asked = changing.asked(found.get(), rubber);
        return asked.isFine()
                ? changing.outcome(asked, List.of(new PlayFact.CardTakenBack(tie, rubber, reason.strip(), ruling)))
                : asked.refused();
    }
}
