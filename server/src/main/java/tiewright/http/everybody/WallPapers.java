package tiewright.http.everybody;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tiewright.event.Event;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Bracket;
import tiewright.http.pieces.Notice;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.views.PackView.Grid;
import tiewright.http.views.PackView.Leaf;
import tiewright.http.views.PackView.Row;
import tiewright.http.visit.NoticeViews;
import tiewright.http.visit.TableViews;
import tiewright.http.visit.TieGrids;
import tiewright.http.visit.Visit;

/** What hangs on the wall, in letters that are read at arm's length: the order of play, tables, knockout, notices. */
final class WallPapers {
    private final Visit visit;
    private final VisibleEvent event;

    /** @param visit as everybody's: what hangs on a wall shows what everybody may read */
    WallPapers(Visit visit) {
        this.visit = visit;
        this.event = visit.event();
    }

    List<Leaf> leaves() {
        return Stream.of(orderOfPlay(), tables(), knockout(), notices())
                .filter(Leaf::holdsAnything)
                .toList();
    }

    private Leaf orderOfPlay() {
        List<Tie> ties = event.ties().stream().filter(event::goesOn).toList();
        String version = event.order()
                .plan()
                .map(plan ->
                        visit.say("page-everybody.wall-version", "version", plan.version(), "notice", plan.notice()))
                .orElse(visit.say("page-everybody.wall-no-plan"));
        return leaf(
                "order-of-play", ties.isEmpty() ? List.of() : List.of(TieGrids.of(event, "wall-order", version, ties)));
    }

    private Leaf tables() {
        return leaf(
                "tables",
                event.pools().keySet().stream()
                        .map(pool -> grid(TableViews.pool(visit, pool).table()))
                        .toList());
    }

    /** The columns that hold words or numbers; the squares of the screen say in a picture what the columns count. */
    private static Grid grid(ReasonTable table) {
        List<Integer> shown = IntStream.range(0, table.columns().size())
                .filter(column -> table.rows().stream()
                        .allMatch(row -> row.cells().get(column).marks().isEmpty()))
                .boxed()
                .toList();
        return new Grid(
                "wall-" + table.id(),
                table.caption() + ". " + table.foot(),
                shown.stream()
                        .map(column -> table.columns().get(column).heading())
                        .toList(),
                table.rows().stream()
                        .map(row -> new Row(
                                shown.stream()
                                        .map(column -> row.cells().get(column).text())
                                        .toList(),
                                String.join("; ", row.reasons())))
                        .toList());
    }

    private Leaf knockout() {
        KnockoutViews knockout = new KnockoutViews(visit);
        List<Grid> rounds = new ArrayList<>();
        if (knockout.isDrawn()) {
            List<Bracket.Round> all = knockout.bracket().rounds();
            for (int i = 0; i < all.size(); i++) {
                rounds.add(round("wall-round-" + i, all.get(i)));
            }
        }
        return leaf("knockout", rounds);
    }

    private Grid round(String id, Bracket.Round round) {
        return new Grid(
                id,
                round.title(),
                List.of(
                        visit.say("page-everybody.wall-tie"),
                        visit.say("page-everybody.wall-clubs"),
                        visit.say("page-everybody.rubbers-won")),
                round.ties().stream()
                        .map(slot -> Row.of(
                                slot.label(),
                                visit.say("page-everybody.v", "club", side(slot.home()), "against", side(slot.away())),
                                score(slot)))
                        .toList());
    }

    private static String side(Bracket.Entry entry) {
        return entry.name().isEmpty() ? entry.from() : entry.name();
    }

    private static String score(Bracket.Slot slot) {
        return slot.home().score().isEmpty()
                ? ""
                : slot.home().score() + "–" + slot.away().score();
    }

    private Leaf notices() {
        List<Row> rows = event.notices().stream().map(this::notice).toList();
        return leaf(
                "notices",
                rows.isEmpty()
                        ? List.of()
                        : List.of(new Grid(
                                "wall-notices",
                                visit.say("page-everybody.wall-notices-caption", "count", rows.size()),
                                List.of(
                                        visit.say("page-everybody.wall-number"),
                                        visit.say("page-everybody.wall-what"),
                                        visit.say("page-everybody.wall-when")),
                                rows)));
    }

    private Row notice(Event.Posted posted) {
        Notice notice = NoticeViews.notice(event, posted);
        return new Row(
                List.of(
                        Integer.toString(posted.notice().number()),
                        Stream.of(notice.title(), notice.now())
                                .filter(text -> !text.isEmpty())
                                .distinct()
                                .reduce((one, other) -> one + " " + other)
                                .orElse(""),
                        notice.time()),
                notice.why());
    }

    private Leaf leaf(String which, List<Grid> grids) {
        return Leaf.of(visit.say("page-everybody.wall." + which)).withGrids(grids);
    }
}
