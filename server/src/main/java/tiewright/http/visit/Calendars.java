package tiewright.http.visit;

import java.net.URI;
import java.net.URISyntaxException;
import tiewright.event.ClubId;
import tiewright.http.views.CalendarLink;
import tiewright.paper.CalendarFile;

/** Calendars as answers: how they are sent, and the addresses that stand in them. */
public final class Calendars {
    /** What a captain's phone rings for. */
    public static final String ALARMS_OF_CAPTAIN = "/captain/alarms.ics";

    private Calendars() {}

    /** The whole address, in the letters that addresses are made of (RFC 3986). */
    public static String address(Visit visit, String path) {
        try {
            return visit.hall().address().url() + new URI(null, null, path, null).toASCIIString();
        } catch (URISyntaxException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** A club's calendar to subscribe to; {@code alarms} is empty where nobody in particular reads. */
    public static CalendarLink link(Visit visit, ClubId club, String alarms) {
        String path = "/club/" + club + "/calendar.ics";
        return new CalendarLink(path, address(visit, path), alarms);
    }

    /** Shown at its address, to subscribe to. */
    public static void send(Visit visit, CalendarFile calendar) {
        send(visit, calendar, visit.say("page-visit.inline-filename-calendar-ics"));
    }

    /** A file to take into a calendar once. */
    public static void hand(Visit visit, CalendarFile calendar) {
        send(visit, calendar, visit.say("page-visit.attachment-filename-alarms-ics"));
    }

    private static void send(Visit visit, CalendarFile calendar, String disposition) {
        visit.ctx()
                .contentType("text/calendar; charset=utf-8")
                .header("Content-Disposition", disposition)
                .result(calendar.text());
    }
}
