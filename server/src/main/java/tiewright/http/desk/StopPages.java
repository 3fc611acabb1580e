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
        routes.get(Door.COURT, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.COURT, HERE, visit -> {
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
    static ActionForm press(Tie tie, RubberNo rubber) {
        String id = "stop-" + AtFields.safe(tie.id().code()) + "-" + rubber;
        String which = TieViews.rubber(rubber).toLowerCase(java.util.Locale.ROOT);
        return ActionForm.of(
                id,
                path(tie, rubber),
                "",
                tie.stopped().containsKey(rubber)
                        ? Button.other("Look at the clock of " + which)
                        : Button.stop("Somebody is hurt: stop " + which));
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
            throw new ClosedDoor(Door.COURT);
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
                .orElseGet(() -> WorkView.Section.of("clock", "The clock", "This rubber is not stopped.")));
        clock.ifPresent(one -> sections.addAll(next(visit, tie, rubber)));
        String title = (clock.isPresent() ? "Play is stopped: " : "Somebody is hurt: ") + views.title(tie) + ", "
                + TieViews.rubber(rubber);
        return Screen.of(
                "work",
                title,
                new WorkView(tried.refusal(), back(visit, tie), Cautions.WHEN_SOMEBODY_IS_HURT, sections));
    }

    private static NavLink back(Visit visit, Tie tie) {
        return visit.role() == Role.CAPTAIN
                ? new NavLink("/tie/" + tie.id(), "Back to the tie", false)
                : new NavLink("/desk/tie/" + tie.id(), "Back to the tie", false);
    }

    private static WorkView.Section help(Visit visit, Tie tie, RubberNo rubber) {
        String court = Optional.ofNullable(tie.calls().get(rubber))
                .map(Tie.Call::court)
                .or(tie::court)
                .map(name -> "Say aloud: \"Court " + name + ", somebody is hurt.\"")
                .orElse("This rubber was called to no court: say aloud where you stand.");
        return WorkView.Section.of("help", "Help first")
                .saying(List.of(
                        court,
                        given(
                                "First aid: ",
                                visit.event().safety().firstAid(),
                                "Where first aid is was not entered. Ask the desk at once."),
                        given(
                                "Defibrillator: ",
                                visit.event().safety().defibrillator(),
                                "Where a defibrillator is was not entered. Ask the desk at once."),
                        given(
                                "Emergency number: ",
                                visit.event().safety().emergency(),
                                "No emergency number was entered. Call the one of this country.")));
    }

    private static String given(String label, String value, String otherwise) {
        return value.isEmpty() ? otherwise : label + value;
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
        return WorkView.Section.of("clock", "The clock", visit.words().sentence(code, data));
    }

    private static List<WorkView.Section> next(Visit visit, Tie tie, RubberNo rubber) {
        List<WorkView.Section> sections = new ArrayList<>();
        List<String> doors = tiewright.sheet.Door.open(visit.event().conditions()).stream()
                .map(tiewright.sheet.Door::code)
                .toList();
        boolean free = doors.contains("substitution");
        WorkView.Section ways = WorkView.Section.of(
                "next",
                "What can follow",
                "Play goes on: the desk says so here, or the card is entered.",
                "The pair gives up: enter the card with the points as they stand and \"retired\". It then counts as the conditions say.",
                free
                        ? "Another pair plays on: these conditions let a substitute come in; the desk changes the pair on the page of the tie."
                        : "Another pair: under these conditions a pair is changed only before its rubber begins.");
        sections.add(
                visit.role() == Role.CAPTAIN
                        ? ways
                        : ways.with(new WorkView.WorkForm(
                                "on", path(tie, rubber) + "/on", List.of(), List.of(Button.other("Play goes on")))));
        sections.add(HurtPage.marking(visit, tie));
        return sections;
    }
}
