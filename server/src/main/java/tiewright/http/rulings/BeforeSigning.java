package tiewright.http.rulings;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.correction.RulingNeeded;
import tiewright.event.Refusal;
import tiewright.event.TieId;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.Answers;
import tiewright.http.answers.DisputeAnswers;
import tiewright.http.pieces.FormField;
import tiewright.http.visit.AtFields;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.Visit;

/**
 * What an official is asked before signing: captains may still object, a ruling is open. Nobody is kept from signing, but nobody
 * signs over it without a word.
 *
 * @param form whose button signs
 * @param open what is open, a sentence each; empty where nothing has to be asked
 */
record BeforeSigning(Visit visit, String form, List<String> open) {

    static BeforeSigning table(Visit visit, String form, String pool) {
        VisibleEvent event = visit.event();
        List<String> open = new ArrayList<>();
        if (visit.ask(Answers::new).table(pool).isProvisional()) {
            return new BeforeSigning(visit, form, open);
        }
        if (!event.signedTables().containsKey(pool)) {
            objections(visit, visit.ask(Answers::new).objectionsUntil(pool)).ifPresent(open::add);
        }
        rulings(visit).stream()
                .filter(one -> event.tie(one.tie()).flatMap(tie -> tie.pool()).equals(Optional.of(pool)))
                .map(one -> said(visit, one))
                .forEach(open::add);
        return new BeforeSigning(visit, form, open);
    }

    static BeforeSigning event(Visit visit, String form) {
        List<String> open = new ArrayList<>();
        if (visit.ask(DisputeAnswers::new).finalPlaces().isEmpty()) {
            return new BeforeSigning(visit, form, open);
        }
        objections(visit, visit.ask(DisputeAnswers::new).objectionsUntilOfKnockout())
                .ifPresent(open::add);
        visit.event()
                .disputes()
                .openProtests()
                .forEach(protest -> open.add(visit.say(
                        "page-rulings.protest-waits",
                        "number",
                        protest.made().number(),
                        "club",
                        visit.event().clubName(protest.made().club()))));
        rulings(visit).stream().map(one -> said(visit, one)).forEach(open::add);
        return new BeforeSigning(visit, form, open);
    }

    private static Optional<String> objections(Visit visit, Optional<Instant> until) {
        return until.filter(end -> end.isAfter(visit.event().now()))
                .map(end -> visit.say(
                        "page-rulings.captains-may-object",
                        "until",
                        HallClock.said(visit.event().clock(end))));
    }

    private static List<RulingNeeded.Case> rulings(Visit visit) {
        return visit.ask(DisputeAnswers::new).cases();
    }

    private static String said(Visit visit, RulingNeeded.Case one) {
        TieId tie = one.tie();
        return visit.say(
                "page-rulings.ruling-is-open", "tie", tie, "club", visit.event().clubName(one.club()));
    }

    private String field() {
        return AtFields.id(form, "all-the-same");
    }

    /** Who signs, and where something is open the tick that it is known. */
    List<FormField> fields(Fields fields, FormField by) {
        return open.isEmpty()
                ? List.of(by)
                : List.of(
                        by,
                        fields.tick(
                                field(), String.join(" ", open), visit.say("page-rulings.sign-all-the-same"), false));
    }

    void check(Form typed) {
        if (!open.isEmpty() && !typed.isTicked(field())) {
            typed.fault(Refusal.of("form.open-before-signing")
                    .with("open", String.join(" ", open))
                    .at(field()));
        }
    }
}
