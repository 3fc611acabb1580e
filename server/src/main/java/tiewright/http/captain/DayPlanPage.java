package tiewright.http.captain;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tiewright.event.ClubId;
import tiewright.event.Pair;
import tiewright.event.Refusal;
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
import tiewright.http.visit.Background;
import tiewright.http.visit.Cautions;
import tiewright.http.visit.Door;
import tiewright.http.visit.Form;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.lineup.Budget;
import tiewright.lineup.club.PlayingDay;
import tiewright.lineup.day.DayPlan;
import tiewright.lineup.day.DayProblem;
import tiewright.wording.DayWords;
import tiewright.wording.LineupWords;
import tiewright.wording.Words;

/** The day of a club so far and ahead: playing time, and a sheet planned for every tie to come. Planned in the background. */
final class DayPlanPage implements Page, AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(DayPlanPage.class);
    private static final String HERE = "/captain/day";
    private static final Duration MOST_TIME = Duration.ofSeconds(5);
    private static final int MOST = 12;

    private final Map<ClubId, Job> jobs = new ConcurrentHashMap<>();
    private final Background searches = new Background("plan of a day");

    /** A plan that is being looked for, or was found. */
    private record Job(
            DayProblem.Wanted wanted,
            Instant asked,
            long seq,
            Budget budget,
            CompletableFuture<Optional<DayPlan>> plan) {}

    @Override
    public void at(Routes routes) {
        routes.get(Door.NOTES, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.NOTES, HERE, this::plan);
        routes.post(Door.NOTES, HERE + "/promise", this::promise);
        routes.post(Door.NOTES, HERE + "/stop", visit -> {
            Optional.ofNullable(jobs.get(visit.club()))
                    .ifPresent(job -> job.budget().stop().press());
            visit.go(HERE);
        });
    }

    private void promise(Visit visit) {
        DayPromises.promise(visit, tried -> screen(visit, tried));
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
        DayProblem.Wanted wanted = new DayProblem.Wanted(
                floor,
                visit.ask(ClubAnswers::new).playingDay().promised(),
                inARow,
                form.text("learn").equals("yes"));
        Optional.ofNullable(jobs.get(visit.club()))
                .ifPresent(before -> before.budget().stop().press());
        Budget budget = Budget.ofSteps(DayPlan.USUAL_STEPS, 1).within(MOST_TIME);
        Optional<DayProblem> day = visit.ask(ClubAnswers::new).dayAhead(wanted, 1);
        CompletableFuture<Optional<DayPlan>> plan = day.isEmpty()
                ? CompletableFuture.completedFuture(Optional.empty())
                : searches.begin(budget.stop(), () -> DayPlan.of(day.get(), budget))
                        .whenComplete((found, failure) -> {
                            if (failure != null) {
                                LOG.error("A search for the plan of a day broke off", failure);
                            }
                        });
        jobs.put(
                visit.club(), new Job(wanted, visit.event().now(), visit.event().seq(), budget, plan));
        visit.go(HERE);
    }

    @Override
    public void close() {
        searches.close();
    }

    /** Waits until the plan that a club asked for is found; at once where it asked for none. */
    void await(ClubId club) {
        Optional.ofNullable(jobs.get(club)).ifPresent(DayPlanPage::result);
    }

    private Screen screen(Visit visit, Tried tried) {
        Optional<Job> job = Optional.ofNullable(jobs.get(visit.club()));
        boolean done = job.filter(one -> one.plan().isDone()).isPresent();
        Optional<DayPlan> plan = done ? result(job.get()) : Optional.empty();
        PlayingDay day = visit.ask(ClubAnswers::new).playingDay();
        if (job.isPresent() && !done) {
            visit.ctx().header("Refresh", "2");
        }
        return Screen.of(
                "dayPlan",
                visit.words()
                        .say(
                                "page-captain.the-day-so-far-and",
                                "club",
                                visit.event().clubName(visit.club())),
                new DayPlanView(
                        tried.refusal(),
                        HurtFirst.before(
                                visit,
                                HurtFirst.marked(visit),
                                Cautions.OF_ADVICE,
                                visit.words().say("page-captain.it-plans-with-the-pairs")),
                        form(job, tried),
                        job.filter(one -> !done).map(DayPlanPage::progress),
                        job.filter(one -> done)
                                .map(one -> notes(visit, one, plan, day))
                                .orElse(List.of()),
                        plan.map(found -> found.ties().stream()
                                        .map(tie -> tie(visit, tie))
                                        .toList())
                                .orElse(List.of()),
                        DayPromises.view(visit, day, tried),
                        players(visit.event(), day, plan)));
    }

    private static Optional<DayPlan> result(Job job) {
        return job.plan().exceptionally(failure -> Optional.empty()).join();
    }

    private static Progress progress(Job job) {
        int done = job.budget().stop().stepsDone();
        return new Progress(
                "day-plan",
                "Looking for a plan",
                done + " of at most " + job.budget().steps()
                        + " plans tried, five seconds at most. The page comes back by itself.",
                done,
                job.budget().steps(),
                HERE + "/stop",
                Button.stop("Stop and show the best so far"));
    }

    private static List<String> notes(Visit visit, Job job, Optional<DayPlan> found, PlayingDay day) {
        if (job.plan().isCompletedExceptionally()) {
            return List.of(visit.words().say("page-captain.the-search-broke-off-and"));
        }
        if (found.isEmpty()) {
            return List.of(visit.words().say("page-captain.there-is-nothing-to-plan"));
        }
        DayWords words = new DayWords(visit.words());
        List<String> notes = new ArrayList<>(words.plan(found.get()));
        if (visit.event().seq() != job.seq()) {
            notes.add(visit.words()
                    .say(
                            "page-captain.made-at-something-has-happened",
                            "asked",
                            HallClock.said(visit.event().clock(job.asked()))));
        }
        if (!job.wanted().promised().equals(day.promised())) {
            notes.add(visit.words().say("page-captain.you-promised-something-else-since"));
        }
        return notes;
    }

    private static DayPlanView.Tie tie(Visit visit, DayPlan.Planned planned) {
        VisibleEvent event = visit.event();
        Tie tie = event.tie(planned.tie()).orElseThrow();
        List<DayPlanView.Line> lines =
                BlindOrders.drawn(visit, planned.tie(), planned.sheet()).pairs().entrySet().stream()
                        .map(rubber -> new DayPlanView.Line(
                                TieViews.rubber(rubber.getKey()),
                                rubber.getValue()
                                        .map(pair -> names(event, pair))
                                        .orElse(Words.of(event).say("page-captain.no-pair"))))
                        .toList();
        return new DayPlanView.Tie(
                new TieViews(event).title(tie),
                "/captain/proposal/" + tie.id(),
                Words.of(event)
                        .say(
                                "page-captain.to-win-with-everybody-rested",
                                "worth",
                                LineupWords.percent(planned.worth()),
                                "cost",
                                LineupWords.points(planned.cost())),
                lines);
    }

    private static String names(VisibleEvent event, Pair pair) {
        return Words.of(event)
                .say("page-captain.and", "first", event.name(pair.first()), "second", event.name(pair.second()));
    }

    private static ActionForm form(Optional<Job> job, Tried tried) {
        DayProblem.Wanted wanted = job.map(Job::wanted).orElse(DayProblem.Wanted.CHANCES_ONLY);
        return ActionForm.of("plan", HERE, "Plan the ties ahead", Button.main("Plan the day"))
                .saying(
                        "Must play, must rest, wishes about pairs and what you promised to single players count as you noted them.")
                .asking(
                        counts("floor", "Rubbers for everybody by the end of these ties", "No floor", wanted.floor())
                                .withError(tried.error("floor")),
                        counts("row", "Ties in a row at most", "Any number", wanted.mostInARow())
                                .withError(tried.error("row")),
                        SelectField.of(
                                "learn",
                                "Where nothing hangs on a tie",
                                "Play the strongest",
                                List.of(Option.of("yes", "Try pairs that are not known well", wanted.learning()))));
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

    private static ReasonTable players(VisibleEvent event, PlayingDay day, Optional<DayPlan> plan) {
        List<ReasonTable.Column> columns = new ArrayList<>(List.of(
                new ReasonTable.Column(Words.of(event).say("page-captain.player"), false),
                new ReasonTable.Column(Words.of(event).say("page-captain.so-far"), true),
                new ReasonTable.Column(Words.of(event).say("page-captain.planned-2"), true),
                new ReasonTable.Column(Words.of(event).say("page-captain.in-all"), true)));
        if (day.isAnythingPromised()) {
            columns.add(new ReasonTable.Column(Words.of(event).say("page-captain.promised"), true));
        }
        return new ReasonTable(
                "day-players",
                Words.of(event).say("page-captain.rubbers-so-far-and-ahead"),
                columns,
                day.lines().stream()
                        .map(line -> row(event, line, columns.size(), plan))
                        .toList(),
                Words.of(event).say("page-captain.so-far-played-on-court"));
    }

    private static ReasonTable.Row row(VisibleEvent event, PlayingDay.Line line, int columns, Optional<DayPlan> plan) {
        int byTheEnd = plan.map(found -> found.rubbers().getOrDefault(line.player(), line.had()))
                .orElse(line.had());
        List<String> why = plan.map(found -> found.ties().stream()
                        .filter(tie -> tie.sheet().players().contains(line.player()))
                        .map(tie -> Words.of(event)
                                .say(
                                        "page-captain.planned",
                                        "tie",
                                        new TieViews(event)
                                                .title(event.tie(tie.tie()).orElseThrow())))
                        .toList())
                .orElse(List.of());
        List<String> cells = List.of(
                event.name(line.player()),
                Integer.toString(line.had()),
                plan.isEmpty()
                        ? Words.of(event).say("page-captain.not-planned")
                        : Integer.toString(Math.max(0, byTheEnd - line.had())),
                Integer.toString(byTheEnd),
                line.promised() == 0 ? "" : Integer.toString(line.promised()));
        return new ReasonTable.Row(
                cells.stream().limit(columns).map(ReasonTable.Cell::of).toList(),
                Words.of(event).say("page-captain.which"),
                why.isEmpty() ? List.of(Words.of(event).say("page-captain.nothing-planned")) : why,
                "");
    }
}
