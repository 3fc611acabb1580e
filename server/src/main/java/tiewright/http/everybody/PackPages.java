package tiewright.http.everybody;

import java.util.List;
import java.util.Map;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.http.views.PackView;
import tiewright.http.views.PackView.Leaf;
import tiewright.http.visit.Door;
import tiewright.http.visit.EnvelopePapers;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Visit;

/** The day on paper, a press for each place it lies at: the desk, the wall, an envelope for each club. */
final class PackPages implements Page {
    @Override
    public void at(Routes routes) {
        routes.get(
                Door.ANYBODY, "/paper/desk", visit -> show(visit, "desk", new DeskPapers(visit.asStranger()).leaves()));
        routes.get(
                Door.ANYBODY, "/paper/wall", visit -> show(visit, "wall", new WallPapers(visit.asStranger()).leaves()));
        routes.get(
                Door.ANYBODY,
                "/paper/envelopes",
                visit -> visit.show(Screen.of(
                        "pack", visit.say("page-everybody.pack.envelopes"), new EnvelopePapers(visit).all(Map.of()))));
        routes.get(Door.ANYBODY, "/paper/envelope/{club}", PackPages::envelope);
    }

    private static void show(Visit visit, String which, List<Leaf> leaves) {
        visit.show(Screen.of(
                "pack",
                visit.say("page-everybody.pack." + which),
                new PackView(
                        visit.say(
                                leaves.isEmpty()
                                        ? "page-everybody.pack-nothing-yet"
                                        : "page-everybody.pack-how." + which),
                        leaves)));
    }

    /** Where the papers of one club stand. */
    static String envelope(ClubId club) {
        return "/paper/envelope/" + club;
    }

    private static void envelope(Visit visit) {
        Club club = visit.readId("club", ClubId::of)
                .flatMap(visit.event()::club)
                .orElseThrow(() ->
                        new NotFound(visit.say("page-everybody.there-is-no-club-in", "club", visit.path("club"))));
        visit.show(Screen.of(
                "pack",
                visit.say("page-everybody.envelope-of", "club", club.name()),
                new EnvelopePapers(visit).one(club)));
    }
}
