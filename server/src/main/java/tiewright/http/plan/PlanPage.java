package tiewright.http.plan;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import tiewright.event.Decision;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;
import tiewright.event.TieId;
import tiewright.http.answers.PlanAnswers;
import tiewright.http.visit.Addresses;
import tiewright.http.visit.Door;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.timetable.Pin;
import tiewright.timetable.Plan;
import tiewright.timetable.PlanAsked;

/** The organiser makes an order of play, looks at it, pins what must stay, and publishes it with one press. */
final class PlanPage implements Page {
    static final String HERE = Addresses.PLAN;
    static final String MAKE = "make";
    static final String PIN = "pin";
    static final String PUBLISH = "publish";
    private static final String REFRESH_SECONDS = "2";

    private final Planning planning;
    private final PlanScreens screens;

    PlanPage(Planning planning) {
        this.planning = planning;
        this.screens = new PlanScreens(planning);
    }

    @Override
    public void at(Routes routes) {
        routes.get(Door.OFFICIALS, HERE, this::look);
        routes.post(Door.OFFICIALS, HERE + "/" + MAKE, this::make);
        routes.post(Door.OFFICIALS, HERE + "/stop", visit -> {
            planning.plan().ifPresent(search -> search.stop().press());
            visit.go(HERE);
        });
        routes.post(Door.OFFICIALS, HERE + "/" + PIN, this::pin);
        routes.post(Door.OFFICIALS, HERE + "/unpin", this::unpin);
        routes.post(Door.OFFICIALS, HERE + "/" + PUBLISH, this::publish);
    }

    /** While a search goes on the page comes again by itself, also without script. */
    private void look(Visit visit) {
        if (planning.plan().filter(Planning.Search::isRunning).isPresent()) {
            visit.ctx().header("Refresh", REFRESH_SECONDS);
        }
        visit.show(screens.plan(visit, Tried.NOTHING));
    }

    private void make(Visit visit) {
        Form form = visit.form();
        PlanAsk asked = PlanAsk.read(form);
        if (!form.isClean()) {
            visit.refuse(form, tried -> screens.plan(visit, tried));
            return;
        }
        PlanAsked wanted = asked.asked(visit.event().conditions().freezeMinutes(), planning.pins());
        planning.startPlan(
                asked, visit.event().seq(), visit.ask(PlanAnswers::new).planning(wanted));
        visit.go(HERE);
    }

    private void pin(Visit visit) {
        Form form = visit.form();
        Optional<TieId> tie = form.must(
                "pin-tie",
                form.read("pin-tie", "form.not-a-tie", TieId::of)
                        .filter(id -> visit.event().tie(id).isPresent()));
        Optional<RubberNo> rubber = rubber(form);
        Optional<LocalTime> start = form.must("pin-start", form.time("pin-start"));
        List<String> courts = courts(visit, form);
        if (!form.isClean()) {
            visit.refuse(form, tried -> screens.plan(visit, tried));
            return;
        }
        long minutes = visit.ask(PlanAnswers::new)
                .minutes(
                        tie.orElseThrow(),
                        rubber,
                        courts.size(),
                        screens.asked(visit).asked(0, List.of()));
        LocalTime end = start.orElseThrow().plusMinutes(minutes);
        planning.pin(new Pin(tie.orElseThrow(), rubber, start.orElseThrow(), end, courts, Pin.Why.BY_HAND));
        visit.go(HERE + "#part-pins");
    }

    private static Optional<RubberNo> rubber(Form form) {
        return form.read(
                "pin-rubber",
                "form.not-a-rubber",
                text -> RubberNo.parse(text).orElseThrow(IllegalArgumentException::new));
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

    private void unpin(Visit visit) {
        Form form = visit.form();
        if (form.text("which").equals("all")) {
            planning.forgetPins();
        } else {
            form.number("which").ifPresent(planning::unpin);
        }
        visit.go(HERE + "#part-pins");
    }

    private void publish(Visit visit) {
        Form form = visit.form();
        Optional<Plan> plan = planning.plan()
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
                () -> (Decision) Publishing.of(plan.orElseThrow(), reason, by)
                        .tellingBefore(Publishing.told(form, visit.event())),
                "/plan",
                tried -> screens.plan(visit, tried));
    }
}
