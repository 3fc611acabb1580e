package tiewright.http.answers;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.correction.Impact;
import tiewright.correction.Penalties;
import tiewright.correction.RulingNeeded;
import tiewright.desk.Correction;
import tiewright.desk.FinalPlacing;
import tiewright.desk.Objections;
import tiewright.desk.WithdrawalPreview;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.CorrectionChoice;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Penalty;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.Saying;
import tiewright.event.TieScore;
import tiewright.event.VisibleEvent;
import tiewright.event.VisibleLog;
import tiewright.ledger.Ledger;
import tiewright.wording.FactWords;
import tiewright.wording.Words;

/** What officials ask when the day goes wrong: what would this change, what needs a ruling? Asker changes nothing. */
public final class DisputeAnswers {
    private final Event event;
    private final VisibleEvent visible;
    private final Ledger ledger;

    /** @throws IllegalStateException for anybody who is no official */
    public DisputeAnswers(Asker asker) {
        this.visible = asker.event();
        if (!visible.viewer().role().isOfficial()) {
            throw new IllegalStateException("only officials ask this");
        }
        this.event = asker.whole();
        this.ledger = asker.ledger();
    }

    /** Every reason why a card cannot be put right so; empty when it can. */
    public List<Refusal> faults(Correction correction) {
        return correction.faults(event);
    }

    /** What this choice would change. */
    public Impact impact(Correction correction, CorrectionChoice choice) {
        return correction.impact(event, given(), choice);
    }

    /** What each treatment of a withdrawal would do. */
    public WithdrawalPreview withdrawal(ClubId club) {
        return WithdrawalPreview.of(event, given(), club);
    }

    /** The places of the final order with their reasons, champion first; empty while something is unfinished. */
    public List<Saying> finalPlaces() {
        return FinalPlacing.said(event);
    }

    /** Until when captains can object to what was played in the knockout. */
    public Optional<Instant> objectionsUntilOfKnockout() {
        return Objections.untilOfKnockout(event);
    }

    /** What was found wrong with opened sheets and waits for a ruling. */
    public List<RulingNeeded.Case> cases() {
        return RulingNeeded.of(event, ledger.directory());
    }

    /** Players of other clubs who have the name of somebody in it. */
    public Map<PlayerId, List<PlayerId>> namesakes(RulingNeeded.Case one) {
        return RulingNeeded.namesakes(event, ledger.directory(), one);
    }

    /** The tie of a case after this consequence. */
    public TieScore after(RulingNeeded.Case one, Penalty penalty) {
        return Penalties.tie(event, given(), one, penalty);
    }

    public Optional<Penalty> announced(RulingNeeded.Case one) {
        return Penalties.announced(event, one);
    }

    /** What was entered after a page was made, in this official's words, oldest first. */
    public List<String> since(long seen) {
        Words words = Words.of(visible);
        FactWords facts = new FactWords(words);
        return VisibleLog.of(ledger.facts(0), visible.viewer()).stream()
                .map(VisibleLog.Entry::recorded)
                .filter(recorded -> recorded.seq() > seen)
                .map(recorded -> words.said(recorded.receivedAt()) + " " + facts.sentence(recorded.fact()))
                .toList();
    }

    private Decision.Given given() {
        return new Decision.Given(visible.now(), Actor.of(visible.viewer().role(), ""), ledger.directory(), Map.of());
    }
}
