package tiewright.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.correction.Impact;
import tiewright.correction.Replay;
import tiewright.correction.Stay;
import tiewright.event.Card;
import tiewright.event.CorrectionChoice;
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
 * What the card shows against what was entered: whether it can be, and what it would change. Asking changes nothing.
 *
 * @param games as in {@link RecordCard}
 */
public record Correction(TieId tie, RubberNo rubber, List<Score> games, How how) {
    public Correction {
        games = List.copyOf(games);
    }

    /** Every reason why the card cannot be put right so; empty when it can. */
    public List<Refusal> faults(Event event) {
        Optional<Tie> found = event.tie(tie);
        if (found.isEmpty()) {
            return List.of(Refusal.of("desk.no-such-tie").with("tie", tie).at("tie"));
        }
        if (found.get().card(rubber).standing() == Card.Standing.EMPTY) {
            return List.of(Refusal.of("desk.never-played")
                    .with("tie", tie)
                    .with("rubber", rubber)
                    .at("rubber"));
        }
        List<Refusal> faults = new ArrayList<>(reading(event).faults());
        if (found.get().opened().containsKey(rubber)) {
            faults.addAll(new CardRules(event, found.get(), rubber).place(how));
        }
        return faults;
    }

    /** This is what counts already. Only for a correction without faults. */
    public boolean standsAlready(Event event) {
        return event.tie(tie).flatMap(found -> found.card(rubber).score(rubber)).equals(Optional.of(score(event)));
    }

    /** What would be different after this choice; by {@code given} only the moment is used. Only without faults. */
    public Impact impact(Event event, Decision.Given given, CorrectionChoice choice) {
        if (standsAlready(event)) {
            return new Impact(List.of());
        }
        Decision.Accepted accepted = followed(event, given, choice, new Ruled(Numbers.ruling(event), "", ""));
        return Impact.between(event, event.after(accepted.facts(), given));
    }

    /** The ruling that wants it. */
    record Ruled(int number, String reason, String by) {}

    /** The facts of the choice and everything that follows from them, but for ruling and notice. */
    Decision.Accepted followed(Event event, Decision.Given given, CorrectionChoice choice, Ruled ruled) {
        List<Fact> card = List.of(new PlayFact.CardCorrected(
                tie,
                rubber,
                score(event).games(),
                how,
                reading(event).asItStood(),
                ruled.reason(),
                OptionalInt.of(ruled.number())));
        return switch (choice) {
            case LET_STAND -> new Decision.Accepted(List.of(), List.of());
            case REPLAY -> after(event, given, Replay.of(event, given, card, ruled.number(), ruled.by()));
            case RECORD_ONLY -> after(event, given, Stay.of(event, given, card, ruled.number()));
        };
    }

    private static Decision.Accepted after(Event event, Decision.Given given, Decision.Accepted accepted) {
        return After.accepted(event, given, accepted.facts(), accepted.notes());
    }

    RubberScore score(Event event) {
        return new RubberScore(rubber, reading(event).counted(), how);
    }

    private Reading reading(Event event) {
        return Reading.of(event.conditions(), rubber, games, how);
    }
}
