package tiewright.desk;

import java.util.List;
import java.util.Optional;
import tiewright.event.Card;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.How;
import tiewright.event.PlayFact;
import tiewright.event.RubberNo;
import tiewright.event.RubberScore;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.scoring.Score;

/**
 * Somebody enters what a card says. A second, equal entry confirms; a different one is kept too and holds the rubber until
 * a person settles it. A card is never stale.
 *
 * @param games points of each game, home first. Retirement: as it stood, the table then holds what the conditions make
 *     of it. Walkover: empty, the score comes from the conditions. Void: empty
 */
public record RecordCard(TieId tie, RubberNo rubber, List<Score> games, How how) implements Decision {
    public RecordCard {
        games = List.copyOf(games);
    }

    @Override
    public Outcome decide(Event event, Given given) {
        Optional<Tie> found = event.tie(tie);
        if (found.isEmpty()) {
            return Asked.noTie(tie);
        }
        CardRules rules = new CardRules(event, found.get(), rubber);
        Reading reading = Reading.of(event.conditions(), rubber, games, how);
        Asked asked = new Asked()
                .all(rules.who(given.by(), how))
                .all(rules.place(how))
                .all(reading.faults());
        if (!asked.isFine()) {
            return asked.refused();
        }
        if (!reads(found.get().card(rubber), reading.counted())) {
            asked.all(Signed.because(event, found.get()));
        }
        PlayFact fact = new PlayFact.CardEntered(tie, rubber, reading.counted(), how, reading.asItStood());
        return asked.isFine() ? After.accepted(event, given, List.of(fact)) : asked.refused();
    }

    private boolean reads(Card card, List<Score> counted) {
        return card.score(rubber).equals(Optional.of(new RubberScore(rubber, counted, how)));
    }
}
