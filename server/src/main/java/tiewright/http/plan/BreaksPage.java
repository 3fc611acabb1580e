package tiewright.http.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.desk.PublishPlan;
import tiewright.desk.StopHall;
import tiewright.event.Court;
import tiewright.event.Decision;
import tiewright.event.Together;
import tiewright.http.answers.PlanAnswers;
import tiewright.http.visit.Addresses;
import tiewright.http.visit.Door;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.setup.SetCourt;
import tiewright.timetable.ReplanOption;

/** Something went wrong: what happened, the ways to go on, and one press that publishes one of them. */
final class BreaksPage implements Page {
    static final String HERE = Addresses.BREAKS;
    static final String LOOK = "look";
    static final String PUBLISH = "publish";
    static final String OPTION = "option";
    private static final String REFRESH_SECONDS = "2";

    private final Planning planning;

    BreaksPage(Planning planning) {
        this.planning = planning;
    }

    @Override
    public void at(Routes routes) {
        routes.get(Door.OFFICIALS, HERE, this::show);
        routes.post(Door.OFFICIALS, HERE + "/" + LOOK, this::look);
        routes.post(Door.OFFICIALS, HERE + "/stop", visit -> {
            planning.replan().ifPresent(search -> search.stop().press());
            visit.go(HERE);
        });
        routes.post(Door.OFFICIALS, HERE + "/" + PUBLISH, this::publish);
    }

    private void show(Visit visit) {
        boolean asked = visit.ctx().queryString() != null;
        if (!asked && planning.replan().filter(Planning.Search::isRunning).isPresent()) {
            visit.ctx().header("Refresh", REFRESH_SECONDS);
        }
        visit.show(new BreakScreens(planning, visit, Tried.NOTHING).screen());
    }

    private void look(Visit visit) {
        Form form = visit.form();
        BreakAsk asked = BreakAsk.read(
                form,
                visit.event(),
                visit.event().clock(visit.event().now()).truncatedTo(java.time.temporal.ChronoUnit.MINUTES));
        if (!form.isClean()) {
            visit.refuse(form, tried -> new BreakScreens(planning, visit, tried).screen());
            return;
        }
        planning.startReplan(
                asked,
                visit.event().seq(),
                visit.ask(PlanAnswers::new)
                        .replanning(asked.asked(visit.event().conditions().freezeMinutes())));
        visit.go(HERE);
    }

    private void publish(Visit visit) {
        Form form = visit.form();
        OptionalInt which = form.number(OPTION);
        Optional<Planning.Search<BreakAsk, PlanAnswers.Ways>> search =
                planning.replan().filter(one -> Integer.toString(one.number()).equals(form.text("search")));
        Optional<ReplanOption> option = search.flatMap(Planning.Search::found)
                .map(PlanAnswers.Ways::options)
                .filter(options -> which.isPresent() && which.getAsInt() >= 0 && which.getAsInt() < options.size())
                .map(options -> options.get(which.getAsInt()))
                .filter(ReplanOption::isFeasible);
        if (option.isEmpty()) {
            form.fault(tiewright.event.Refusal.of("form.plan-gone"));
        }
        visit.attempt(
                form,
                () -> decision(visit, search.orElseThrow().asked(), option.orElseThrow(), form),
                "/plan",
                tried -> new BreakScreens(planning, visit, tried).screen());
    }

    /** Courts that were lost go out of use with it, and a stop that is not over yet is said on every page. */
    private static Decision decision(Visit visit, BreakAsk asked, ReplanOption option, Form form) {
        List<Decision> all = new ArrayList<>();
        if (asked.what() == BreakAsk.What.COURT) {
            visit.event().courts().stream()
                    .filter(Court::usable)
                    .filter(court -> asked.lost().contains(court.name()))
                    .forEach(court -> all.add(new SetCourt(court.name(), court.from(), court.until(), false)));
        }
        PublishPlan plan = Publishing.of(option, form.text("reason"), form.text("by"))
                .tellingBefore(Publishing.told(form, visit.event()));
        if (asked.stops(visit.event())) {
            all.add(new StopHall(asked.start(), form.text("reason")));
        }
        if (all.isEmpty() || !visit.ask(PlanAnswers::new).isPublished(plan)) {
            all.add(plan);
        }
        return new Together(all);
    }
}
