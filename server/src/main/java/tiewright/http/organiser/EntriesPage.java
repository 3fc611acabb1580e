package tiewright.http.organiser;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.EntryAnswers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.HiddenField;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Addresses;
import tiewright.http.visit.AtFields;
import tiewright.http.visit.BackLinks;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.setup.EnterClub;
import tiewright.setup.EntryWarning;
import tiewright.wording.Words;

/** All clubs with the size of their squads, a form for one more, and what looks wrong about the entries. */
final class EntriesPage implements Page {
    static final String HERE = "/organiser/clubs";
    private static final String FORM = "enter";
    private static final int LONGEST_CODE = 12;

    @Override
    public void at(Routes routes) {
        routes.get(Door.ORGANISER, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.ORGANISER, HERE, EntriesPage::enter);
    }

    private static void enter(Visit visit) {
        Form form = visit.form();
        Optional<ClubId> club = form.must("club", form.read("club", "form.not-a-code", EntriesPage::shortCode));
        club.filter(id -> visit.event().club(id).isPresent())
                .ifPresent(id -> form.fault(
                        Refusal.of("form.club-is-there").with("club", id).at("club")));
        String name = form.mustText("name");
        Optional<String> town = form.maybe("town");
        OptionalInt seed = form.number("seed");
        visit.attempt(
                form,
                () -> new EnterClub(club.orElseThrow(), name, town, seed),
                "/organiser/club/" + form.text("club"),
                tried -> screen(visit, tried));
    }

    static ClubId shortCode(String text) {
        if (text.length() > LONGEST_CODE || !ClubId.isFit(text)) {
            throw new IllegalArgumentException("not a short code");
        }
        return ClubId.of(text);
    }

    private static Screen screen(Visit visit, Tried tried) {
        VisibleEvent event = visit.event();
        List<WorkView.Section> sections = new ArrayList<>();
        WorkView.Section clubs = WorkView.Section.of("clubs", "");
        sections.add((event.clubs().isEmpty() ? clubs : clubs.with(table(event)))
                .with(new NavLink(PastePage.HERE, visit.say("page-organiser.paste.go"), false)));
        List<EntryWarning> alike = visit.ask(EntryAnswers::new).alike();
        sections.add(WorkView.Section.of("warnings", visit.say("page-organiser.what-to-look-at"))
                .saying(toLookAt(visit, alike)));
        alike.forEach(two -> sections.add(twoPeople(visit, two)));
        Fields fields = Fields.of(FORM, tried);
        sections.add(WorkView.Section.of(FORM, visit.say("page-organiser.enter-a-club"))
                .with(new WorkView.WorkForm(
                        FORM,
                        HERE,
                        asked(Words.of(event), fields, Optional.empty()),
                        List.of(Button.main(visit.say("page-organiser.enter-this-club"))))));
        return Screen.of(
                "work",
                visit.say("page-organiser.clubs-and-squads"),
                new WorkView(tried.refusal(), BackLinks.toOrganiser(visit.words()), List.of(), sections));
    }

    /** What has no question of its own below. */
    private static List<String> toLookAt(Visit visit, List<EntryWarning> alike) {
        List<String> warnings = visit.ask(EntryAnswers::new).entryWarnings();
        if (warnings.isEmpty()) {
            return List.of(visit.say("page-organiser.no-player-stands-in-two"));
        }
        Set<String> asked = alike.stream()
                .map(two -> visit.words().sentence(two.kind().code(), two.data()))
                .collect(Collectors.toSet());
        return warnings.stream().filter(warning -> !asked.contains(warning)).toList();
    }

    /** One press answers the question for the whole day. */
    private static WorkView.Section twoPeople(Visit visit, EntryWarning alike) {
        PlayerId one = alike.players().get(0);
        PlayerId other = alike.players().get(1);
        String name = "two-" + AtFields.safe(one.code()) + "-" + AtFields.safe(other.code());
        return WorkView.Section.of(name, "", visit.words().sentence(alike.kind().code(), alike.data()))
                .with(new WorkView.WorkForm(
                        name,
                        Addresses.TWO_PEOPLE,
                        List.of(
                                new HiddenField("one", one.code()),
                                new HiddenField("other", other.code()),
                                new HiddenField("back", HERE)),
                        List.of(Button.other(visit.say("page-organiser.they-are-two-people")))));
    }

    static List<FormField> asked(Words words, Fields fields, Optional<Club> club) {
        List<FormField> asked = new ArrayList<>();
        if (club.isEmpty()) {
            asked.add(fields.line("club", words.say("page-organiser.short-code"), "")
                    .withMaxLength(LONGEST_CODE)
                    .withHint(words.say("page-organiser.short-code-hint"))
                    .mustBeFilled());
        }
        asked.add(fields.line(
                        "name",
                        words.say("page-organiser.name-of-the-club"),
                        club.map(Club::name).orElse(""))
                .mustBeFilled());
        asked.add(fields.line(
                        "town",
                        words.say("page-organiser.town"),
                        club.flatMap(Club::town).orElse(""))
                .withHint(words.say("page-organiser.town-hint")));
        asked.add(fields.number(
                        "seed",
                        words.say("page-organiser.seed-of-a-club"),
                        club.map(Club::seed).orElse(OptionalInt.empty()))
                .withHint(words.say("page-organiser.seed-of-a-club-hint")));
        return asked;
    }

    private static ReasonTable table(VisibleEvent event) {
        List<ReasonTable.Row> rows = event.clubs().stream()
                .map(club -> ReasonTable.Row.of(List.of(
                        new ReasonTable.Cell(club.name(), "/organiser/club/" + club.id()),
                        ReasonTable.Cell.of(club.id().code()),
                        ReasonTable.Cell.of(club.town().orElse("")),
                        ReasonTable.Cell.of(Fields.said(club.seed())),
                        ReasonTable.Cell.of(
                                Integer.toString(event.squad(club.id()).size())))))
                .toList();
        return new ReasonTable(
                "entries",
                Words.say(event, "page-organiser.entered-so-far"),
                List.of(
                        new ReasonTable.Column(Words.say(event, "page-organiser.club"), false),
                        new ReasonTable.Column(Words.say(event, "page-organiser.code"), false),
                        new ReasonTable.Column(Words.say(event, "page-organiser.town"), false),
                        new ReasonTable.Column(Words.say(event, "page-organiser.seed"), true),
                        new ReasonTable.Column(Words.say(event, "page-organiser.players"), true)),
                rows,
                "");
    }
}
