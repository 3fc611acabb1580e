package tiewright.http.everybody;

import java.util.Optional;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.VisibleEvent;
import tiewright.http.views.CalendarLink;
import tiewright.http.visit.AlarmEntries;
import tiewright.http.visit.Calendars;
import tiewright.http.visit.Door;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Visit;
import tiewright.paper.CalendarFile;

/**
 * A calendar for each club and each player, to subscribe to. It is made for strangers whoever asks, for calendars are passed
 * on: names as public pages show them, and who plays with whom only once the sheets are open.
 */
final class CalendarPage implements Page {
    @Override
    public void at(Routes routes) {
        routes.get(Door.ANYBODY, "/club/{club}/calendar.ics", visit -> {
            Club club = visit.readId("club", ClubId::of)
                    .flatMap(visit.event()::club)
                    .orElseThrow(() ->
                            new NotFound(visit.say("page-everybody.there-is-no-club-in", "club", visit.path("club"))));
            send(visit.asStranger(), club.id(), Optional.empty());
        });
        routes.get(Door.ANYBODY, "/player/{player}/calendar.ics", visit -> {
            Player player = player(visit);
            send(visit.asStranger(), player.club(), Optional.of(player.id()));
        });
        routes.get(Door.ANYBODY, "/player/{player}/alarms.ics", visit -> alarms(visit.asStranger(), player(visit)));
    }

    private static Player player(Visit visit) {
        return visit.readId("player", PlayerId::of)
                .flatMap(visit.event()::player)
                .orElseThrow(() -> new NotFound(
                        visit.say("page-everybody.there-is-no-player-in", "player", visit.path("player"))));
    }

    static CalendarLink link(Visit visit, ClubId club) {
        return Calendars.link(visit, club, "");
    }

    static CalendarLink link(Visit visit, PlayerId player) {
        String path = "/player/" + player + "/calendar.ics";
        return new CalendarLink(path, Calendars.address(visit, path), "/player/" + player + "/alarms.ics");
    }

    private static void send(Visit visit, ClubId club, Optional<PlayerId> player) {
        VisibleEvent event = visit.event();
        String whose = player.map(event::name).map(name -> name + ", ").orElse("") + event.clubName(club);
        String day = event.about().map(about -> ", " + about.name()).orElse("");
        Calendars.send(visit, new CalendarFile(whose + day, new CalendarEntries(visit, club, player).all()));
    }

    private static void alarms(Visit visit, Player player) {
        Calendars.hand(
                visit, AlarmEntries.file(visit.event().name(player.id()), new AlarmEntries(visit).rubbers(player)));
    }
}
