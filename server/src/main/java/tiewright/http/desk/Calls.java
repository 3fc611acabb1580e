package tiewright.http.desk;

import java.util.List;
import java.util.function.Function;
import tiewright.desk.CallToCourt;
import tiewright.desk.NextCalls;
import tiewright.event.Court;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.SelectField;
import tiewright.http.views.ActionForm;
import tiewright.http.visit.Form;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TextOrder;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.wording.Words;

/** Calling a rubber to a court: the form that asks for the court, and what becomes of it. */
final class Calls {
    private Calls() {}

    /** The field that names the court; its name says for which rubber, so that two forms of a page never mix. */
    static String field(Tie tie, RubberNo rubber) {
        return "court-call-" + tie.id() + "-" + rubber;
    }

    /** A form that calls one rubber to a court: the one where it belongs, or another. */
    static ActionForm form(VisibleEvent event, Tie tie, NextCalls.Next next) {
        List<Option> courts = event.courts().stream()
                .filter(Court::usable)
                .map(Court::name)
                .sorted(TextOrder.NUMBERS_BY_VALUE)
                .map(court -> Option.of(
                        court,
                        Words.say(event, "page-desk.court", "court", court),
                        next.court().filter(court::equals).isPresent()))
                .toList();
        return ActionForm.of(
                        "call-" + tie.id() + "-" + next.rubber(),
                        "/desk/tie/" + tie.id() + "/call",
                        "",
                        Button.main(label(event)))
                .sending("rubber", next.rubber().toString())
                .asking(SelectField.of(
                        field(tie, next.rubber()),
                        Words.say(event, "page-desk.to-2", "rubber", TieViews.rubber(Words.of(event), next.rubber())),
                        Words.say(event, "page-desk.choose-a-court"),
                        courts));
    }

    /** Who calls while all play is stopped reads it first. */
    private static String label(VisibleEvent event) {
        return event.order()
                .stop(event.about(), event.now())
                .map(stop -> Words.say(
                        event, "page-desk.call-to-court-while-stopped", "until", HallClock.said(stop.until())))
                .orElseGet(() -> Words.say(event, "page-desk.call-to-court"));
    }

    static void post(Visit visit, Function<Tried, Screen> again) {
        Tie tie = visit.tie();
        Form form = visit.form();
        RubberNo rubber = form.maybe("rubber")
                .flatMap(RubberNo::parse)
                .orElseThrow(() -> new NotFound(visit.say("page-desk.this-form-names-no-rubber")));
        String court = form.mustText(field(tie, rubber));
        visit.attempt(form, () -> new CallToCourt(tie.id(), rubber, court), DeskPage.HERE, again);
    }
}
