package tiewright.http.visit;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tiewright.event.Deadlines;
import tiewright.event.ExchangeId;
import tiewright.event.Role;
import tiewright.event.SheetKind;
import tiewright.event.Tie;
import tiewright.event.VisibleExchange;
import tiewright.http.pieces.Countdown;

/** How long there is still for a sheet of the own club. */
public final class Countdowns {
    private static final Duration AN_HOUR = Duration.ofHours(1);

    private Countdowns() {}

    /** One for each sheet of the club that is not in yet, and has a deadline ahead. */
    public static List<Countdown> of(Visit visit, TieViews views, Tie tie) {
        List<Countdown> countdowns = new ArrayList<>();
        for (ExchangeId id : List.of(ExchangeId.sheets(tie.id()), ExchangeId.decider(tie.id()))) {
            of(visit, views, tie, id).ifPresent(countdowns::add);
        }
        return countdowns;
    }

    /** Until when the own club's sheet of this exchange must be in; empty once it is, or when none is asked for. */
    public static Optional<Countdown> of(Visit visit, TieViews views, Tie tie, ExchangeId id) {
        VisibleExchange exchange = visit.event().exchange(id);
        if (isIn(visit, tie, id)
                || exchange.isOpened()
                || !tie.isReady()
                || !visit.event().goesOn(tie)) {
            return Optional.empty();
        }
        String key = id.kind() == SheetKind.RUBBERS ? "page-visit.sheet-by" : "page-visit.pair-by";
        return exchange.deadline()
                .map(deadline -> new Countdown(
                        visit.say(
                                key,
                                "tie",
                                views.title(tie),
                                "deadline",
                                HallClock.said(visit.event().clock(deadline))),
                        deadline,
                        Deadlines.closes(deadline, visit.event().conditions()),
                        after(visit, deadline),
                        (id.kind() == SheetKind.RUBBERS ? "/captain/sheet/" : "/captain/decider/") + tie.id()));
    }

    /** A form that still works never reads as closed. */
    private static Countdown.Words after(Visit visit, Instant deadline) {
        Instant closes = Deadlines.closes(deadline, visit.event().conditions());
        Instant now = visit.event().now();
        String last = HallClock.said(
                visit.event().clock(Deadlines.lastMinute(deadline, visit.event().conditions())));
        String still = visit.say("page-visit.late-and-still-taken", "last", last);
        String late = visit.say("page-visit.the-deadline-has-passed-see");
        return new Countdown.Words(still, late, now.isBefore(deadline) ? "" : now.isBefore(closes) ? still : late);
    }

    /** What is said once the deadline has passed: that it is still taken and until when, or who decides now; empty before it. */
    public static String late(Visit visit, Instant deadline) {
        return after(visit, deadline).now();
    }

    /** What every page of a captain counts down: sheets of the own club that are due within the hour, the first one first. */
    static List<Countdown> dueSoon(Visit visit) {
        if (visit.role() != Role.CAPTAIN) {
            return List.of();
        }
        Instant from = visit.event().now().minus(AN_HOUR);
        Instant until = visit.event().now().plus(AN_HOUR);
        TieViews views = new TieViews(visit.event());
        return visit.event().tiesOf(visit.club()).stream()
                .flatMap(tie -> of(visit, views, tie).stream())
                .filter(due -> due.deadline().isAfter(from) && !due.deadline().isAfter(until))
                .sorted(Comparator.comparing(Countdown::deadline))
                .toList();
    }

    /** The own club has a sheet in. */
    public static boolean isIn(Visit visit, Tie tie, ExchangeId id) {
        return tie.sideOf(visit.club())
                .filter(side -> visit.event().exchange(id).side(side).in())
                .isPresent();
    }
}
