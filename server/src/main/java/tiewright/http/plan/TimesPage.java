package tiewright.http.plan;

import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tiewright.desk.RetimeTie;
import tiewright.event.Decision;
import tiewright.event.Tie;
import tiewright.event.Together;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.Answers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.InputTable;
import tiewright.http.views.WorkView;
import tiewright.http.visit.AtFields;
import tiewright.http.visit.BackLinks;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.wording.Words;

/** Start and court of every tie in one table; only what was changed is decided, and all of it at once. */
final class TimesPage implements Page {
    private static final String HERE = "/organiser/times";
    private static final String FORM = "times";

    @Override
    public void at(Routes routes) {
        routes.get(Door.ORGANISER, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.ORGANISER, HERE, TimesPage::keep);
    }

    private static void keep(Visit visit) {
        Form form = visit.form();
        List<Decision> changes = open(visit.event()).stream()
                .flatMap(tie -> change(visit, form, tie).stream())
                .toList();
        if (changes.isEmpty() && form.isClean()) {
            visit.go(HERE);
            return;
        }
        visit.attempt(form, () -> new Together(changes), HERE, tried -> screen(visit, tried));
    }

    /** What was typed for a tie, where it is not what stands. */
    private static Optional<Decision> change(Visit visit, Form form, Tie tie) {
        String row = row(tie);
        if (!form.wasAsked(AtFields.id(row, "start"))) {
            return Optional.empty();
        }
        Optional<LocalTime> start = form.time(AtFields.id(row, "start"));
        List<String> courts = courts(form.text(AtFields.id(row, "court")));
        if (start.equals(tie.start()) && courts.equals(visit.event().order().courts(tie))) {
            return Optional.empty();
        }
        RetimeTie.Where where =
                new RetimeTie.Where(courts, visit.ask(Answers::new).rubberMinutes());
        RetimeTie timed =
                new RetimeTie(tie.id(), start, where, form.text("reason"), Publishing.told(form, visit.event()));
        return Optional.of(new AtFields(row, timed, Set.of("reason", "told")));
    }

    /** As they stand in the table: parted by commas. */
    private static List<String> courts(String typed) {
        return Arrays.stream(typed.split("[,;]"))
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .distinct()
                .toList();
    }

    /** Ties that can still be given another time. */
    private static List<Tie> open(VisibleEvent event) {
        return TieOrder.sorted(event.ties().stream().filter(event::goesOn).toList());
    }

    private static String row(Tie tie) {
        return "tie-" + AtFields.safe(tie.id().code());
    }

    private static Screen screen(Visit visit, Tried tried) {
        return Screen.of(
                "work",
                visit.say("page-plan.starts-and-courts"),
                new WorkView(
                        tried.refusal(),
                        BackLinks.toOrganiser(visit.words()),
                        List.of(visit.say(
                                "page-plan.sheets-must-be-sealed-minutes",
                                "sheetDeadlineMinutes",
                                visit.event().conditions().sheetDeadlineMinutes())),
                        List.of(open(visit.event()).isEmpty() ? nothing(visit) : times(visit, tried))));
    }

    private static WorkView.Section nothing(Visit visit) {
        return WorkView.Section.of("empty", "", visit.say("page-plan.the-ties-stand-here-once"));
    }

    private static WorkView.Section times(Visit visit, Tried tried) {
        return WorkView.Section.of(FORM, "")
                .with(new WorkView.WorkForm(
                        FORM,
                        HERE,
                        asked(visit, tried),
                        List.of(Button.main(visit.say("page-plan.publish-these-times")))));
    }

    private static List<FormField> asked(Visit visit, Tried tried) {
        VisibleEvent event = visit.event();
        Fields fields = Fields.of(FORM, tried);
        return List.of(
                table(event, fields),
                fields.line("reason", visit.say("page-plan.why-if-a-time-or"), "")
                        .withMaxLength(300)
                        .withHint(visit.say("page-plan.a-numbered-notice-then-shows")),
                Publishing.told(
                        visit.say("page-plan.told-of-earlier"),
                        visit.say("page-plan.told-of-earlier-hint"),
                        event.clubs(),
                        tried));
    }

    private static InputTable table(VisibleEvent event, Fields fields) {
        TieViews views = new TieViews(event);
        List<InputTable.Row> rows = open(event).stream()
                .map(tie -> new InputTable.Row(
                        tie.id() + ": " + views.title(tie),
                        views.stage(tie),
                        List.of(
                                fields.cell(
                                        AtFields.id(row(tie), "start"),
                                        InputTable.Kind.SHORT,
                                        Fields.said(tie.start())),
                                fields.cell(
                                        AtFields.id(row(tie), "court"),
                                        InputTable.Kind.SHORT,
                                        String.join(", ", event.order().courts(tie))))))
                .toList();
        return new InputTable(
                "times-table",
                Words.say(event, "page-plan.ties-that-are-not-finished"),
                Words.say(event, "page-plan.tie"),
                List.of(Words.say(event, "page-plan.start"), Words.say(event, "page-plan.court-2")),
                rows);
    }
}
