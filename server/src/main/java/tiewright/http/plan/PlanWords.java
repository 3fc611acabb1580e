package tiewright.http.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.OrderOfPlay;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Chart;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.pieces.State;
import tiewright.http.views.PlanView;
import tiewright.http.visit.Changes;
import tiewright.http.visit.Charts;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.timetable.Assignment;
import tiewright.timetable.Cut;
import tiewright.timetable.Infeasible;
import tiewright.timetable.Pin;
import tiewright.timetable.Plan;
import tiewright.timetable.PlanCourt;
import tiewright.timetable.Reason;
import tiewright.wording.TimetableWords;
import tiewright.wording.Words;

/** Plans that are not published yet, in words, as a chart, and tie by tie with the reason of each start. */
final class PlanWords {
    private static final int MOST_BREACHES = 12;

    private final VisibleEvent event;
    private final TimetableWords words;

    PlanWords(Visit visit) {
        this.event = visit.event();
        this.words = new TimetableWords(visit.words());
    }

    String said(Reason reason) {
        return words.sentence(reason);
    }

    String cut(Cut cut) {
        return words.cut(cut);
    }

    List<String> impossible(Infeasible why) {
        List<String> lines = new ArrayList<>(List.of(said(why.because())));
        why.bound()
                .ifPresent(bound -> lines.add(Words.say(
                        event,
                        "page-plan.no-plan-can-end-before",
                        "finish",
                        HallClock.said(bound.finish()),
                        "slots",
                        bound.slots(),
                        "minutes",
                        bound.minutes(),
                        "because",
                        said(bound.because()))));
        return lines;
    }

    PlanView.Found found(State state, List<String> first, Optional<Plan> plan) {
        return found(state, first, plan, Optional.empty());
    }

    /** @param version under which the plan was published; empty while it is a draft */
    PlanView.Found found(State state, List<String> first, Optional<Plan> plan, Optional<Integer> version) {
        List<String> lines = new ArrayList<>(first);
        plan.ifPresent(one -> lines.addAll(lines(one)));
        return new PlanView.Found(
                state, lines, plan.map(one -> chart("draft", caption(one, version), one)), plan.map(this::table));
    }

    private String caption(Plan plan, Optional<Integer> version) {
        String finish = HallClock.said(plan.finish());
        return version.map(number ->
                        Words.say(event, "page-plan.published-version-ends-at", "version", number, "finish", finish))
                .orElseGet(() -> Words.say(event, "page-plan.draft-not-published-ends-at", "finish", finish));
    }

    /** End beside bound, the parts of the score, breaches, seed. */
    List<String> lines(Plan plan) {
        List<String> lines = new ArrayList<>();
        lines.add(ends(plan));
        plan.explained().stream().map(this::said).forEach(lines::add);
        plan.breaches().stream().limit(MOST_BREACHES).map(this::said).forEach(lines::add);
        plan.expectedDeciders(tie -> event.tie(tie).map(event::progress)).ifPresent(one -> lines.add(said(one)));
        lines.add(Words.say(event, "page-plan.seed", "seed", plan.seed()));
        return lines;
    }

    private String ends(Plan plan) {
        return Words.say(
                event,
                "page-plan.ends-and-bound",
                "finish",
                HallClock.said(plan.finish()),
                "slots",
                plan.slots(),
                "minutes",
                plan.problem().slotMinutes(),
                "start",
                HallClock.said(plan.problem().start()),
                "bound",
                HallClock.said(plan.bound().finish()),
                "at",
                plan.endsAtTheBound() ? "bound" : "later",
                "because",
                said(plan.bound().because()));
    }

    Chart chart(String id, Plan plan) {
        return chart(id, caption(plan, Optional.empty()), plan);
    }

    private Chart chart(String id, String caption, Plan plan) {
        List<Charts.At> all = new ArrayList<>();
        for (Assignment assignment : plan.assignments()) {
            String mark = assignment.pinned().map(this::pinned).orElse("");
            assignment
                    .lines(plan.problem().slotMinutes())
                    .forEach(line -> all.add(new Charts.At(
                            line.start(),
                            line.court(),
                            new Chart.Entry(
                                    shortly(line.tie()),
                                    line.tie() + " " + TieViews.rubberWithin(Words.of(event), line.rubber()),
                                    "",
                                    mark))));
        }
        return Charts.of(
                new Charts.Named(Words.of(event), id, caption),
                plan.problem().courts().stream().map(PlanCourt::name).toList(),
                all);
    }

    private String pinned(Pin.Why why) {
        return switch (why) {
            case BY_HAND -> Words.say(event, "page-plan.mark-pinned");
            case IN_PLAY -> Words.say(event, "page-plan.mark-in-play");
            case FROZEN, KEPT -> Words.say(event, "page-plan.mark-stays");
        };
    }

    private String shortly(TieId tie) {
        return event.tie(tie).map(one -> Charts.shortly(Words.of(event), one)).orElse(tie.code());
    }

    /** Each tie with its start and, to open, why it is not earlier. */
    ReasonTable table(Plan plan) {
        List<ReasonTable.Row> rows = plan.assignments().stream()
                .map(Assignment::tie)
                .distinct()
                .flatMap(tie -> event.tie(tie).stream())
                .map(tie -> row(plan, tie))
                .toList();
        return new ReasonTable(
                "draft-ties",
                Words.say(event, "page-plan.tie-by-tie"),
                List.of(
                        new ReasonTable.Column(Words.say(event, "page-plan.start"), false),
                        new ReasonTable.Column(Words.say(event, "page-plan.tie"), false),
                        new ReasonTable.Column(Words.say(event, "page-plan.courts"), false),
                        new ReasonTable.Column(Words.say(event, "page-plan.now-published"), false)),
                rows,
                Words.say(event, "page-plan.open-a-line-to-read"));
    }

    private ReasonTable.Row row(Plan plan, Tie tie) {
        TieViews views = new TieViews(event);
        String start = plan.start(tie.id()).map(HallClock::said).orElse("");
        String published = Changes.times(
                Words.of(event),
                new OrderOfPlay.Times(tie.start(), event.order().courts(tie)),
                Words.say(event, "page-plan.nothing-yet"));
        return new ReasonTable.Row(
                List.of(
                        ReasonTable.Cell.of(start),
                        ReasonTable.Cell.of(tie.id() + ": " + views.title(tie)),
                        ReasonTable.Cell.of(where(plan, tie)),
                        ReasonTable.Cell.of(published)),
                Words.say(event, "page-plan.why-at", "start", start),
                plan.why(tie.id()).stream().map(this::said).toList(),
                "");
    }

    private String where(Plan plan, Tie tie) {
        String courts = String.join(
                ", ",
                plan.of(tie.id()).stream()
                        .flatMap(one -> one.courts().stream())
                        .distinct()
                        .toList());
        List<String> umpires = plan.of(tie.id()).stream()
                .flatMap(one -> one.umpires().stream())
                .distinct()
                .map(event::clubName)
                .toList();
        return courts
                + (umpires.isEmpty()
                        ? ""
                        : Words.say(event, "page-plan.umpires", "umpires", String.join(", ", umpires)));
    }
}
