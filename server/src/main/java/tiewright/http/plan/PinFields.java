package tiewright.http.plan;

import java.util.List;
import java.util.stream.IntStream;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.TextField;
import tiewright.http.views.ActionForm;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Fields;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.timetable.Pin;

/** What a person pins by hand before a plan is searched: how it is asked, and what is pinned already. */
final class PinFields {
    private PinFields() {}

    /** The form that pins a tie or one of its rubbers. */
    static WorkView.Section section(Visit visit, Tried tried) {
        WorkView.Section pins = WorkView.Section.of("pins", "", visit.say("page-plan.what-is-pinned-stays-where"))
                .with(new WorkView.WorkForm(
                        PlanPage.PIN,
                        PlanPage.HERE + "/" + PlanPage.PIN,
                        asked(visit, Fields.of(PlanPage.PIN, tried)),
                        List.of(Button.other(visit.say("page-plan.pin-it-there")))));
        return tried.isNothing() ? pins.folded(visit.say("page-plan.pin-by-hand")) : pins;
    }

    private static List<FormField> asked(Visit visit, Fields fields) {
        VisibleEvent event = visit.event();
        TieViews views = new TieViews(event);
        List<Option> ties = TieOrder.sorted(
                        event.ties().stream().filter(event::goesOn).toList())
                .stream()
                .map(tie -> Option.of(tie.id().code(), tie.id() + ": " + views.title(tie), false))
                .toList();
        return List.of(
                fields.select("pin-tie", visit.say("page-plan.tie"), visit.say("page-plan.choose-a-tie"), "", ties),
                fields.text("pin-rubber", TextField.Kind.SHORT, visit.say("page-plan.rubber"), "")
                        .withHint(visit.say("page-plan.empty-the-whole-tie")),
                fields.text("pin-start", TextField.Kind.TIME, visit.say("page-plan.starts-at"), ""),
                fields.line("pin-courts", visit.say("page-plan.courts-with-commas-between"), ""));
    }

    /** Pins as they stand, in their order, each with a press that takes it away. */
    static List<ActionForm> pinned(Visit visit, List<Pin> pins) {
        return IntStream.range(0, pins.size())
                .mapToObj(i -> pinned(visit, i, pins.get(i)))
                .toList();
    }

    private static ActionForm pinned(Visit visit, int number, Pin pin) {
        String what = pin.tie()
                + pin.rubber()
                        .map(no -> ", " + TieViews.rubberWithin(visit.words(), no))
                        .orElse("");
        return ActionForm.of(
                        "unpin-" + number, PlanPage.HERE + "/unpin", "", Button.other(visit.say("page-plan.unpin")))
                .saying(visit.say(
                        "page-plan.at-on",
                        "what",
                        what,
                        "start",
                        HallClock.said(pin.start()),
                        "courts",
                        String.join(", ", pin.courts())))
                .sending("which", Integer.toString(number));
    }
}
