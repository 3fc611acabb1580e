package tiewright.http.rulings;

import java.util.ArrayList;
import java.util.List;
import tiewright.conditions.Setting;
import tiewright.event.Disputes;
import tiewright.event.OfficialFact;
import tiewright.event.Role;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.pieces.TextField;
import tiewright.http.views.WorkView;
import tiewright.http.visit.BackLinks;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.wording.ConditionsWords;

/** The page of protests: what was handed in, how the day stood then, what was decided, and the forms for both. */
final class ProtestsScreen {
    private static final String NEW = "protest";

    private ProtestsScreen() {}

    static Screen of(Visit visit, Tried tried) {
        VisibleEvent event = visit.event();
        List<WorkView.Section> sections = new ArrayList<>();
        event.disputes().protests().stream()
                .filter(protest -> visit.role().isOfficial()
                        || visit.viewer().isCaptainOf(protest.made().club()))
                .forEach(protest -> sections.add(section(visit, protest, tried)));
        sections.add(newOne(visit, tried));
        NavLink back = visit.role() == Role.CAPTAIN
                ? new NavLink("/captain", visit.say("page-rulings.back-to-my-ties"), false)
                : BackLinks.home(visit);
        return Screen.of(
                "work",
                visit.say("page-rulings.protests"),
                new WorkView(tried.refusal(), back, intro(visit), sections));
    }

    private static List<String> intro(Visit visit) {
        return List.of(
                visit.say(
                        "page-rulings.under-these-conditions",
                        "sentence",
                        new ConditionsWords(visit.words())
                                .sentence(
                                        Setting.PROTEST,
                                        visit.event().conditions().value(Setting.PROTEST))),
                visit.say("page-rulings.a-protest-is-kept-with"));
    }

    private static WorkView.Section section(Visit visit, Disputes.Protest protest, Tried tried) {
        VisibleEvent event = visit.event();
        String at = HallClock.said(event.clock(protest.at()));
        List<String> lines = new ArrayList<>(List.of(
                protest.made().text(),
                "Signed by " + protest.made().by() + ", received at " + at + "."
                        + protest.made()
                                .deposit()
                                .map(paid -> " Deposit: " + paid + ".")
                                .orElse("")));
        protest.decided().ifPresent(decided -> lines.add(ruled(event, protest, decided)));
        String heading = heading(event, protest);
        WorkView.Section section = WorkView.Section.of(
                        "protest-" + protest.made().number(), heading)
                .saying(lines)
                .with(asItStood(protest, at));
        boolean open = protest.decided().isEmpty() && Door.OFFICIALS.opensFor(visit.role());
        return open ? section.with(deciding(protest, tried)) : section;
    }

    private static String ruled(VisibleEvent event, Disputes.Protest protest, OfficialFact.ProtestDecided decided) {
        return "Ruling " + decided.ruling()
                + (decided.upheld() ? ": upheld" : ": dismissed")
                + protest.decidedAt()
                        .map(when -> ", at " + HallClock.said(event.clock(when)))
                        .orElse("")
                + (protest.made().deposit().isEmpty()
                        ? "."
                        : decided.depositReturned() ? ". The deposit goes back." : ". The deposit is kept.");
    }

    private static String heading(VisibleEvent event, Disputes.Protest protest) {
        return "Protest " + protest.made().number() + ": "
                + event.clubName(protest.made().club())
                + protest.made()
                        .tie()
                        .flatMap(event::tie)
                        .map(tie -> ", " + new TieViews(event).title(tie))
                        .orElse("");
    }

    private static ReasonTable asItStood(Disputes.Protest protest, String at) {
        List<ReasonTable.Row> rows = new ArrayList<>();
        rows.add(
                ReasonTable.Row.of(List.of(new ReasonTable.Cell("Tables as they stood at " + at, "/tables?at=" + at))));
        rows.add(ReasonTable.Row.of(
                List.of(new ReasonTable.Cell("Knockout as it stood at " + at, "/bracket?at=" + at))));
        protest.made()
                .tie()
                .ifPresent(tie -> rows.add(ReasonTable.Row.of(
                        List.of(new ReasonTable.Cell("Tie " + tie + " as it is now", "/tie/" + tie)))));
        return new ReasonTable(
                "stood-" + protest.made().number(),
                "The day as it stood",
                List.of(new ReasonTable.Column("Look at", false)),
                rows,
                "");
    }

    private static WorkView.WorkForm deciding(Disputes.Protest protest, Tried tried) {
        String name = ProtestsPage.form(protest.made().number());
        Fields fields = Fields.of(name, tried);
        List<FormField> asked = new ArrayList<>(List.of(
                fields.oneOf(
                        name + "-upheld",
                        "The protest is",
                        "",
                        List.of(Option.of("yes", "upheld", false), Option.of("no", "dismissed", false))),
                fields.text(name + "-decision", TextField.Kind.LONG, "What is decided", "")
                        .mustBeFilled(),
                fields.text(name + "-reason", TextField.Kind.LONG, "The reason, with the number of the condition", "")
                        .mustBeFilled()));
        if (protest.made().deposit().isPresent()) {
            asked.add(fields.tick(name + "-deposit", "The deposit", "It goes back to the club", false));
        }
        asked.add(fields.line(name + "-by", "Who rules, by name", "")
                .withAutocomplete("name")
                .mustBeFilled());
        return new WorkView.WorkForm(
                name,
                ProtestsPage.HERE + "/" + protest.made().number(),
                asked,
                List.of(Button.main("Decide protest " + protest.made().number())));
    }

    private static WorkView.Section newOne(Visit visit, Tried tried) {
        Fields fields = Fields.of(NEW, tried);
        boolean captain = visit.role() == Role.CAPTAIN;
        List<FormField> asked = new ArrayList<>();
        if (!captain) {
            asked.add(club(visit, fields));
        }
        asked.add(tie(visit, fields, captain));
        asked.add(fields.text("text", TextField.Kind.LONG, visit.say("page-rulings.the-protest"), "")
                .mustBeFilled());
        if (!captain) {
            asked.add(fields.line("deposit", visit.say("page-rulings.deposit-paid-if-the-conditions"), "")
                    .withMaxLength(60));
        }
        asked.add(fields.line("by", visit.say("page-rulings.signed-by-name"), "")
                .withAutocomplete("name")
                .mustBeFilled());
        return WorkView.Section.of(NEW, visit.say("page-rulings.a-new-protest"))
                .with(new WorkView.WorkForm(
                        NEW,
                        ProtestsPage.HERE,
                        asked,
                        List.of(Button.other(visit.say("page-rulings.hand-in-this-protest")))));
    }

    private static FormField club(Visit visit, Fields fields) {
        return fields.select(
                "club",
                visit.say("page-rulings.which-club-protests"),
                visit.say("page-rulings.choose-the-club"),
                "",
                visit.event().clubs().stream()
                        .map(club -> Option.of(club.id().code(), club.name(), false))
                        .toList());
    }

    private static FormField tie(Visit visit, Fields fields, boolean ownOnly) {
        TieViews views = new TieViews(visit.event());
        return fields.select(
                "tie",
                visit.say("page-rulings.about-which-tie"),
                visit.say("page-rulings.about-no-single-tie"),
                "",
                visit.event().ties().stream()
                        .filter(Tie::isReady)
                        .filter(tie -> !ownOnly || tie.has(visit.club()))
                        .map(tie -> Option.of(tie.id().code(), tie.id() + ": " + views.title(tie), false))
                        .toList());
    }
}
