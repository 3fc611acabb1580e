package tiewright.desk;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.event.Card;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.How;
import tiewright.event.PlayFact;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;
import tiewright.event.RubberScore;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.scoring.Score;

/**
 * An official settles a held rubber or corrects one from the card; see {@link DecideCorrection} where others built on it. Everything entered before stays in the log. A rubber
 * held by two sources is settled by a third. Where the table is signed, or another club has begun in the next tie, it
 * must rest on a ruling that was given; the signed order and the tie that has begun stay as they are.
 *
 * @param games as in {@link RecordCard}
 * @param ruling the number of the ruling that it rests on, if any
 */
public record CorrectCard(TieId tie, RubberNo rubber, List<Score> games, How how, String reason, OptionalInt ruling)
        implements Decision {
    public CorrectCard {
        games = List.copyOf(games);
    }

    /** Resting on no ruling. */
    public CorrectCard(TieId tie, RubberNo rubber, List<Score> games, How how, String reason) {
        this(tie, rubber, games, how, reason, OptionalInt.empty());
    }

    @Override
    public Outcome decide(Event event, Given given) {
        Optional<Tie> found = event.tie(tie);
        if (found.isEmpty()) {
            return Asked.noTie(tie);
        }
        Reading reading = Reading.of(event.conditions(), rubber, games, how);
        Changing changing = new Changing(event, given, reason, ruling);
        Asked asked = changing.asked(found.get(), rubber)
                .all(new CardRules(event, found.get(), rubber).place(how))
                .all(reading.faults());
        if (!asked.isFine()) {
            return asked.refused();
        }
        RubberScore score = new RubberScore(rubber, reading.counted(), how);
        asked.unless(
                !stands(found.get().card(rubber), score),
                Refusal.of("desk.stands-so-already").at("games"));
        List<Fact> facts = List.of(new PlayFact.CardCorrected(
                tie, rubber, score.games(), how, reading.asItStood(), reason.strip(), ruling));
        return changing.outcome(asked, facts);
    }

    private boolean stands(Card card, RubberScore score) {
        return card.score(rubber).equals(Optional.of(score));
    }
}
