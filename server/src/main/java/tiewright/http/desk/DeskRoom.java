package tiewright.http.desk;

import java.util.List;
import tiewright.http.visit.Page;
import tiewright.http.visit.Room;

/** The pages of the desk and of those who stand beside a court. */
public final class DeskRoom implements Room {
    @Override
    public List<Page> pages() {
        return List.of(
                new DeskPage(),
                new CourtPage(),
                new CheckInPage(),
                new DeskTiePages(),
                new CardPages(),
                new StopPages(),
                new HurtPage(),
                new SafetyPage(),
                new TellingPage(),
                new LogPage(),
                new ClockPage(),
                new LaptopPage());
    }
}
