package tiewright.http.visit;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.event.ClubId;
import tiewright.event.ExchangeId;
import tiewright.event.OrderOfPlay;
import tiewright.event.Player;
import tiewright.event.RubberNo;
import tiewright.event.SheetKind;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.Answers;
import tiewright.paper.CalendarFile;

/**
 * What a phone rings for in a pocket: until when sheets and decider pairs must be in, when the own rubbers begin. No name of a sheet
 * stands in it, opened or not, for calendars are passed on. Taken again, an entry takes the place of its older self.
 */
public final class AlarmEntries {
    private static final List<Duration> BEFORE = List.of(Duration.ofMinutes(15), Duration.ofMinutes(5));

    private final Visit visit;
    private final VisibleEvent event;
    private final TieViews views;

    public AlarmEntries(Visit visit) {
        this.visit = visit;
        this.event = visit.event();
        this.views = new TieViews(event);
    }

    public static CalendarFile file(String whose, List<CalendarFile.Entry> entries) {
        return new CalendarFile(whose, entries, BEFORE);
    }

    /** The sheets of a club that are due; one that is in already takes its alarm out of a calendar that has it. */
    public List<CalendarFile.Entry> sheets(ClubId club) {
        return ahead(club).stream()
                .filter(Tie::isReady)
                .flatMap(tie -> Stream.of(SheetKind.values())
                        .map(kind -> new ExchangeId(tie.id(), kind))
                        .flatMap(exchange ->
                                sheet(tie, exchange, tie.sideOf(club).orElseThrow()).stream()))
                .toList();
    }

    private Optional<CalendarFile.Entry> sheet(Tie tie, ExchangeId exchange, Side side) {
        boolean isDecider = exchange.kind() == SheetKind.DECIDER;
        String path = (isDecider ? "/captain/decider/" : "/captain/sheet/") + tie.id();
        return event.deadline(exchange)
                .filter(this::isAhead)
                .map(at -> entry(new Ring(
                        tie,
                        exchange.kind().code() + "." + tie.id() + "." + side.code(),
                        at,
                        visit.say(
                                isDecider ? "page-visit.alarm-decider" : "page-visit.alarm-sheet",
                                "tie",
                                views.title(tie)),
                        path,
                        event.exchange(exchange).side(side).in())));
    }

    /** The rubbers that a player still has to play; before the sheets open, the ties in which that may be. */
    public List<CalendarFile.Entry> rubbers(Player player) {
        List<CalendarFile.Entry> entries = new ArrayList<>();
        for (Tie tie : ahead(player.club())) {
            if (tie.isOpened()) {
                entries.addAll(opened(player, tie));
            } else {
                event.startsAt(tie)
                        .filter(this::isAhead)
                        .ifPresent(at -> entries.add(entry(ring(player, tie, at, "page-visit.alarm-may-play"))));
            }
        }
        return entries;
    }

    private List<CalendarFile.Entry> opened(Player player, Tie tie) {
        Side side = tie.sideOf(player.club()).orElseThrow();
        List<CalendarFile.Entry> entries = new ArrayList<>();
        for (Map.Entry<RubberNo, Tie.OpenedRubber> rubber : tie.opened().entrySet()) {
            boolean plays = rubber.getValue()
                    .pair(side)
                    .filter(pair -> pair.has(player.id()))
                    .isPresent();
            if (plays && event.progress(tie).left().contains(rubber.getKey())) {
                begins(tie, rubber.getKey()).filter(this::isAhead).ifPresent(at -> {
                    String again = entries.isEmpty() ? "" : "." + rubber.getKey();
                    Ring ring = ring(player, tie, at, "page-visit.alarm-rubber");
                    entries.add(entry(new Ring(tie, ring.uid() + again, at, ring.words(), ring.path(), false)));
                });
            }
        }
        return entries;
    }

    private Ring ring(Player player, Tie tie, Instant at, String words) {
        return new Ring(
                tie,
                "plays." + tie.id() + "." + player.id(),
                at,
                visit.say(words, "tie", views.title(tie)),
                "/player/" + player.id(),
                false);
    }

    private Optional<Instant> begins(Tie tie, RubberNo rubber) {
        return Optional.ofNullable(event.order().rubbers(tie.id()).get(rubber))
                .map(OrderOfPlay.Place::start)
                .flatMap(this::moment)
                .or(() -> event.startsAt(tie));
    }

    private Optional<Instant> moment(LocalTime at) {
        return event.about()
                .map(about -> about.date().atTime(at).atZone(about.zone()).toInstant());
    }

    private boolean isAhead(Instant at) {
        return at.isAfter(event.now());
    }

    private List<Tie> ahead(ClubId club) {
        return TieOrder.sorted(event.tiesOf(club)).stream()
                .filter(event::goesOn)
                .toList();
    }

    private CalendarFile.Entry entry(Ring ring) {
        long changes = event.order().changes().stream()
                .filter(change -> change.tie().equals(ring.tie().id()))
                .count();
        return new CalendarFile.Entry(
                ring.uid() + "@" + visit.ask(Answers::new).began() + ".tiewright",
                (int) changes * 4 + (ring.tie().isOpened() ? 2 : 0) + (ring.isOver() ? 1 : 0),
                event.now(),
                ring.at(),
                Optional.empty(),
                ring.words(),
                views.where(ring.tie()),
                visit.say("page-visit.alarm-take-again"),
                Calendars.address(visit, ring.path()),
                ring.isOver());
    }

    /** @param isOver nothing rings any more, also where it was taken into a calendar before */
    private record Ring(Tie tie, String uid, Instant at, String words, String path, boolean isOver) {}
}
