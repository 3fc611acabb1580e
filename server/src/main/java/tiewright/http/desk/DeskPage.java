package tiewright.http.desk;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.desk.HallGoesOn;
import tiewright.event.SetUpFact;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.Answers;
import tiewright.http.views.DeskView;
import tiewright.http.visit.Cautions;
import tiewright.http.visit.DoNextViews;
import tiewright.http.visit.Door;
import tiewright.http.visit.LaptopNext;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.timetable.LateStep;
import tiewright.timetable.Lateness;
import tiewright.wording.Words;

/** The desk: courts and what can be pressed for each, what to do next, sheets, how the day runs. */
final class DeskPage implements Page {
    static final String HERE = "/desk";
    static final String GOES_ON = HERE + "/goes-on";

    @Override
    public void at(Routes routes) {
        routes.get(Door.DESK, HERE, visit -> visit.show(Screen.of("desk", visit.say("page-desk.desk"), view(visit))));
        routes.post(Door.DESK, GOES_ON, DeskPage::goOn);
    }

    /** Its time may have come, or somebody else pressed, while the desk was looked at: then there is nothing left to end. */
    private static void goOn(Visit visit) {
        VisibleEvent event = visit.event();
        if (event.order().stop(event.about(), event.now()).isEmpty()) {
            visit.go(HERE);
            return;
        }
        visit.attempt(
                visit.form(),
                HallGoesOn::new,
                HERE,
                tried -> Screen.of("desk", visit.say("page-desk.desk"), view(visit)));
    }

    private static DeskView view(Visit visit) {
        return new DeskView(
                new CourtBoard(visit).spots(),
                new DoNextViews(visit).list(),
                new SheetsIn(visit).groups(),
                new DayRun(visit).view(),
                late(visit),
                new DeskView.Here(visit.hall().address().url(), visit.visitor().sitting(), LaptopNext.copies(visit)),
                banner(visit.event()),
                Cautions.ofTheDesk(visit.words()));
    }

    /** Clocks of lateness; nobody is told that anything was lost, for nothing is. */
    private static List<String> late(Visit visit) {
        return visit.ask(Answers::new).late().stream()
                .flatMap(late -> visit.event().tie(late.tie()).map(tie -> late(visit, tie, late)).stream())
                .toList();
    }

    private static String late(Visit visit, Tie tie, Lateness.Late late) {
        String rubber = late.rubber()
                .map(no -> ", " + TieViews.rubberWithin(visit.words(), no))
                .orElse("");
        String named = tie.id() + " (" + new TieViews(visit.event()).title(tie) + ")" + rubber;
        return visit.words()
                        .sentence(
                                late.claimable() ? "page.late-claimable" : "page.late-running",
                                Map.of("tie", named, "clock", late.clock(), "since", late.claimableSince()))
                + ladder(visit, late.ladder());
    }

    /** What may be claimed from when on, where that is more than the one rubber. */
    private static String ladder(Visit visit, List<LateStep> ladder) {
        List<String> steps = ladder.stream()
                .map(step -> visit.say("page-desk.late-" + step.what(), "count", step.rubbers(), "since", step.since()))
                .toList();
        return ladder.size() == 1 ? "" : " " + visit.say("page-desk.late-ladder", "steps", steps);
    }

    private static String banner(VisibleEvent event) {
        Optional<SetUpFact.OpeningChosen> playing = event.opening().filter(SetUpFact.OpeningChosen::organiserIsCaptain);
        return playing.map(chosen -> chosen.neutral()
                        .map(name -> Words.say(event, "page-desk.organiser-plays-opened-by", "name", name))
                        .orElseGet(() -> Words.say(event, "page-desk.organiser-plays-opened-by-tool")))
                .orElse("");
    }
}
