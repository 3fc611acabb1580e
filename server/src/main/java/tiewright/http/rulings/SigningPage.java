package tiewright.http.rulings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import tiewright.desk.DrawLot;
import tiewright.desk.SignEvent;
import tiewright.desk.SignTable;
import tiewright.event.ClubId;
import tiewright.http.answers.Answers;
import tiewright.http.answers.DisputeAnswers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.HiddenField;
import tiewright.http.pieces.TextField;
import tiewright.http.views.TablesView;
import tiewright.http.views.WorkView;
import tiewright.http.visit.AtFields;
import tiewright.http.visit.BackLinks;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.FinalOrders;
import tiewright.http.visit.Form;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TableViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;

/** What officials sign: tables, lots, withdrawals, the end of the event. */
final class SigningPage implements Page {
    private static final String HERE = "/organiser/tables";
    private static final String EVENT = "event";

    @Override
    public void at(Routes routes) {
        routes.get(Door.OFFICIALS, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.OFFICIALS, HERE + "/sign/{pool}", SigningPage::sign);
        routes.post(Door.OFFICIALS, HERE + "/lot/{pool}", SigningPage::drawLot);
        routes.post(Door.OFFICIALS, HERE + "/" + EVENT, SigningPage::signEvent);
    }

    private static String pool(Visit visit) {
        return Optional.of(visit.path("pool"))
                .filter(visit.event().pools()::containsKey)
                .orElseThrow(
                        () -> new NotFound(visit.say("page-rulings.there-is-no-pool-in", "pool", visit.path("pool"))));
    }

    private static void sign(Visit visit) {
        String pool = pool(visit);
        Form form = visit.form();
        String name = signForm(pool);
        String by = form.mustText(AtFields.id(name, "by"));
        BeforeSigning.table(visit, name, pool).check(form);
        visit.attempt(form, () -> new AtFields(name, new SignTable(pool, by)), HERE, tried -> screen(visit, tried));
    }

    private static void drawLot(Visit visit) {
        String pool = pool(visit);
        Form form = visit.form();
        String name = form.text(Fields.FORM);
        Optional<List<ClubId>> level = form.must("level", form.read("level", "form.not-a-code", SigningPage::clubs));
        String seed = form.mustText(AtFields.id(name, "spokenSeed"));
        String witness = form.mustText(AtFields.id(name, "witness"));
        visit.attempt(
                form,
                () -> new AtFields(name, new DrawLot(pool, level.orElseThrow(), seed, witness)),
                HERE,
                tried -> screen(visit, tried));
    }

    private static List<ClubId> clubs(String codes) {
        return Arrays.stream(codes.split(",")).map(ClubId::of).toList();
    }

    private static void signEvent(Visit visit) {
        Form form = visit.form();
        String by = form.mustText(AtFields.id(EVENT, "by"));
        BeforeSigning.event(visit, EVENT).check(form);
        visit.attempt(form, () -> new AtFields(EVENT, new SignEvent(by)), "/tables", tried -> screen(visit, tried));
    }

    private static Screen screen(Visit visit, Tried tried) {
        List<WorkView.Section> sections = new ArrayList<>();
        for (String pool : visit.event().pools().keySet()) {
            sections.add(poolSection(visit, tried, pool));
            if (!isSigned(visit, pool)) {
                sections.addAll(lots(visit, tried, pool));
            }
        }
        if (!visit.event().clubs().isEmpty()) {
            sections.add(GoesHomePage.way(visit.event()));
        }
        sections.add(end(visit, tried));
        return Screen.of(
                "work",
                visit.say("page-rulings.sign-tables-draw-lots-withdraw"),
                new WorkView(
                        tried.refusal(),
                        BackLinks.home(visit),
                        List.of(visit.say("page-rulings.a-table-is-provisional-until")),
                        sections));
    }

