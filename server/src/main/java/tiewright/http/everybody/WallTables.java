package tiewright.http.everybody;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import tiewright.event.ClubId;
import tiewright.event.Court;
import tiewright.event.Side;
import tiewright.event.Stage;
import tiewright.event.Tie;
import tiewright.event.TieProgress;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.State;
import tiewright.http.pieces.WallTable;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.Scored;
import tiewright.http.visit.TextOrder;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.wording.Words;

/** The published order of play, tie by tie, as it also hangs on the wall. */
final class WallTables {
    private final VisibleEvent event;
    private final Words words;
    private final TieViews views;
    private final Optional<ClubId> own;

    WallTables(Visit visit) {
        this.event = visit.event();
        this.words = visit.words();
        this.views = visit.ties();
        this.own = visit.viewer().club();
    }

    WallTable table(String caption) {
        SortedMap<LocalTime, List<Tie>> starts = starts();
        List<String> courts = courts(starts.values());
        Optional<LocalTime> next = isToday()
                ? starts.keySet().stream()
                        .filter(start -> start.isAfter(event.clock(event.now())))
                        .findFirst()
                : Optional.empty();
        return new WallTable(
                "order-of-play",
                caption,
                courts.stream().map(this::heading).toList(),
                starts.entrySet().stream()
                        .map(row -> row(
                                row.getKey(),
                                row.getValue(),
                                courts,
                                next.filter(row.getKey()::equals).isPresent()))
                        .toList());
    }

    /** Without ties that are not played: their times and courts are somebody else's. */
    private SortedMap<LocalTime, List<Tie>> starts() {
        SortedMap<LocalTime, List<Tie>> starts = new TreeMap<>();
        for (Tie tie : event.ties()) {
            if (!event.isGone(tie) || Scored.is(event, tie)) {
                tie.start()
                        .ifPresent(start -> starts.computeIfAbsent(start, any -> new ArrayList<>())
                                .add(tie));
            }
        }
        return starts;
    }

    private boolean isToday() {
        return event.about()
                .filter(about ->
                        about.date().equals(event.now().atZone(event.zone()).toLocalDate()))
                .isPresent();
    }

    private List<String> courts(Collection<List<Tie>> ties) {
        TreeSet<String> courts = new TreeSet<>(TextOrder.NUMBERS_BY_VALUE);
        event.courts().stream().filter(Court::usable).map(Court::name).forEach(courts::add);
        ties.forEach(row -> row.forEach(tie -> courts.addAll(on(tie))));
        return List.copyOf(courts);
    }

    private List<String> on(Tie tie) {
        List<String> courts = event.order().courts(tie);
        return courts.isEmpty() ? List.of("") : courts;
    }

    private String heading(String court) {
        return court.isEmpty()
                ? words.say("page-everybody.no-court-yet")
                : court.matches("[0-9]+") ? words.say("page-everybody.court-heading", "court", court) : court;
    }

    private WallTable.Row row(LocalTime start, List<Tie> ties, List<String> courts, boolean isNext) {
        List<List<WallTable.Entry>> places = courts.stream()
                .map(court -> ties.stream()
                        .filter(tie -> on(tie).contains(court))
                        .map(this::entry)
                        .toList())
                .toList();
        String now =
                isNext ? words.say("page-everybody.now-line", "now", HallClock.said(event.clock(event.now()))) : "";
        return new WallTable.Row(HallClock.said(start), stage(ties.get(0)), now, places);
    }

    private String stage(Tie tie) {
        return tie.stage() == Stage.POOL
                ? words.say("page-everybody.round-number", "round", tie.round())
                : words.say("page-everybody.knockout");
    }

    private WallTable.Entry entry(Tie tie) {
        TieProgress progress = event.progress(tie);
        State state = views.state(tie);
        boolean isOn = state.mark() == Mark.PLAYING || state.mark() == Mark.HELD;
        return new WallTable.Entry(
                club(tie, Side.HOME, progress),
                club(tie, Side.AWAY, progress),
                state,
                tie.stage() == Stage.POOL ? "" : views.stage(tie),
                "/tie/" + tie.id(),
                (isOn ? "on" : "") + (views.isOf(tie, own) ? " own" : ""));
    }

    private WallTable.Club club(Tie tie, Side side, TieProgress progress) {
        return new WallTable.Club(
                views.side(tie, side),
                progress.rubbers().isEmpty() ? "" : Integer.toString(progress.won(side)),
                progress.winner().filter(side::equals).isPresent());
    }
}
