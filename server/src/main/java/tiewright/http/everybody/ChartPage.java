package tiewright.http.everybody;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.event.Club;
import tiewright.event.Court;
import tiewright.event.OrderOfPlay;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Chart;
import tiewright.http.pieces.NavLink;
import tiewright.http.views.ChartView;
import tiewright.http.views.ListsView;
import tiewright.http.visit.Addresses;
import tiewright.http.visit.Charts;
import tiewright.http.visit.Door;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.wording.Words;

/** The published order of play: a chart for the wall, a list for each club. */
final class ChartPage implements Page {
    @Override
    public void at(Routes routes) {
        routes.everybodys("/plan", visit -> Screen.of("chart", visit.say("page-everybody.order-of-play"), view(visit)));
        routes.everybodys(
                "/plan/clubs",
                visit -> Screen.of("lists", visit.say("page-everybody.order-of-play-club-by"), lists(visit)));
        routes.onTheWall(
                "/board", visit -> Screen.of("board", visit.say("page-everybody.on-court-and-next"), Board.of(visit)));
    }

    private static ChartView view(Visit visit) {
        VisibleEvent event = visit.event();
        List<Charts.At> rubbers = new ArrayList<>();
        event.ties().forEach(tie -> rubbers.addAll(rubbers(event, tie)));
        return new ChartView(
                new WallTables(visit).table(caption(visit)),
                rubbers.isEmpty() ? Optional.empty() : Optional.of(chart(visit, rubbers)),
                rubbers.isEmpty() ? List.of() : legend(event),
                more(visit));
    }

    private static String caption(Visit visit) {
        VisibleEvent event = visit.event();
        long moved = event.order().changes().stream()
                .filter(change -> change.before().start().isPresent())
                .map(OrderOfPlay.Change::tie)
                .distinct()
                .count();
        String not = visit.say("page-everybody.not-before", "count", (int) moved);
        return event.order()
                .plan()
                .map(plan -> visit.say(
                        "page-everybody.version-of-the-order-of",
                        "version",
                        plan.version(),
                        "notice",
                        plan.notice(),
                        "at",
                        HallClock.said(event.clock(plan.at())),
                        "not",
                        not))
                .orElse(not);
    }

    private static Chart chart(Visit visit, List<Charts.At> rubbers) {
        return Charts.of(
                new Charts.Named(visit.words(), "rubber-by-rubber", visit.say("page-everybody.rubber-by-rubber")),
                visit.event().courts().stream()
                        .filter(Court::usable)
                        .map(Court::name)
                        .toList(),
                rubbers);
    }

    private static List<NavLink> more(Visit visit) {
        List<NavLink> links = new ArrayList<>(List.of(
                new NavLink("/plan/clubs", visit.say("page-everybody.a-list-for-each-club"), false),
                new NavLink("/board", visit.say("page-everybody.a-board-for-the-wall"), false),
                new NavLink("/ties", visit.say("page-everybody.all-ties-in-one-list"), false)));
        if (Door.OFFICIALS.opensFor(visit.role())) {
            links.add(new NavLink(Addresses.PLAN, visit.say("page-everybody.make-the-order-of-play"), false));
            links.add(new NavLink(Addresses.BUDGET, visit.say("page-everybody.does-the-day-fit"), false));
            links.add(new NavLink(Addresses.BREAKS, visit.say("page-everybody.the-day-breaks"), false));
        }
        return links;
    }

    private static List<Charts.At> rubbers(VisibleEvent event, Tie tie) {
        Map<RubberNo, OrderOfPlay.Place> rubbers = event.order().rubbers(tie.id());
        return rubbers.entrySet().stream()
                .map(one -> new Charts.At(
                        one.getValue().start(),
                        one.getValue().court(),
                        entry(
                                event,
                                tie,
                                tie.id() + " " + TieViews.rubberWithin(Words.of(event), one.getKey())
                                        + one.getValue()
                                                .umpires()
                                                .map(club ->
                                                        Words.say(event, "page-everybody.umpires", "club", club.code()))
                                                .orElse(""))))
                .toList();
    }

    private static Chart.Entry entry(VisibleEvent event, Tie tie, String what) {
        return new Chart.Entry(
                Charts.shortly(Words.of(event), tie),
                what,
                "/tie/" + tie.id(),
                event.isGone(tie)
                                || event.progress(tie).finished()
                                        && !tie.cards().isEmpty()
                        ? "over"
                        : "");
    }

    /** Clubs, then places that nobody has taken yet. */
    private static List<String> legend(VisibleEvent event) {
        TieViews views = new TieViews(event);
        List<String> lines = new ArrayList<>(event.clubs().stream()
                .map((Club club) -> club.id() + ": " + club.name())
                .toList());
        event.ties().stream()
                .flatMap(tie -> Stream.of(Side.values())
                        .filter(side -> tie.club(side).isEmpty())
                        .flatMap(side -> tie.slot(side).from().stream()))
                .map(source -> source + ": " + views.source(source))
                .distinct()
                .forEach(lines::add);
        return lines;
    }

    private static ListsView lists(Visit visit) {
        VisibleEvent event = visit.event();
        TieViews views = visit.ties();
        return new ListsView(event.clubs().stream()
                .map(club -> new ListsView.Club(
                        club.name(),
                        "/club/" + club.id(),
                        TieOrder.sorted(event.tiesOf(club.id())).stream()
                                .map(views::line)
                                .toList()))
                .toList());
    }
}
