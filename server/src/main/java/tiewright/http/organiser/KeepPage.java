package tiewright.http.organiser;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import tiewright.event.PlayerId;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.KeptAnswers;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Refusal;
import tiewright.http.views.ClubsView;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Addresses;
import tiewright.http.visit.BackLinks;
import tiewright.http.visit.Door;
import tiewright.http.visit.Downloads;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Visit;

/** What is carried away from an event while the service runs: results for the next one, a template, what is held of one player. */
final class KeepPage implements Page {
    private static final String HERE = Addresses.KEEP;
    private static final String PLAYERS = HERE + "/player";

    @Override
    public void at(Routes routes) {
        routes.get(
                Door.ORGANISER,
                HERE,
                visit -> visit.show(Screen.of("work", visit.say("page-organiser.keep"), view(visit))));
        routes.get(Door.ORGANISER, HERE + "/past-results.csv", KeepPage::results);
        routes.get(Door.ORGANISER, HERE + "/event.zip", visit -> folder(visit, "event", KeptAnswers::wholeEvent));
        routes.get(Door.ORGANISER, HERE + "/template.zip", visit -> folder(visit, "template", KeptAnswers::template));
        routes.get(
                Door.ORGANISER,
                PLAYERS,
                visit -> visit.show(Screen.of("clubs", visit.say("page-organiser.keep.player"), players(visit))));
        routes.get(Door.ORGANISER, PLAYERS + "/{player}", KeepPage::player);
    }

    private static void results(Visit visit) {
        mustBeDescribed(visit);
        Downloads.text(
                visit,
                "text/csv",
                "past-results.csv",
                visit.ask(KeptAnswers::new).pastResults());
    }

    private static void mustBeDescribed(Visit visit) {
        if (visit.event().about().isEmpty()) {
            throw new NotFound(visit.say("page-organiser.keep-needs-a-name"));
        }
    }

    private static void player(Visit visit) {
        PlayerId player = visit.readId("player", PlayerId::of)
                .filter(id -> visit.event().player(id).isPresent())
                .orElseThrow(() -> new NotFound(visit.say("page-organiser.keep-no-player")));
        Downloads.text(visit, "text/plain", "held-of-" + player + ".txt", new HeldOfPlayer(visit, player).text());
    }

    private static void folder(Visit visit, String name, Function<KeptAnswers, Map<String, String>> files) {
        mustBeDescribed(visit);
        Downloads.folder(visit, name, files.apply(visit.ask(KeptAnswers::new)));
    }

    private static WorkView view(Visit visit) {
        return new WorkView(
                Refusal.NONE,
                BackLinks.toOrganiser(visit.words()),
                List.of(visit.say("page-organiser.keep-holds-no-secrets")),
                List.of(
                        section(visit, "site", Addresses.STATIC_COPY),
                        section(visit, "event", HERE + "/event.zip"),
                        section(visit, "results", HERE + "/past-results.csv"),
                        section(visit, "template", HERE + "/template.zip"),
                        section(visit, "player", PLAYERS)));
    }

    private static ClubsView players(Visit visit) {
        VisibleEvent event = visit.event();
        return new ClubsView(event.clubs().stream()
                .map(club -> new ClubsView.Line(
                        "/club/" + club.id(),
                        club.name(),
                        club.town().orElse(""),
                        "",
                        event.squad(club.id()).stream()
                                .map(player -> new ClubsView.Name(PLAYERS + "/" + player.id(), event.name(player.id())))
                                .toList()))
                .toList());
    }

    private static WorkView.Section section(Visit visit, String which, String href) {
        return WorkView.Section.of(
                        which,
                        visit.say("page-organiser.keep." + which),
                        visit.say("page-organiser.keep-what." + which))
                .with(new NavLink(href, visit.say("page-organiser.keep-download." + which), false));
    }
}
