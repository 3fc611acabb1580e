package tiewright.http.organiser;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Together;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.NavLink;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.setup.EnterClub;
import tiewright.setup.RemoveClub;

/** One club as the organiser keeps it: its name, its squad in one table, and taking it out again. */
final class SquadPage implements Page {
    private static final String HERE = "/organiser/club/{club}";
    private static final String SQUAD = "squad";
    private static final String CLUB = "club";
    private static final String REMOVE = "remove";

    @Override
    public void at(Routes routes) {
        routes.get(Door.ORGANISER, HERE, visit -> visit.show(screen(visit, club(visit), Tried.NOTHING)));
        routes.post(Door.ORGANISER, HERE + "/" + SQUAD, SquadPage::keepSquad);
        routes.post(Door.ORGANISER, HERE + "/" + CLUB, SquadPage::keepClub);
        routes.post(Door.ORGANISER, HERE + "/" + REMOVE, SquadPage::remove);
    }

    private static Club club(Visit visit) {
        return visit.readId("club", ClubId::of)
                .flatMap(visit.event()::club)
                .orElseThrow(() ->
                        new NotFound(visit.say("page-organiser.there-is-no-club-in", "club", visit.path("club"))));
    }

    private static String address(Club club) {
        return "/organiser/club/" + club.id();
    }

    private static void keepSquad(Visit visit) {
        Club club = club(visit);
        Form form = visit.form();
        List<Decision> changes = new SquadForm(visit, club.id()).changes(form);
        if (changes.isEmpty() && form.isClean()) {
            visit.go(address(club));
            return;
        }
        visit.attempt(form, () -> new Together(changes), address(club), tried -> screen(visit, club, tried));
    }

    private static void keepClub(Visit visit) {
        Club club = club(visit);
        Form form = visit.form();
        String name = form.mustText("name");
        Optional<String> town = form.maybe("town");
        java.util.OptionalInt seed = form.number("seed");
        visit.attempt(
                form,
                () -> new EnterClub(club.id(), name, town, seed),
                address(club),
                tried -> screen(visit, club, tried));
    }

    private static void remove(Visit visit) {
        Club club = club(visit);
        Form form = visit.form();
        form.mustText("sure");
        visit.attempt(form, () -> new RemoveClub(club.id()), EntriesPage.HERE, tried -> screen(visit, club, tried));
    }

    private static Screen screen(Visit visit, Club club, Tried tried) {
        return Screen.of(
                "work",
                visit.say("page-organiser.squad", "club", club.name()),
                new WorkView(
                        tried.refusal(),
                        new NavLink(EntriesPage.HERE, visit.say("page-organiser.back-to-all-clubs"), false),
                        List.of(),
                        List.of(squad(visit, club, tried), about(visit, club, tried), removal(visit, club, tried))));
    }

    private static WorkView.Section squad(Visit visit, Club club, Tried tried) {
        String paste = PastePage.HERE + "?club=" + URLEncoder.encode(club.id().code(), StandardCharsets.UTF_8);
        return WorkView.Section.of(
                        SQUAD,
                        "",
                        visit.say("page-organiser.names-as-they-are-called"),
                        visit.say("page-organiser.rank-is-the-place-in"))
                .with(new WorkView.WorkForm(
                        SQUAD,
                        address(club) + "/" + SQUAD,
                        List.of(new SquadForm(visit, club.id()).table(Fields.of(SQUAD, tried))),
                        List.of(Button.main(visit.say("page-organiser.keep-this-squad")))))
                .with(new NavLink(paste, visit.say("page-organiser.paste.go"), false));
    }

    private static WorkView.Section about(Visit visit, Club club, Tried tried) {
        WorkView.Section section = WorkView.Section.of(CLUB, "")
                .with(new WorkView.WorkForm(
                        CLUB,
                        address(club) + "/" + CLUB,
                        EntriesPage.asked(visit.words(), Fields.of(CLUB, tried), Optional.of(club)),
                        List.of(Button.other(visit.say("page-organiser.keep-name-town-and-seed")))));
        return folded(section, visit.say("page-organiser.the-club"), tried);
    }

    private static WorkView.Section removal(Visit visit, Club club, Tried tried) {
        FormField sure = Fields.of(REMOVE, tried)
                .tick(
                        "sure",
                        visit.say("page-organiser.are-you-sure"),
                        visit.say("page-organiser.take-and-its-squad-out", "club", club.name()),
                        false);
        WorkView.Section section = WorkView.Section.of(REMOVE, "", visit.say("page-organiser.for-an-entry-made-by"))
                .with(new WorkView.WorkForm(
                        REMOVE,
                        address(club) + "/" + REMOVE,
                        List.of(sure),
                        List.of(Button.stop(visit.say("page-organiser.take-out-2", "club", club.name())))));
        return folded(section, visit.say("page-organiser.take-the-club-out"), tried);
    }

    /** Open where the form in it was just refused. */
    private static WorkView.Section folded(WorkView.Section section, String line, Tried tried) {
        return tried.typed().text(Fields.FORM).equals(section.id()) ? section : section.folded(line);
    }
}
