package tiewright.http.captain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.ClubAnswers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.Progress;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.pieces.SelectField;
import tiewright.http.views.ActionForm;
import tiewright.http.views.DayPlanView;
import tiewright.http.visit.Cautions;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.lineup.club.PlayingDay;
import tiewright.lineup.day.DayPlan;
import tiewright.lineup.day.DayProblem;
import tiewright.wording.DayWords;
import tiewright.wording.LineupWords;

/** The page of a club's day: what to plan for, how far the search is, and what it found. */
final class DayPlanScreen {
    private final Visit visit;
    private final VisibleEvent event;
    private final Optional<DayPlans.Job> job;

    DayPlanScreen(Visit visit, Optional<DayPlans.Job> job) {
        this.visit = visit;
        this.event = visit.event();
        this.job = job;
    }

    Screen screen(Tried tried) {
        boolean done = job.filter(DayPlans.Job::isDone).isPresent();
        if (job.isPresent() && !done) {
            visit.ctx().header("Refresh", "2");
        }
        return Screen.of(
                "dayPlan",
                visit.say("page-captain.the-day-so-far-and", "club", event.clubName(visit.club())),
                view(tried, done));
    }

    private DayPlanView view(Tried tried, boolean done) {
        PlayingDay day = visit.ask(ClubAnswers::new).playingDay();
        Optional<DayPlan> plan = job.filter(one -> done).flatMap(DayPlans.Job::result);
        return new DayPlanView(
                tried.refusal(),
                HurtFirst.before(
                        visit,
                        HurtFirst.marked(visit),
                        Cautions.ofAdvice(visit.words()),
                        visit.say("page-captain.it-plans-with-the-pairs")),
                form(tried),
                job.filter(one -> !done).map(this::progress),
                job.filter(one -> done).map(one -> notes(one, plan, day)).orElse(List.of()),
                plan.map(found -> found.ties().stream().map(this::tie).toList()).orElse(List.of()),
                DayPromises.view(visit, day, tried),
                players(day, plan));
    }

    private Progress progress(DayPlans.Job job) {
        int done = job.budget().stop().stepsDone();
        return new Progress(
                "day-plan",
                visit.say("page-captain.looking-for-a-plan"),
                visit.say(
                        "page-captain.plans-tried",
                        "done",
                        done,
                        "most",
                        job.budget().steps()),
                done,
                job.budget().steps(),
                DayPlanPage.HERE + "/stop",
                Button.stop(visit.say("page-captain.stop-and-show-the-best")));
    }

    private List<String> notes(DayPlans.Job job, Optional<DayPlan> found, PlayingDay day) {
        if (job.brokeOff()) {
            return List.of(visit.say("page-captain.the-search-broke-off-and"));
        }
        if (found.isEmpty()) {
            return List.of(visit.say("page-captain.there-is-nothing-to-plan"));
        }
        DayWords words = new DayWords(visit.words());
        List<String> notes = new ArrayList<>(words.plan(found.get()));
        if (visit.event().seq() != job.seq()) {
            notes.add(visit.say(
                    "page-captain.made-at-something-has-happened",
                    "asked",
                    HallClock.said(visit.event().clock(job.asked()))));
        }
        if (!job.wanted().promised().equals(day.promised())) {
            notes.add(visit.say("page-captain.you-promised-something-else-since"));
        }
        return notes;
    }

    private DayPlanView.Tie tie(DayPlan.Planned planned) {
        Tie tie = event.tie(planned.tie()).orElseThrow();
        List<DayPlanView.Line> lines =
                BlindOrders.drawn(visit, planned.tie(), planned.sheet()).pairs().entrySet().stream()
                        .map(rubber -> new DayPlanView.Line(
                                TieViews.rubber(visit.words(), rubber.getKey()),
                                rubber.getValue().map(pair -> names(pair)).orElse(visit.say("page-captain.no-pair"))))
                        .toList();
        return new DayPlanView.Tie(
                new TieViews(event).title(tie),
                "/captain/proposal/" + tie.id(),
                visit.say(
                        "page-captain.to-win-with-everybody-rested",
                        "worth",
                        LineupWords.percent(planned.worth()),
                        "cost",
                        LineupWords.points(planned.cost())),
                lines);
    }

