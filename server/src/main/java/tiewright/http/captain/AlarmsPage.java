package tiewright.http.captain;

import java.util.ArrayList;
import java.util.List;
import tiewright.http.visit.AlarmEntries;
import tiewright.http.visit.Calendars;
import tiewright.http.visit.Door;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Visit;
import tiewright.paper.CalendarFile;

/** What a captain's or deputy's phone rings for: sheets and decider pairs that are due, and the own rubbers. */
final class AlarmsPage implements Page {
    @Override
    public void at(Routes routes) {
        routes.get(Door.CAPTAIN, Calendars.ALARMS_OF_CAPTAIN, AlarmsPage::hand);
    }

    private static void hand(Visit visit) {
        AlarmEntries alarms = new AlarmEntries(visit);
        List<CalendarFile.Entry> entries = new ArrayList<>(alarms.sheets(visit.club()));
        new OwnNext(visit).me().ifPresent(player -> entries.addAll(alarms.rubbers(player)));
        Calendars.hand(visit, AlarmEntries.file(visit.event().clubName(visit.club()), entries));
    }
}
