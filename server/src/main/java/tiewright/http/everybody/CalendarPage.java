package tiewright.http.everybody;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Optional;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.VisibleEvent;
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
            Player player = visit.readId("player", PlayerId::of)
                    .flatMap(visit.event()::player)
                    .orElseThrow(() -> new NotFound(
                            visit.say("page-everybody.there-is-no-player-in", "player", visit.path("player"))));
            send(visit.asStranger(), player.club(), Optional.of(player.id()));
        });
    }

    static String club(ClubId club) {
        return "/club/" + club + "/calendar.ics";
    }

    static String player(PlayerId player) {
        return "/player/" + player + "/calendar.ics";
    }

    /** The whole address, in the letters that addresses are made of (RFC 3986). */
    static String address(Visit visit, String path) {
        try {
            return visit.hall().address().url() + new URI(null, null, path, null).toASCIIString();
        } catch (URISyntaxException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static void send(Visit visit, ClubId club, Optional<PlayerId> player) {
        VisibleEvent event = visit.event();
        String whose = player.map(event::name).map(name -> name + ", ").orElse("") + event.clubName(club);
        String day = event.about().map(about -> ", " + about.name()).orElse("");
        visit.ctx()
                .contentType("text/calendar; charset=utf-8")
                .header("Content-Disposition", visit.say("page-everybody.inline-filename-calendar-ics"))
                .result(new CalendarFile(whose + day, new CalendarEntries(visit, club, player).all()).text());
    }
}
