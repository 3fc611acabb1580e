package tiewright.http.plan;

import java.util.List;
import tiewright.http.visit.Page;
import tiewright.http.visit.Room;

/** The pages on which an order of play is made, timed and mended; one search at a time goes on behind them. */
public final class PlanRoom implements Room {
    private final Planning planning = new Planning();

    @Override
    public List<Page> pages() {
        return List.of(new TimesPage(), new BudgetPage(), new PlanPage(planning), new BreaksPage(planning));
    }

    /** Waits until no search goes on. */
    public void await() {
        planning.await();
    }

    @Override
    public void close() {
        planning.close();
    }
}
