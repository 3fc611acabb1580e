package tiewright.http;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tiewright.event.ExchangeId;
import tiewright.event.Role;
import tiewright.event.SheetKind;
import tiewright.event.Tie;
import tiewright.event.TieProgress;
import tiewright.event.VisibleEvent;
import tiewright.event.VisibleExchange;
import tiewright.http.pieces.Countdown;
import tiewright.http.views.CaptainView;

/** A captain's ties: what is due, and the way to each sheet, proposal and decider. */
final class CaptainPages implements Page {
    private static final Duration AN_HOUR = Duration.ofHours(1);

    @Override
    public void at(Routes routes) {
        routes.get(
                Door.CAPTAIN,
                "/captain",
                visit -> visit.show(
                        Screen.of("captain", visit.event().clubName(visit.club()) + ": my ties", view(visit))));
    }

    private static CaptainView view(Visit visit) {
        VisibleEvent event = visit.event();
        TieViews views = new TieViews(event);
        List<Countdown> countdowns = new ArrayList<>();
        List<CaptainView.Mine> mine = new ArrayList<>();
        for (Tie tie : openFirst(event, NowPage.sorted(event.tiesOf(visit.club())))) {
            countdowns(visit, views, tie).forEach(countdowns::add);
            mine.add(new CaptainView.Mine(views.line(tie), todo(visit, tie)));
        }
        boolean read = event.conditionsRead(visit.club()) >= event.conditionsVersion();
        Optional<String> unread = read || event.conditionsVersion() == 0
                ? Optional.empty()
                : Optional.of("Read version " + event.conditionsVersion()
                        + " of the conditions of play and tick that you did.");
        return new CaptainView(countdowns, mine, unread, "/club/" + visit.club());
    }

    /** One for each sheet of the club that is not in yet, and has a deadline ahead. */
    static List<Countdown> countdowns(Visit visit, TieViews views, Tie tie) {
        List<Countdown> countdowns = new ArrayList<>();
        for (ExchangeId id : List.of(ExchangeId.sheets(tie.id()), ExchangeId.decider(tie.id()))) {
            countdown(visit, views, tie, id).ifPresent(countdowns::add);
        }
        return countdowns;
    }

    /** Until when the own club's sheet of this exchange must be in; empty once it is, or when none is asked for. */
    static Optional<Countdown> countdown(Visit visit, TieViews views, Tie tie, ExchangeId id) {
        VisibleExchange exchange = visit.event().exchange(id);
        if (isIn(visit, tie, id)
                || exchange.isOpened()
                || !tie.isReady()
                || visit.event().progress(tie).finished()) {
            return Optional.empty();
        }
        String what = id.kind() == SheetKind.RUBBERS ? "Sheet for " : "Pair for the decider of ";
        return exchange.deadline()
                .map(deadline -> new Countdown(
                        what + views.title(tie) + ": seal it by "
                                + Frames.said(visit.event().clock(deadline)),
                        deadline,
                        "The deadline has passed: see the desk.",
                        (id.kind() == SheetKind.RUBBERS ? "/captain/sheet/" : "/captain/decider/") + tie.id()));
    }

    /** What stands on every page of a captain: sheets of the own club that are due within the hour. */
    static List<Countdown> dueSoon(Visit visit) {
        if (visit.role() != Role.CAPTAIN) {
            return List.of();
        }
        Instant from = visit.event().now().minus(AN_HOUR);
        Instant until = visit.event().now().plus(AN_HOUR);
        TieViews views = new TieViews(visit.event());
        String here = visit.ctx().path();
        return visit.event().tiesOf(visit.club()).stream()
                .flatMap(tie -> countdowns(visit, views, tie).stream())
                .filter(due -> due.deadline().isAfter(from) && !due.deadline().isAfter(until))
                .filter(due -> !here.equals("/captain") && !here.equals(due.href()))
                .sorted(Comparator.comparing(Countdown::deadline))
                .toList();
    }

    private static List<Tie> openFirst(VisibleEvent event, List<Tie> ties) {
        return ties.stream()
                .sorted(Comparator.comparing(
                        tie -> event.progress(tie).finished() && !tie.cards().isEmpty()))
                .toList();
    }

    private static List<CaptainView.Todo> todo(Visit visit, Tie tie) {
        TieProgress progress = visit.event().progress(tie);
        List<CaptainView.Todo> todo = new ArrayList<>();
        if (!tie.isReady() || progress.finished() && !tie.cards().isEmpty()) {
            return todo;
        }
        if (!tie.isOpened()) {
            boolean in = isIn(visit, tie, ExchangeId.sheets(tie.id()));
            todo.add(
                    new CaptainView.Todo(in ? "My sealed sheet" : "Name the pairs", "/captain/sheet/" + tie.id(), !in));
            todo.add(new CaptainView.Todo("Proposal", "/captain/proposal/" + tie.id(), false));
        } else {
            todo.add(new CaptainView.Todo("Enter a score", "/cards/" + tie.id(), false));
        }
        if (!tie.isDeciderOpened() && progress.canComeToDecider()) {
            boolean wanted = progress.awaitsDecider();
            boolean in = isIn(visit, tie, ExchangeId.decider(tie.id()));
            if (wanted) {
                todo.add(new CaptainView.Todo("Who could play it", "/captain/proposal/" + tie.id(), false));
            }
            todo.add(new CaptainView.Todo(
                    in
                            ? "My sealed pair for a decider"
                            : wanted
                                    ? "Name the pair for the decider"
                                    : "Seal a pair for a decider, should it come to one",
                    "/captain/decider/" + tie.id(),
                    wanted && !in));
        }
        return todo;
    }

    private static boolean isIn(Visit visit, Tie tie, ExchangeId id) {
        return tie.sideOf(visit.club())
                .filter(side -> visit.event().exchange(id).side(side).in())
                .isPresent();
    }
}
