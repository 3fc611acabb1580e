package tiewright.http.visit;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Held;
import tiewright.event.PrivateDecision;
import tiewright.event.Refusal;
import tiewright.http.pieces.Refusal.Problem;
import tiewright.ledger.Answer;
import tiewright.ledger.PrivateAnswer;
import tiewright.wording.NoteWords;
import tiewright.wording.Words;

/** A form that was handed in: what it asks for is decided under its own key, or its page comes again with every reason. */
final class HandedIn {
    private static final int NOT_DONE = 422;
    private static final int STALE = 409;

    private final Visit visit;
    private final Form form;
    private final Function<Tried, Screen> again;
    private final Stamps stamps;

    HandedIn(Visit visit, Form form, Function<Tried, Screen> again) {
        this.visit = visit;
        this.form = form;
        this.again = again;
        this.stamps = new Stamps(visit, form);
    }

    /** @param decision made only from a form without faults */
    void decide(Supplier<Decision> decision, Consumer<Answer.Done> then) {
        if (stamps.areOfAnotherEvent()) {
            refuseUnseen();
        } else if (form.isClean()) {
            answered(visit.hall().ledger().decide(stamps.request(), decision.get()), then);
        } else {
            refuse();
        }
    }

    void erase(Function<Held, Decision> decision, String next) {
        answered(visit.hall().ledger().erase(stamps.request(), decision), done -> visit.go(next));
    }

    private void answered(Answer answer, Consumer<Answer.Done> then) {
        if (answer instanceof Answer.Done done) {
            then.accept(done);
        } else if (answer instanceof Answer.Refused refused) {
            again("frame.not-done", refused.reasons());
        } else {
            stale("frame.changed", List.of(Refusal.of("form.stale")));
        }
    }

    void note(ClubId club, Supplier<PrivateDecision> decision, String next) {
        noted(() -> visit.hall().ledger().decide(stamps.request(club), decision.get()), next);
    }

    void forget(ClubId club, Supplier<PrivateDecision> decision, String next) {
        noted(() -> visit.hall().ledger().forget(stamps.request(club), decision.get()), next);
    }

    private void noted(Supplier<PrivateAnswer> asking, String next) {
        if (stamps.areOfAnotherEvent()) {
            refuseUnseen();
            return;
        }
        if (!form.isClean()) {
            refuse();
            return;
        }
        PrivateAnswer answer = asking.get();
        if (answer instanceof PrivateAnswer.Refused refused) {
            again("frame.not-done", refused.reasons());
        } else if (answer instanceof PrivateAnswer.Stale stale) {
            stale("frame.club-noted", bothVersions(stale));
        } else {
            visit.go(next);
        }
    }

    private List<Refusal> bothVersions(PrivateAnswer.Stale stale) {
        NoteWords said = new NoteWords(visit.words());
        return stale.clashes().stream()
                .map(clash -> Refusal.of("notes.changed")
                        .with("who", clash.by())
                        .with("at", clash.at())
                        .with("what", said.about(clash.subject()))
                        .with("stands", said.said(clash.stands()))
                        .with("asked", said.said(clash.asked())))
                .toList();
    }

    private void refuseUnseen() {
        again("frame.not-done", List.of(Refusal.of("form.other-event")));
    }

    /** With what is wrong in the form itself. */
    void refuse() {
        again("frame.not-done-yet", form.faults());
    }

    private void again(String title, List<Refusal> reasons) {
        show(visit, NOT_DONE, title, reasons);
    }

    private void stale(String title, List<Refusal> reasons) {
        show(visit.anew(), STALE, title, reasons);
    }

    private void show(Visit now, int status, String title, List<Refusal> reasons) {
        Words words = now.words();
        List<Problem> problems = reasons.stream()
                .map(reason -> new Problem(words.sentence(reason), reason.field()))
                .distinct()
                .toList();
        now.show(status, again.apply(Tried.refused(form, words.say(title), problems)));
    }
}
