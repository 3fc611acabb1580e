package tiewright.http.plan;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import tiewright.event.Court;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.http.answers.Answers;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.TextOrder;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.picture.DayPicture;
import tiewright.picture.DayPicture.Block;
import tiewright.picture.DayPicture.Look;
import tiewright.timetable.Assignment;
import tiewright.timetable.Plan;

/** Where each tie is published and where a plan would put it: both on one picture of the day. */
final class OldAndNew {
    private final Visit visit;
    private final TieViews views;
    private final Plan plan;
    private final int rubberMinutes;

    OldAndNew(Visit visit, Plan plan) {
        this.visit = visit;
        this.views = new TieViews(visit.event());
        this.plan = plan;
        this.rubberMinutes = visit.ask(Answers::new).rubberMinutes();
    }

    DayPicture picture() {
        List<DayPicture.Row> rows = visit.event().courts().stream()
                .map(Court::name)
                .sorted(TextOrder.NUMBERS_BY_VALUE)
                .map(court -> new DayPicture.Row(
                        court, Stream.concat(old(court), planned(court)).toList()))
                .toList();
        OptionalInt closes = visit.event()
                .about()
                .flatMap(about -> about.venueCloses())
                .map(time -> OptionalInt.of(minute(time)))
                .orElse(OptionalInt.empty());
        return DayPicture.of(rows, minute(visit.event().clock(visit.event().now())), closes);
    }

    /** Published places of ties that the plan moves or leaves out, on this court. */
    private Stream<Block> old(String court) {
        return visit.event().ties().stream()
                .filter(tie -> visit.event().goesOn(tie) && tie.start().isPresent())
                .filter(tie -> courts(tie).contains(court) && isMoved(tie))
                .map(tie -> {
                    int from = minute(tie.start().orElseThrow());
                    int waves = -Math.floorDiv(
                            -visit.event().conditions().rubbers(), courts(tie).size());
                    return new Block(
                            from, from + waves * rubberMinutes, Look.OLD, said("page-plan.bar-old", tie.id(), from));
                })
                .sorted(Comparator.comparingInt(Block::from));
    }

    private List<String> courts(Tie tie) {
        return visit.event().order().courts(tie);
    }

    private boolean isMoved(Tie tie) {
        List<String> courts = plan.of(tie.id()).stream()
                .flatMap(one -> one.courts().stream())
                .distinct()
                .sorted()
                .toList();
        return !plan.start(tie.id()).equals(tie.start())
                || !courts.equals(courts(tie).stream().sorted().toList());
    }

    private Stream<Block> planned(String court) {
        List<TieId> ties =
                plan.assignments().stream().map(Assignment::tie).distinct().toList();
        List<Block> blocks = new ArrayList<>();
        for (TieId tie : ties) {
            List<Assignment.Line> here = plan.lines().stream()
                    .filter(line -> line.tie().equals(tie) && line.court().equals(court))
                    .toList();
            here.stream()
                    .map(Assignment.Line::start)
                    .min(Comparator.naturalOrder())
                    .ifPresent(start -> {
                        int to = here.stream()
                                .map(Assignment.Line::end)
                                .mapToInt(OldAndNew::minute)
                                .max()
                                .orElseThrow();
                        blocks.add(
                                new Block(minute(start), to, look(tie), said("page-plan.bar-new", tie, minute(start))));
                    });
        }
        blocks.sort(Comparator.comparingInt(Block::from));
        return blocks.stream();
    }

    private Look look(TieId tie) {
        return visit.event().tie(tie).filter(Tie::isInPlay).isPresent() ? Look.RUNNING : Look.NEW;
    }

    private String said(String code, TieId tie, int at) {
        return visit.say(
                code,
                "tie",
                visit.event().tie(tie).map(views::title).orElse(tie.code()),
                "at",
                HallClock.said(LocalTime.MIN.plusMinutes(at)));
    }

    private static int minute(LocalTime time) {
        return time.getHour() * 60 + time.getMinute();
    }
}