    private static WorkView.Section poolSection(Visit visit, Tried tried, String pool) {
        String name = signForm(pool);
        Fields fields = Fields.of(name, tried);
        WorkView.Section section = WorkView.Section.of(
                        "pool-" + AtFields.safe(pool), visit.say("page-rulings.pool", "pool", pool))
                .with(TableViews.pool(visit, pool).table());
        if (isSigned(visit, pool)) {
            return section;
        }
        return section.with(new WorkView.WorkForm(
                name,
                HERE + "/sign/" + pool,
                BeforeSigning.table(visit, name, pool).fields(fields, by(visit, fields, AtFields.id(name, "by"))),
                List.of(Button.main(visit.say("page-rulings.sign-the-table-of-pool", "pool", pool)))));
    }

    private static boolean isSigned(Visit visit, String pool) {
        return visit.event().signedTables().containsKey(pool);
    }

    private static String signForm(String pool) {
        return "sign-" + AtFields.safe(pool);
    }

    private static TextField by(Visit visit, Fields fields, String id) {
        return fields.line(id, visit.say("page-rulings.who-signs-by-name"), "")
                .withAutocomplete("name")
                .mustBeFilled();
    }

    private static List<WorkView.Section> lots(Visit visit, Tried tried, String pool) {
        List<WorkView.Section> sections = new ArrayList<>();
        for (List<ClubId> level : visit.ask(Answers::new).table(pool).lotsToDraw()) {

            sections.add(lot(visit, tried, pool, level));
        }
        return sections;
    }

    private static WorkView.Section lot(Visit visit, Tried tried, String pool, List<ClubId> level) {
        String codes = level.stream().map(ClubId::code).collect(Collectors.joining(","));
        String name =
                "lot-" + AtFields.safe(pool) + "-" + AtFields.safe(level.get(0).code());
        Fields fields = Fields.of(name, tried);
        String clubs = level.stream().map(visit.event()::clubName).collect(Collectors.joining(", "));
        return WorkView.Section.of(
                        name,
                        visit.say("page-rulings.draw-a-lot-in-pool", "pool", pool),
                        visit.say("page-rulings.nothing-in-the-conditions-parts", "clubs", clubs))
                .with(new WorkView.WorkForm(
                        name,
                        HERE + "/lot/" + pool,
                        asked(visit, fields, name, codes),
                        List.of(Button.other(visit.say("page-rulings.draw-the-lot")))));
    }

    private static List<FormField> asked(Visit visit, Fields fields, String name, String codes) {
        return List.of(
                new HiddenField("level", codes),
                fields.line(AtFields.id(name, "spokenSeed"), visit.say("page-rulings.the-words-spoken-in-public"), "")
                        .withMaxLength(200)
                        .mustBeFilled(),
                fields.line(AtFields.id(name, "witness"), visit.say("page-rulings.who-spoke-or-witnessed-them"), "")
                        .withMaxLength(100)
                        .mustBeFilled());
    }

    private static WorkView.Section end(Visit visit, Tried tried) {
        WorkView.Section section = WorkView.Section.of(EVENT, visit.say("page-rulings.the-end-of-the-event"));
        Optional<TablesView.FinalOrder> signed = FinalOrders.of(visit);
        if (signed.isPresent()) {
            return section.saying(signed.get().places())
                    .saying(List.of(signed.get().signed()));
        }
        List<String> places = visit.ask(DisputeAnswers::new).finalPlaces().stream()
                .map(visit.words()::saying)
                .toList();
        Fields fields = Fields.of(EVENT, tried);
        return section.saying(
                        places.isEmpty() ? List.of(visit.say("page-rulings.the-final-order-stands-here")) : places)
                .with(new WorkView.WorkForm(
                        EVENT,
                        HERE + "/" + EVENT,
                        BeforeSigning.event(visit, EVENT).fields(fields, by(visit, fields, AtFields.id(EVENT, "by"))),
                        List.of(Button.other(visit.say("page-rulings.sign-the-final-order")))));
    }
}
