package tiewright.http.desk;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.event.Card;
import tiewright.event.Court;
import tiewright.event.OrderOfPlay;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.Answers;
import tiewright.http.views.DeskView;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.TextOrder;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.picture.DayPicture;
import tiewright.picture.DayPicture.Block;
import tiewright.picture.DayPicture.Look;
import tiewright.timetable.Expected;

/** How the day runs: what was played, what is on, what comes and when it is likely to end. */
final class DayRun {
    private final Visit visit;
    private final VisibleEvent event;
    private final TieViews views;
    private final Map<TieId, Expected> expected;
    private final int rubberMinutes;

    DayRun(Visit visit) {
        this.visit = visit;
        this.event = visit.event();
        this.views = new TieViews(event);
        this.expected = visit.ask(Answers::new).expected();
        this.rubberMinutes = visit.ask(Answers::new).rubberMinutes();
    }

    DeskView.Run view() {
        List<DayPicture.Row> rows = event.courts().stream()
                .map(Court::name)
                .sorted(TextOrder.NUMBERS_BY_VALUE)
                .map(court -> new DayPicture.Row(court, blocks(court)))
                .toList();
        OptionalInt closes = event.about()
                .flatMap(about -> about.venueCloses())
                .map(time -> OptionalInt.of(minute(time)))
                .orElse(OptionalInt.empty());
        return new DeskView.Run(words(), DayPicture.of(rows, minute(event.clock(event.now())), closes), goesOn());
    }

    private Optional<DeskView.Press> goesOn() {
        return event.order()
                .stop(event.about(), event.now())
                .map(stop -> DeskView.Press.form(
                        visit.say("page-desk.play-goes-on"),
                        visit.say("frame.play-is-stopped", "until", HallClock.said(stop.until())),
                        DeskPage.GOES_ON,
                        List.of()));
    }

    private List<Block> blocks(String court) {
        return event.ties().stream()
                .filter(tie -> !event.isGone(tie) && tie.start().isPresent())
                .filter(tie -> event.order().courts(tie).contains(court))
                .map(tie -> block(tie, court))
                .sorted(Comparator.comparingInt(Block::from))
                .collect(ArrayList::new, this::follow, List::addAll);
    }

    /** A block that is reckoned to run into the next one ends where that begins, for nobody plays two at once. */
    private void follow(List<Block> before, Block next) {
        int last = before.size() - 1;
        if (last >= 0 && before.get(last).to() > next.from()) {
            Block one = before.get(last);
            before.set(last, new Block(one.from(), next.from(), one.look(), one.words()));
        }
        before.add(next);
    }

    private Block block(Tie tie, String court) {
        int planned = minute(start(tie, court));
        int length = length(tie, court);
        boolean over = !event.goesOn(tie);
        Look look = over ? Look.PLAYED : tie.isInPlay() ? Look.RUNNING : Look.TO_COME;
        int from = tie.calls().values().stream()
                .map(Tie.Call::at)
                .min(Comparator.naturalOrder())
                .map(this::minute)
                .orElseGet(() -> Optional.ofNullable(expected.get(tie.id()))
                        .map(one -> planned + lag(one))
                        .orElse(planned));
        int to = over ? ended(tie).map(this::minute).filter(end -> end > from).orElse(from + length) : from + length;
        if (look == Look.RUNNING) {
            to = Math.max(to, minute(event.now()));
        }
        return new Block(from, to, look, said(tie, look, from));
    }

    private String said(Tie tie, Look look, int from) {
        String code =
                switch (look) {
                    case PLAYED -> "page-desk.bar-played";
                    case RUNNING -> "page-desk.bar-running";
                    case TO_COME, LOST, OLD, NEW -> "page-desk.bar-to-come";
                };
        return visit.say(code, "tie", views.title(tie), "at", HallClock.said(LocalTime.MIN.plusMinutes(from)));
    }

    private Optional<Instant> ended(Tie tie) {
        return tie.cards().values().stream()
                .flatMap(card -> card.entries().stream().map(Card.Entry::receivedAt))
                .max(Comparator.naturalOrder());
    }

    private List<OrderOfPlay.Place> places(Tie tie, String court) {
        return event.order().rubbers(tie.id()).values().stream()
                .filter(place -> place.court().equals(court))
                .toList();
    }

    private LocalTime start(Tie tie, String court) {
        return places(tie, court).stream()
                .map(OrderOfPlay.Place::start)
                .min(Comparator.naturalOrder())
                .orElseGet(() -> tie.start().orElseThrow());
    }

    /** In minutes: to the end of the last rubber that is planned on this court, else all rubbers one after the other. */
    private int length(Tie tie, String court) {
        return places(tie, court).stream()
                .map(OrderOfPlay.Place::start)
                .max(Comparator.naturalOrder())
                .map(last -> (int) Duration.between(start(tie, court), last).toMinutes() + rubberMinutes)
                .orElse(rubberMinutes * event.conditions().rubbers());
    }

    private String words() {
        List<Expected> late =
                expected.values().stream().filter(Expected::isLate).toList();
        int behind = late.stream().mapToInt(DayRun::lag).max().orElse(0);
        List<LocalTime> ends = likelyEnd();
        if (goesOn().isPresent()) {
            return visit.say("page-desk.play-is-stopped");
        }
        if (ends.isEmpty()) {
            return visit.say("page-desk.no-tie-to-come");
        }
        return visit.say(
                behind == 0 ? "page-desk.day-on-time" : "page-desk.day-behind",
                "minutes",
                behind,
                "from",
                HallClock.said(ends.get(0)),
                "to",
                HallClock.said(ends.get(1)));
    }

    private static int lag(Expected one) {
        return (int) Duration.between(one.published(), one.likelyFrom()).toMinutes();
    }

    /** Between which two times the last tie is likely to end; empty while none is to come. */
    private List<LocalTime> likelyEnd() {
        List<LocalTime> from = new ArrayList<>();
        List<LocalTime> to = new ArrayList<>();
        expected.forEach((id, one) -> event.tie(id).ifPresent(tie -> {
            int length = event.order().courts(tie).stream()
                    .mapToInt(court -> length(tie, court))
                    .max()
                    .orElse(rubberMinutes * event.conditions().rubbers());
            from.add(one.likelyFrom().plusMinutes(length));
            to.add(one.likelyTo().plusMinutes(length));
        }));
        return from.isEmpty()
                ? List.of()
                : List.of(
                        from.stream().max(Comparator.naturalOrder()).get(),
                        to.stream().max(Comparator.naturalOrder()).get());
    }

    private int minute(Instant at) {
        return minute(event.clock(at));
    }

    private static int minute(LocalTime time) {
        return time.getHour() * 60 + time.getMinute();
    }
}
