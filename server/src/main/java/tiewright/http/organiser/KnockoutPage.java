package tiewright.http.organiser;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import tiewright.event.DrawFact;
import tiewright.event.Side;
import tiewright.event.Stage;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.views.WorkView;
import tiewright.http.visit.BackLinks;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.setup.LayOutKnockout;
import tiewright.wording.Words;

/** Laying out the knockout before anybody knows who will hold its places. */
final class KnockoutPage implements Page {
    private static final String HERE = "/organiser/knockout";
    private static final String FORM = "knockout";

    @Override
    public void at(Routes routes) {
        routes.get(Door.ORGANISER, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.ORGANISER, HERE, KnockoutPage::layOut);
    }

    private static void layOut(Visit visit) {
        Form form = visit.form();
        OptionalInt each = form.mustNumber("fromEachPool");
        boolean third = form.isTicked("thirdPlace");
        String seed = form.mustText("spokenSeed");
        String witness = form.mustText("witness");
        if (!knockout(visit.event()).isEmpty()) {
            form.mustText("again");
        }
        visit.attempt(
                form,
                () -> new LayOutKnockout(each.orElseThrow(), third, seed, witness),
                HERE,
                tried -> screen(visit, tried));
    }

    private static List<Tie> knockout(VisibleEvent event) {
        return event.ties().stream()
                .filter(tie -> tie.stage() == Stage.KNOCKOUT)
                .toList();
    }

    private static Screen screen(Visit visit, Tried tried) {
        VisibleEvent event = visit.event();
        boolean there = !knockout(event).isEmpty();
        List<WorkView.Section> sections = new ArrayList<>(there ? laidOut(event) : List.of());

        sections.add(layingOut(visit, tried, there));
        return Screen.of(
                "work",
                visit.say("page-organiser.knockout"),
                new WorkView(
                        tried.refusal(),
                        BackLinks.toOrganiser(visit.words()),
                        List.of(visit.say("page-organiser.the-places-of-the-pools")),
                        sections));
    }

    private static WorkView.Section layingOut(Visit visit, Tried tried, boolean there) {
        return WorkView.Section.of(
                        FORM,
                        there
                                ? visit.say("page-organiser.lay-it-out-again")
                                : visit.say("page-organiser.lay-out-the-knockout"))
                .with(new WorkView.WorkForm(
                        FORM,
                        HERE,
                        asked(visit, Fields.of(FORM, tried), there),
                        List.of(
                                there
                                        ? Button.stop(visit.say("page-organiser.lay-it-out-again"))
                                        : Button.main(visit.say("page-organiser.lay-out-the-knockout")))));
    }

    private static List<FormField> asked(Visit visit, Fields fields, boolean there) {
        List<FormField> asked = new ArrayList<>(List.of(
                fields.number("fromEachPool", visit.say("page-organiser.how-many-go-on-from"), OptionalInt.empty())
                        .withHint(visit.say("page-organiser.1-to-4"))
                        .mustBeFilled(),
                fields.tick(
                        "thirdPlace",
                        visit.say("page-organiser.third-place"),
                        visit.say("page-organiser.the-losers-of-the-semi"),
                        false),
                DrawPage.seed(visit.words(), fields),
                DrawPage.witness(visit.words(), fields)));
        if (there) {
            asked.add(fields.tick(
                    "again",
                    visit.say("page-organiser.the-knockout-is-laid-out"),
                    visit.say("page-organiser.lay-it-out-again-the"),
                    false));
        }
        return asked;
    }

    /** The ties, and how their places were drawn. */
    private static List<WorkView.Section> laidOut(VisibleEvent event) {
        List<WorkView.Section> sections = new ArrayList<>();
        sections.add(WorkView.Section.of("result", "").with(table(event)));
        KnockoutSteps.of(event)
                .ifPresent(steps -> sections.add(
                        WorkView.Section.of("replay", "", Words.say(event, "page-organiser.number-i-of-a-draw"))
                                .with(steps)));
        return sections;
    }

    private static ReasonTable table(VisibleEvent event) {
        TieViews views = new TieViews(event);
        List<ReasonTable.Row> rows = knockout(event).stream()
                .map(tie -> ReasonTable.Row.of(List.of(
                        new ReasonTable.Cell(tie.id().code(), "/tie/" + tie.id()),
                        ReasonTable.Cell.of(views.stage(tie)),
                        ReasonTable.Cell.of(views.side(tie, Side.HOME)),
                        ReasonTable.Cell.of(views.side(tie, Side.AWAY)))))
                .toList();
        String foot = drawnFrom(event);
        return new ReasonTable(
                "knockout-ties",
                Words.say(event, "page-organiser.the-ties-of-the-knockout"),
                List.of(
                        new ReasonTable.Column(Words.say(event, "page-organiser.tie"), false),
                        new ReasonTable.Column(Words.say(event, "page-organiser.round"), false),
                        new ReasonTable.Column(Words.say(event, "page-organiser.home"), false),
                        new ReasonTable.Column(Words.say(event, "page-organiser.away"), false)),
                rows,
                foot);
    }

    private static String drawnFrom(VisibleEvent event) {
        return event.knockoutDraw()
                .map((DrawFact.KnockoutDrawn drawn) -> Words.say(
                        event,
                        "page-organiser.drawn-from-the-words-witness",
                        "spokenSeed",
                        drawn.spokenSeed(),
                        "witness",
                        drawn.witness()))
                .orElse("");
    }
}
