package tiewright.http;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.event.Court;
import tiewright.event.Decision;
import tiewright.event.Together;
import tiewright.setup.SetCourt;
import tiewright.timetable.ReplanOption;

/** The day breaks: what happened, the ways to go on, and one press that publishes one of them. */
final class BreaksPage implements Page {
    static final String HERE = "/organiser/day-breaks";
    static final String LOOK = "look";
    static final String PUBLISH = "publish";
    private static final String REFRESH_SECONDS = "2";

    @Override
    public void at(Routes routes) {
        routes.get(Door.OFFICIALS, HERE, BreaksPage::show);
        routes.post(Door.OFFICIALS, HERE + "/" + LOOK, BreaksPage::look);
        routes.post(Door.OFFICIALS, HERE + "/stop", visit -> {
            visit.hall().planning().replan().ifPresent(search -> search.stop().press());
            visit.go(HERE);
        });
        routes.post(Door.OFFICIALS, HERE + "/" + PUBLISH, BreaksPage::publish);
    }

    private static void show(Visit visit) {
        if (visit.hall().planning().replan().filter(Planning.Search::isRunning).isPresent()) {
            visit.ctx().header("Refresh", REFRESH_SECONDS);
        }
        visit.show(BreakScreens.screen(visit, Tried.NOTHING));
    }

    private static void look(Visit visit) {
        Form form = visit.form();
        BreakAsk asked = BreakAsk.read(
                form,
                visit.event(),
                visit.event().clock(visit.event().now()).truncatedTo(java.time.temporal.ChronoUnit.MINUTES));
        if (!form.isClean()) {
            visit.refuse(form, tried -> BreakScreens.screen(visit, tried));
            return;
        }
        visit.hall()
                .planning()
                .startReplan(asked, visit.event().seq(), visit.plans().replanning(asked));
        visit.go(HERE);
    }

    private static void publish(Visit visit) {
        Form form = visit.form();
        OptionalInt which = form.number("option");
        Optional<Planning.Search<BreakAsk, Planning.Ways>> search = visit.hall()
                .planning()
                .replan()
                .filter(one -> Integer.toString(one.number()).equals(form.text("search")));
        Optional<ReplanOption> option = search.flatMap(Planning.Search::found)
                .map(Planning.Ways::options)
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
                tried -> BreakScreens.screen(visit, tried));
    }

    /** Courts that were lost go out of use with it. */
    private static Decision decision(Visit visit, BreakAsk asked, ReplanOption option, Form form) {
        List<Decision> all = new ArrayList<>();
        if (asked.what() == BreakAsk.What.COURT) {
            visit.event().courts().stream()
                    .filter(Court::usable)
                    .filter(court -> asked.lost().contains(court.name()))
                    .forEach(court -> all.add(new SetCourt(court.name(), court.from(), court.until(), false)));
        }
        all.add(Publishing.of(option, form.text("reason"), form.text("by")));
        return new Together(all);
    }
}
