package tiewright.http.everybody;

import java.util.List;
import tiewright.http.visit.Page;
import tiewright.http.visit.Room;

/** The pages that anybody may read without a link. */
public final class EverybodyRoom implements Room {
    @Override
    public List<Page> pages() {
        return List.of(
                new NowPage(),
                new TiesPage(),
                new ChartPage(),
                new TablesPage(),
                new NeedsPage(),
                new BracketPage(),
                new NoticesPage(),
                new ClubsPage(),
                new PlayerPage(),
                new CalendarPage(),
                new ConditionsPage(),
                new PaperPages(),
                new PackPages(),
                new HelpPages(),
                new TrustPage(),
                new QrPage());
    }
}
