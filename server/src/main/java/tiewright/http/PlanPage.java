package tiewright.http;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import tiewright.event.Decision;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;
import tiewright.event.TieId;
import tiewright.timetable.Pin;
import tiewright.timetable.Plan;

/** The organiser makes an order of play, looks at it, pins what must stay, and publishes it with one press. */
final class PlanPage implements Page {
    static final String HERE = "/organiser/plan";
    static final String MAKE = "make";
    static final String PIN = "pin";
    static final String PUBLISH = "publish";
    private static final String REFRESH_SECONDS = "2";

    @Override
    public void at(Routes routes) {
        routes.get(Door.OFFICIALS, HERE, PlanPage::look);
        routes.post(Door.OFFICIALS, HERE + "/" + MAKE, PlanPage::make);
        routes.post(Door.OFFICIALS, HERE + "/stop", visit -> {
            visit.hall().planning().plan().ifPresent(search -> search.stop().press());
            visit.go(HERE);
        });
        routes.post(Door.OFFICIALS, HERE + "/" + PIN, PlanPage::pin);
        routes.post(Door.OFFICIALS, HERE + "/unpin", PlanPage::unpin);
        routes.post(Door.OFFICIALS, HERE + "/" + PUBLISH, PlanPage::publish);
    }

    /** While a search goes on the page comes again by itself, also without script. */
    private static void look(Visit visit) {
        if (visit.hall().planning().plan().filter(Planning.Search::isRunning).isPresent()) {
            visit.ctx().header("Refresh", REFRESH_SECONDS);
        }
        visit.show(PlanScreens.plan(visit, Tried.NOTHING));
    }

    private static void make(Visit visit) {
        Form form = visit.form();
        PlanAsk asked = PlanAsk.read(form);
        if (!form.isClean()) {
            visit.refuse(form, tried -> PlanScreens.plan(visit, tried));
            return;
        }
        Planning planning = visit.hall().planning();
        planning.startPlan(asked, visit.event().seq(), visit.plans().planning(asked, planning.pins()));
        visit.go(HERE);
    }

    private static void pin(Visit visit) {
        Form form = visit.form();
        Optional<TieId> tie = form.must(
                "pin-tie",
                form.read("pin-tie", "form.not-a-tie", TieId::of)
                        .filter(id -> visit.event().tie(id).isPresent()));
        Optional<RubberNo> rubber = form.read(
                "pin-rubber",
                "form.not-a-rubber",
                text -> RubberNo.parse(text).orElseThrow(IllegalArgumentException::new));
        Optional<LocalTime> start = form.must("pin-start", form.time("pin-start"));
        List<String> courts = courts(visit, form);
        if (!form.isClean()) {
            visit.refuse(form, tried -> PlanScreens.plan(visit, tried));
            return;
        }
        LocalTime end = visit.plans()
                .endOfPin(tie.orElseThrow(), rubber, start.orElseThrow(), courts.size(), PlanScreens.asked(visit));
        visit.hall()
                .planning()
                .pin(new Pin(tie.orElseThrow(), rubber, start.orElseThrow(), end, courts, Pin.Why.BY_HAND));
        visit.go(HERE + "#part-pins");
    }

    private static List<String> courts(Visit visit, Form form) {
        List<String> courts = List.of(form.mustText("pin-courts").split(",")).stream()
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .distinct()
                .toList();
        courts.stream()
                .filter(name -> visit.event().courts().stream()
                        .noneMatch(court -> court.name().equals(name)))
                .forEach(name -> form.fault(
                        Refusal.of("desk.no-such-court").with("court", name).at("pin-courts")));
        return courts;
    }

    private static void unpin(Visit visit) {
        Form form = visit.form();
        if (form.text("which").equals("all")) {
            visit.hall().planning().forgetPins();
        } else {
            form.number("which").ifPresent(visit.hall().planning()::unpin);
        }
        visit.go(HERE + "#part-pins");
    }

    private static void publish(Visit visit) {
        Form form = visit.form();
        Optional<Plan> plan = visit.hall()
                .planning()
                .plan()
                .filter(search -> Integer.toString(search.number()).equals(form.text("search")))
                .flatMap(Planning.Search::found)
                .flatMap(PlanScreens::usable);
        if (plan.isEmpty()) {
            form.fault(Refusal.of("form.plan-gone"));
        }
        String reason = form.text("reason");
        String by = form.text("by");
        visit.attempt(
                form,
                () -> (Decision) Publishing.of(plan.orElseThrow(), reason, by),
                "/plan",
                tried -> PlanScreens.plan(visit, tried));
    }
}
