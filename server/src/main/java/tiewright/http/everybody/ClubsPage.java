package tiewright.http.everybody;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.Player;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.TieLine;
import tiewright.http.views.ClubView;
import tiewright.http.views.ClubsView;
import tiewright.http.visit.Door;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;

/** All clubs, and one club with its squad and ties. */
final class ClubsPage implements Page {

    @Override
    public void at(Routes routes) {
        routes.everybodys("/clubs", visit -> Screen.of("clubs", visit.say("page-everybody.clubs"), all(visit.event())));
        routes.get(Door.ANYBODY, "/club/{club}", visit -> {
            Club club = visit.readId("club", ClubId::of)
                    .flatMap(visit.event()::club)
                    .orElseThrow(() ->
                            new NotFound(visit.say("page-everybody.there-is-no-club-in", "club", visit.path("club"))));
            visit.show(Screen.of("club", club.name(), one(visit, club)));
        });
    }

    private static ClubsView all(VisibleEvent event) {
        return new ClubsView(event.clubs().stream()
                .map(club -> new ClubsView.Line(
                        "/club/" + club.id(),
                        club.name(),
                        club.town().orElse(""),
                        "/?club=" + club.id(),
                        event.squad(club.id()).stream()
                                .map(player -> new ClubsView.Name("/player/" + player.id(), event.name(player.id())))
                                .toList()))
                .toList());
    }

    private static ClubView one(Visit visit, Club club) {
        VisibleEvent event = visit.event();
        TieViews views = visit.ties();
        List<ClubView.PlayerLine> squad = squad(event, club);
        List<TieLine> ties = TieOrder.sorted(event.tiesOf(club.id())).stream()
                .map(views::line)
                .toList();
        String withdrawn = Optional.ofNullable(event.withdrawals().get(club.id()))
                .map(fact -> visit.say("page-everybody.the-club-has-withdrawn-ruling", "ruling", fact.ruling()))
                .orElse("");
        return new ClubView(
                club.town().orElse(""),
                squad,
                ties,
                duties(event, club).stream().map(views::line).toList(),
                withdrawn,
                CalendarPage.link(visit, club.id()),
                PackPages.envelope(club.id()));
    }

    private static List<Tie> duties(VisibleEvent event, Club club) {
        return TieOrder.sorted(event.ties().stream()
                .filter(tie -> event.order().umpires(tie.id()).contains(club.id()))
                .toList());
    }

    private static List<ClubView.PlayerLine> squad(VisibleEvent event, Club club) {
        return event.squad(club.id()).stream()
                .sorted(Comparator.comparingInt((Player player) -> player.rank().orElse(Integer.MAX_VALUE)))
                .map(player -> new ClubView.PlayerLine(
                        "/player/" + player.id(),
                        event.name(player.id()),
                        player.rank().isPresent()
                                ? Integer.toString(player.rank().getAsInt())
                                : ""))
                .toList();
    }
}
