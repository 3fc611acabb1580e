package tiewright.http.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.desk.MedicalClock;
import tiewright.desk.ResumePlay;
import tiewright.desk.StopPlay;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.NavLink;
import tiewright.http.views.ActionForm;
import tiewright.http.views.WorkView;
import tiewright.http.visit.AtFields;
import tiewright.http.visit.Cautions;
import tiewright.http.visit.ClosedDoor;
import tiewright.http.visit.Door;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;

/** Somebody is hurt or ill: one press stops the rubber and its clock; then what to say, where help is, what can follow. */
final class StopPages implements Page {
    private static final String HERE = "/stop/{tie}/{rubber}";

    @Override
    public void at(Routes routes) {
        routes.get(Door.STOP, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.STOP, HERE, visit -> {
            Tie tie = tie(visit);
            RubberNo rubber = visit.rubber();
            if (tie.stopped().containsKey(rubber)) {
                visit.go(path(tie, rubber)); // pressed by two people at once: both come to the clock
                return;
            }
            visit.attempt(
                    visit.form(),
                    () -> new StopPlay(tie.id(), rubber),
                    path(tie, rubber),
                    tried -> screen(visit, tried));
        });
        routes.post(Door.DESK, HERE + "/on", visit -> {
            Tie tie = tie(visit);
            visit.attempt(
                    visit.form(),
                    () -> new ResumePlay(tie.id(), visit.rubber()),
                    "/desk/tie/" + tie.id(),
                    tried -> screen(visit, tried));
        });
    }

    static String path(Tie tie, RubberNo rubber) {
        return "/stop/" + tie.id() + "/" + rubber;
    }

    /** The one press, for a rubber that may be in play. */
    static ActionForm press(Visit visit, Tie tie, RubberNo rubber) {
        String id = "stop-" + AtFields.safe(tie.id().code()) + "-" + rubber;
        boolean stopped = tie.stopped().containsKey(rubber);
        String code = stopped
                ? rubber.isDecider() ? "page-desk.clock-of-decider" : "page-desk.clock-of-rubber"
                : rubber.isDecider() ? "page-desk.stop-decider" : "page-desk.stop-rubber";
        String words = visit.say(code, "rubber", rubber);
        return ActionForm.of(id, path(tie, rubber), "", stopped ? Button.other(words) : Button.stop(words));
    }

    /** The rubbers of a tie that can be stopped or stand still. */
    static List<RubberNo> stoppable(VisibleEvent event, Tie tie) {
        return event.progress(tie).left().stream()
                .filter(tie.opened()::containsKey)
                .toList();
    }

    private static Tie tie(Visit visit) {
        Tie tie = visit.tie();
        if (visit.role() == Role.CAPTAIN && !tie.has(visit.club())) {
            throw new ClosedDoor(Door.STOP);
        }
        return tie;
    }

    private static Screen screen(Visit visit, Tried tried) {
        Tie tie = tie(visit);
        RubberNo rubber = visit.rubber();
        TieViews views = new TieViews(visit.event());
        Optional<MedicalClock> clock = MedicalClock.of(tie, visit.event().conditions()).stream()
                .filter(one -> one.rubber().equals(rubber))
                .findFirst();
        List<WorkView.Section> sections = new ArrayList<>();
        sections.add(help(visit, tie, rubber));
        sections.add(clock.map(one -> clock(visit, one))
                .orElseGet(() -> WorkView.Section.of(
                        "clock", visit.say("page-desk.the-clock"), visit.say("page-desk.this-rubber-is-not-stopped"))));
        clock.ifPresent(one -> sections.addAll(next(visit, tie, rubber)));
        String title = visit.say(
                clock.isPresent() ? "page-desk.play-is-stopped-in" : "page-desk.somebody-is-hurt-in",
                "tie",
                views.title(tie),
                "rubber",
                TieViews.rubberWithin(visit.words(), rubber));
        return Screen.of(
                "work",
                title,
                new WorkView(tried.refusal(), back(visit, tie), Cautions.whenSomebodyIsHurt(visit.words()), sections));
    }

    private static NavLink back(Visit visit, Tie tie) {
        String above =
                switch (visit.role()) {
                    case CAPTAIN -> "/tie/";
                    case VOLUNTEER -> "/cards/";
                    case PUBLIC, PLAYER, DESK, ORGANISER, REFEREE -> "/desk/tie/";
                };
        return new NavLink(above + tie.id(), visit.say("page-desk.back-to-the-tie"), false);
    }

    private static WorkView.Section help(Visit visit, Tie tie, RubberNo rubber) {
        String court = Optional.ofNullable(tie.calls().get(rubber))
                .map(Tie.Call::court)
                .or(tie::court)
                .map(name -> visit.say("page-desk.say-aloud-court-somebody-is", "value", name))
                .orElse(visit.say("page-desk.this-rubber-was-called-to"));
        List<String> lines = new ArrayList<>(List.of(court));
        lines.addAll(HelpAtHand.lines(visit));
        return WorkView.Section.of("help", visit.say("page-desk.help-first")).saying(lines);
    }

    private static WorkView.Section clock(Visit visit, MedicalClock clock) {
        VisibleEvent event = visit.event();
        Map<String, Object> data = Map.of("since", clock.since(), "warns", clock.warnsAt(), "ends", clock.endsAt());
        String code =
                switch (clock.state(event.now())) {
                    case RUNS -> "page.medical-runs";
                    case WARNS -> "page.medical-warns";
                    case OVER -> "page.medical-over";
                };
        return WorkView.Section.of(
                "clock", visit.say("page-desk.the-clock"), visit.words().sentence(code, data));
    }

    private static List<WorkView.Section> next(Visit visit, Tie tie, RubberNo rubber) {
        List<WorkView.Section> sections = new ArrayList<>();
        WorkView.Section ways = ways(visit);
        sections.add(
                !Door.DESK.opensFor(visit.role())
                        ? ways
                        : ways.with(new WorkView.WorkForm(
                                "on",
                                path(tie, rubber) + "/on",
                                List.of(),
                                List.of(Button.other(visit.say("page-desk.play-goes-on"))))));
        if (Door.COURT.opensFor(visit.role())) {
            sections.add(HurtPage.marking(visit, tie));
        }
        return sections;
    }

    private static WorkView.Section ways(Visit visit) {
        List<String> doors = tiewright.sheet.Door.open(visit.event().conditions()).stream()
                .map(tiewright.sheet.Door::code)
                .toList();
        boolean free = doors.contains("substitution");
        return WorkView.Section.of(
                "next",
                visit.say("page-desk.what-can-follow"),
                visit.say("page-desk.play-goes-on-the-desk"),
                visit.say("page-desk.the-pair-gives-up-enter"),
                free
                        ? visit.say("page-desk.another-pair-plays-on-these")
                        : visit.say("page-desk.another-pair-under-these-conditions"));
    }
}
