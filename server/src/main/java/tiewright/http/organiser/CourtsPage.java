package tiewright.http.organiser;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import tiewright.event.Court;
import tiewright.event.Decision;
import tiewright.event.Refusal;
import tiewright.event.Together;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.InputTable;
import tiewright.http.pieces.TextField;
import tiewright.http.views.WorkView;
import tiewright.http.visit.AtFields;
import tiewright.http.visit.BackLinks;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TextOrder;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.setup.SetCourt;

/** The courts, their hours, and which are out of use. */
final class CourtsPage implements Page {
    private static final String HERE = "/organiser/courts";
    private static final String ADD = "add";
    private static final String CHANGE = "change";
    private static final int MOST_AT_ONCE = 60;

    @Override
    public void at(Routes routes) {
        routes.get(Door.ORGANISER, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.ORGANISER, HERE + "/" + ADD, CourtsPage::add);
        routes.post(Door.ORGANISER, HERE + "/" + CHANGE, CourtsPage::change);
    }

    private static void add(Visit visit) {
        Form form = visit.form();
        List<String> names = names(form);
        Optional<LocalTime> from = form.time("from");
        Optional<LocalTime> until = form.time("until");
        visit.attempt(
                form,
                () -> new Together(names.stream()
                        .map(name -> (Decision) new SetCourt(name, from, until, true))
                        .toList()),
                HERE,
                tried -> screen(visit, tried));
    }

    /** Names between commas; {@code 1-6} stands for six numbers. */
    private static List<String> names(Form form) {
        String typed = form.mustText("court");
        List<String> names = new ArrayList<>();
        Arrays.stream(typed.split(","))
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .forEach(part -> {
                    if (!part.matches("[0-9]{1,4} *[-–] *[0-9]{1,4}")) {
                        names.add(part);
                        return;
                    }
                    int from = Integer.parseInt(part.split("[-–]")[0].strip());
                    int to = Integer.parseInt(part.split("[-–]")[1].strip());
                    for (int number = from; number <= to && names.size() <= MOST_AT_ONCE; number++) {
                        names.add(Integer.toString(number));
                    }
                });
        if (!typed.isEmpty() && (names.isEmpty() || names.size() > MOST_AT_ONCE)) {
            form.fault(Refusal.of("form.not-courts")
                    .with("typed", typed)
                    .with("most", MOST_AT_ONCE)
                    .at("court"));
        }
        return names.stream().distinct().toList();
    }

    private static void change(Visit visit) {
        Form form = visit.form();
        List<Decision> changes = new ArrayList<>();
        for (Court court : visit.event().courts()) {
            String row = row(court);
            Optional<LocalTime> from = form.time(AtFields.id(row, "from"));
            Optional<LocalTime> until = form.time(AtFields.id(row, "until"));
            boolean usable = !form.isTicked(AtFields.id(row, "out"));
            if (!from.equals(court.from()) || !until.equals(court.until()) || usable != court.usable()) {
                changes.add(new AtFields(row, new SetCourt(court.name(), from, until, usable)));
            }
        }
        if (changes.isEmpty() && form.isClean()) {
            visit.go(HERE);
            return;
        }
        visit.attempt(form, () -> new Together(changes), HERE, tried -> screen(visit, tried));
    }

    private static String row(Court court) {
        return "court-" + AtFields.safe(court.name());
    }

    private static Screen screen(Visit visit, Tried tried) {
        List<WorkView.Section> sections = new ArrayList<>();
        if (!visit.event().courts().isEmpty()) {
            sections.add(WorkView.Section.of(CHANGE, "")
                    .with(new WorkView.WorkForm(
                            CHANGE,
                            HERE + "/" + CHANGE,
                            List.of(table(visit, Fields.of(CHANGE, tried))),
                            List.of(Button.main(visit.say("page-organiser.keep-the-changes"))))));
        }

        sections.add(adding(visit, Fields.of(ADD, tried)));
        return Screen.of(
                "work",
                visit.say("page-organiser.courts"),
                new WorkView(tried.refusal(), BackLinks.toOrganiser(visit.words()), List.of(), sections));
    }

    private static WorkView.Section adding(Visit visit, Fields fields) {
        return WorkView.Section.of(ADD, visit.say("page-organiser.add-courts"))
                .with(new WorkView.WorkForm(
                        ADD,
                        HERE + "/" + ADD,
                        List.of(
                                fields.line("court", visit.say("page-organiser.names-or-numbers-of-the"), "")
                                        .withHint(visit.say("page-organiser.several-at-once-1-6"))
                                        .mustBeFilled(),
                                fields.text(
                                                "from",
                                                TextField.Kind.TIME,
                                                visit.say("page-organiser.can-be-used-from"),
                                                "")
                                        .withHint(visit.say("page-organiser.empty-from-the-start-of")),
                                fields.text("until", TextField.Kind.TIME, visit.say("page-organiser.until"), "")
                                        .withHint(visit.say("page-organiser.empty-until-the-place-closes"))),
                        List.of(Button.main(visit.say("page-organiser.add-these-courts")))));
    }

    private static InputTable table(Visit visit, Fields fields) {
        List<InputTable.Row> rows = visit.event().courts().stream()
                .sorted((one, other) -> TextOrder.NUMBERS_BY_VALUE.compare(one.name(), other.name()))
                .map(court -> row(visit, fields, court))
                .toList();
        return new InputTable(
                "courts",
                visit.say("page-organiser.courts-and-their-hours"),
                visit.say("page-organiser.court"),
                List.of(
                        visit.say("page-organiser.from"),
                        visit.say("page-organiser.until"),
                        visit.say("page-organiser.out-of-use")),
                rows);
    }

    private static InputTable.Row row(Visit visit, Fields fields, Court court) {
        return new InputTable.Row(
                visit.say("page-organiser.court-2", "court", court.name()),
                court.usable() ? "" : visit.say("page-organiser.out-of-use-2"),
                List.of(
                        fields.cell(AtFields.id(row(court), "from"), InputTable.Kind.SHORT, Fields.said(court.from())),
                        fields.cell(
                                AtFields.id(row(court), "until"), InputTable.Kind.SHORT, Fields.said(court.until())),
                        fields.cell(
                                AtFields.id(row(court), "out"), InputTable.Kind.TICK, court.usable() ? "" : "yes")));
    }
}