    private String names(Pair pair) {
        return visit.say("page-captain.and", "first", event.name(pair.first()), "second", event.name(pair.second()));
    }

    private ActionForm form(Tried tried) {
        DayProblem.Wanted wanted = job.map(DayPlans.Job::wanted).orElse(DayProblem.Wanted.CHANCES_ONLY);
        return ActionForm.of(
                        "plan",
                        DayPlanPage.HERE,
                        visit.say("page-captain.plan-the-ties-ahead"),
                        Button.main(visit.say("page-captain.plan-the-day")))
                .saying(visit.say("page-captain.your-wishes-count"))
                .asking(
                        counts(
                                        "floor",
                                        visit.say("page-captain.rubbers-for-everybody-ahead"),
                                        visit.say("page-captain.no-floor"),
                                        wanted.floor())
                                .withError(tried.error("floor")),
                        counts(
                                        "row",
                                        visit.say("page-captain.ties-in-a-row"),
                                        visit.say("page-captain.any-number"),
                                        wanted.mostInARow())
                                .withError(tried.error("row")),
                        learning(wanted));
    }

    private SelectField learning(DayProblem.Wanted wanted) {
        return SelectField.of(
                "learn",
                visit.say("page-captain.where-nothing-hangs"),
                visit.say("page-captain.play-the-strongest"),
                List.of(Option.of("yes", visit.say("page-captain.try-pairs"), wanted.learning())));
    }

    private static SelectField counts(String id, String label, String nothing, int chosen) {
        return SelectField.of(
                id,
                label,
                nothing,
                IntStream.rangeClosed(1, 5)
                        .mapToObj(count -> Option.of(Integer.toString(count), Integer.toString(count), count == chosen))
                        .toList());
    }

    private ReasonTable players(PlayingDay day, Optional<DayPlan> plan) {
        List<ReasonTable.Column> columns = new ArrayList<>(List.of(
                new ReasonTable.Column(visit.say("page-captain.player"), false),
                new ReasonTable.Column(visit.say("page-captain.so-far"), true),
                new ReasonTable.Column(visit.say("page-captain.planned-2"), true),
                new ReasonTable.Column(visit.say("page-captain.in-all"), true)));
        if (day.isAnythingPromised()) {
            columns.add(new ReasonTable.Column(visit.say("page-captain.promised"), true));
        }
        return new ReasonTable(
                "day-players",
                visit.say("page-captain.rubbers-so-far-and-ahead"),
                columns,
                day.lines().stream()
                        .map(line -> row(line, columns.size(), plan))
                        .toList(),
                visit.say("page-captain.so-far-played-on-court"));
    }

    private ReasonTable.Row row(PlayingDay.Line line, int columns, Optional<DayPlan> plan) {
        int byTheEnd = plan.map(found -> found.rubbers().getOrDefault(line.player(), line.had()))
                .orElse(line.had());
        List<String> why = plan.map(found -> planned(found, line.player())).orElse(List.of());
        List<String> cells = List.of(
                event.name(line.player()),
                Integer.toString(line.had()),
                plan.isEmpty()
                        ? visit.say("page-captain.not-planned")
                        : Integer.toString(Math.max(0, byTheEnd - line.had())),
                Integer.toString(byTheEnd),
                line.promised() == 0 ? "" : Integer.toString(line.promised()));
        return new ReasonTable.Row(
                cells.stream().limit(columns).map(ReasonTable.Cell::of).toList(),
                visit.say("page-captain.which"),
                why.isEmpty() ? List.of(visit.say("page-captain.nothing-planned")) : why,
                "");
    }

    private List<String> planned(DayPlan plan, PlayerId player) {
        return plan.ties().stream()
                .filter(tie -> tie.sheet().players().contains(player))
                .flatMap(tie -> event.tie(tie.tie()).stream())
                .map(tie -> visit.say("page-captain.planned", "tie", new TieViews(event).title(tie)))
                .toList();
    }
}
