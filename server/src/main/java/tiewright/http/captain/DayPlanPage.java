package tiewright.http.captain;

import tiewright.event.ClubId;
import tiewright.event.Refusal;
import tiewright.http.answers.ClubAnswers;
import tiewright.http.visit.Door;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.lineup.day.DayProblem;

/** The day of a club so far and ahead: playing time, and a sheet planned for every tie to come. Planned in the background. */
final class DayPlanPage implements Page, AutoCloseable {
    static final String HERE = "/captain/day";
    private static final int MOST = 12;

    private final DayPlans plans = new DayPlans();

    @Override
    public void at(Routes routes) {
        routes.get(Door.NOTES, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.NOTES, HERE, this::plan);
        routes.post(Door.NOTES, HERE + "/promise", visit -> DayPromises.promise(visit, tried -> screen(visit, tried)));
        routes.post(Door.NOTES, HERE + "/stop", visit -> {
            plans.stop(visit.club());
            visit.go(HERE);
        });
    }

    private static int count(Form form, String field) {
        int count = form.number(field).orElse(0);
        if (count < 0 || count > MOST) {
            form.fault(Refusal.of("form.out-of-range")
                    .with("least", 0)
                    .with("most", MOST)
                    .at(field));
        }
        return count;
    }

    private void plan(Visit visit) {
        Form form = visit.form();
        int floor = count(form, "floor");
        int inARow = count(form, "row");
        if (!form.isClean()) {
            visit.refuse(form, tried -> screen(visit, tried));
            return;
        }
        plans.begin(
                visit,
                new DayProblem.Wanted(
                        floor,
                        visit.ask(ClubAnswers::new).playingDay().promised(),
                        inARow,
                        form.text("learn").equals("yes")));
        visit.go(HERE);
    }

    private Screen screen(Visit visit, Tried tried) {
        return new DayPlanScreen(visit, plans.of(visit.club())).screen(tried);
    }

    @Override
    public void close() {
        plans.close();
    }

    /** Waits until the plan that a club asked for is found; at once where it asked for none. */
    void await(ClubId club) {
        plans.of(club).ifPresent(DayPlans.Job::result);
    }
}
