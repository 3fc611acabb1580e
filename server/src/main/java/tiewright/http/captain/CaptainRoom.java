package tiewright.http.captain;

import java.util.List;
import tiewright.event.ClubId;
import tiewright.http.visit.Page;
import tiewright.http.visit.Room;

/** The pages of captains and their deputies. */
public final class CaptainRoom implements Room {
    private final DayPlanPage dayPlans = new DayPlanPage();

    @Override
    public List<Page> pages() {
        return List.of(
                new CaptainPages(),
                new AlarmsPage(),
                new SheetPages(),
                new PlayingTimePage(),
                new SquadPages(),
                new ProposalPages(),
                dayPlans,
                new OwnRecordPage(),
                new TriedPage(),
                new OwnLinksPage());
    }

    /** Waits for the plan of the day that this club's captain asked for. */
    public void await(ClubId club) {
        dayPlans.await(club);
    }

    @Override
    public void close() {
        dayPlans.close();
    }
}
