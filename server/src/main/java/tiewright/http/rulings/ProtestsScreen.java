package tiewright.http.rulings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
                visit.say(
                        "page-rulings.signed-and-received", "by", protest.made().by(), "at", at)));
        protest.made().deposit().ifPresent(paid -> lines.add(visit.say("page-rulings.deposit", "deposit", paid)));
        protest.decided().ifPresent(decided -> lines.add(ruled(visit, protest, decided)));
        String heading = heading(visit, protest);
        WorkView.Section section = WorkView.Section.of(
                        "protest-" + protest.made().number(), heading)
                .saying(lines)
                .with(asItStood(visit, protest, at));
        boolean open = protest.decided().isEmpty() && Door.OFFICIALS.opensFor(visit.role());
        return open ? section.with(deciding(visit, protest, tried)) : section;
    }

    private static String ruled(Visit visit, Disputes.Protest protest, OfficialFact.ProtestDecided decided) {
        return visit.say(
                "page-rulings.protest-ruled",
                "ruling",
                decided.ruling(),
                "end",
                decided.upheld() ? "upheld" : "dismissed",
                "at",
                protest.decidedAt()
                        .map(when -> HallClock.said(visit.event().clock(when)))
                        .orElse(""),
                "deposit",
                protest.made().deposit().isEmpty() ? "none" : decided.depositReturned() ? "back" : "kept");
    }

    private static String heading(Visit visit, Disputes.Protest protest) {
        Optional<Tie> tie = protest.made().tie().flatMap(visit.event()::tie);
        return visit.say(
                "page-rulings.protest-of",
                "number",
                protest.made().number(),
                "club",
                visit.event().clubName(protest.made().club()),
                "about",
                tie.isPresent() ? "tie" : "none",
                "tie",
                tie.map(one -> new TieViews(visit.event()).title(one)).orElse(""));
    }

    private static ReasonTable asItStood(Visit visit, Disputes.Protest protest, String at) {
        List<ReasonTable.Cell> looks = new ArrayList<>(List.of(
                new ReasonTable.Cell(visit.say("page-rulings.tables-as-at", "at", at), "/tables?at=" + at),
                new ReasonTable.Cell(visit.say("page-rulings.knockout-as-at", "at", at), "/bracket?at=" + at)));
        protest.made()
                .tie()
                .ifPresent(tie -> looks.add(
                        new ReasonTable.Cell(visit.say("page-rulings.tie-as-it-is-now", "tie", tie), "/tie/" + tie)));
        return new ReasonTable(
                "stood-" + protest.made().number(),
                visit.say("page-rulings.the-day-as-it-stood"),
                List.of(new ReasonTable.Column(visit.say("page-rulings.look-at"), false)),
                looks.stream().map(look -> ReasonTable.Row.of(List.of(look))).toList(),
                "");
    }

    private static WorkView.WorkForm deciding(Visit visit, Disputes.Protest protest, Tried tried) {
        int number = protest.made().number();
        String name = ProtestsPage.form(number);
        Fields fields = Fields.of(name, tried);
        List<FormField> asked = new ArrayList<>(List.of(
                upheld(visit, fields, name),
                fields.text(name + "-decision", TextField.Kind.LONG, visit.say("page-rulings.what-is-decided"), "")
                        .mustBeFilled(),
                fields.text(
                                name + "-reason",
                                TextField.Kind.LONG,
                                visit.say("page-rulings.the-reason-with-the-number"),
                                "")
                        .mustBeFilled()));
        if (protest.made().deposit().isPresent()) {
            String back = visit.say("page-rulings.it-goes-back-to-the-club");
            asked.add(fields.tick(name + "-deposit", visit.say("page-rulings.the-deposit"), back, false));
        }
        asked.add(fields.line(name + "-by", visit.say("page-rulings.who-rules-by-name"), "")
                .withAutocomplete("name")
                .mustBeFilled());
        Button decide = Button.main(visit.say("page-rulings.decide-protest", "number", number));
        return new WorkView.WorkForm(name, ProtestsPage.HERE + "/" + number, asked, List.of(decide));
    }

    private static FormField upheld(Visit visit, Fields fields, String name) {
        return fields.oneOf(
                name + "-upheld",
                visit.say("page-rulings.the-protest-is"),
                "",
                List.of(
                        Option.of("yes", visit.say("page-rulings.upheld"), false),
                        Option.of("no", visit.say("page-rulings.dismissed"), false)));
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
