package tiewright.timetable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tiewright.event.ClubId;
import tiewright.event.TieId;

/** Why a tie begins when it does, and what the parts of a score mean. */
final class Why {
    private final Plan plan;
    private final Board board;
    private final Spot[] spots;

    private Why(Plan plan) {
        this.plan = plan;
        this.board = new Board(plan.problem());
        this.spots = Placing.spots(board, plan.assignments());
    }

    static List<Reason> of(Plan plan, TieId tie) {
        Why why = new Why(plan);
        return why.board.pieces().stream()
                .filter(piece -> why.board.tie(piece).id().equals(tie))
                .findFirst()
                .map(why::of)
                .orElse(List.of());
    }

    private List<Reason> of(Piece piece) {
        Spot spot = spots[piece.number()];
        if (piece.pin().isPresent()) {
            return List.of(Reason.of("why-"
                            + piece.pin()
                                    .get()
                                    .why()
                                    .name()
                                    .toLowerCase(java.util.Locale.ROOT)
                                    .replace('_', '-'))
                    .with("start", piece.pin().get().published().orElse(Clock.time(spot.start())))
                    .with("courts", piece.pin().get().courts()));
        }
        if (isKept(piece)) {
            return List.of(Reason.of("why-kept").with("start", Clock.time(spot.start())));
        }
        if (spot.start() <= board.base()) {
            return List.of(Reason.of("why-first").with("start", Clock.time(spot.start())));
        }
        Set<Reason> reasons = new LinkedHashSet<>();
        for (int slot = 0; slot < spot.slot(); slot++) {
            reasons.add(hindrance(piece, slot));
        }
        return List.copyOf(reasons);
    }

    private boolean isKept(Piece piece) {
        return plan.of(board.tie(piece).id()).stream()
                .anyMatch(one ->
                        one.rubbers().equals(piece.rubbers()) && one.pinned().equals(Optional.of(Pin.Why.KEPT)));
    }

    /** The first thing that stands in the way of a slot. */
    private Reason hindrance(Piece piece, int slot) {
        int start = board.base() + slot * board.slot();
        Spot there = new Spot(start, start + piece.minutes(), slot, 0, 0);
        if (start < board.ready(piece.number())) {
            return Reason.of(board.isKeptByItsStart(board.tie(piece)) ? "why-published" : "why-not-here")
                    .with("at", Clock.time(start))
                    .with("ready", Clock.time(board.ready(piece.number())));
        }
        for (Link link : board.links()) {
            Optional<Reason> reason = link.a() == piece.number()
                    ? asFirst(link, there)
                    : link.b() == piece.number() ? asSecond(link, there) : Optional.empty();
            if (reason.isPresent()) {
                return reason.get().with("at", Clock.time(start));
            }
        }
        return onCourts(piece, there).with("at", Clock.time(start));
    }

    private Optional<Reason> asFirst(Link link, Spot there) {
        Spot other = spots[link.b()];
        return switch (link.kind()) {
            case CLUB -> clubs(link.b(), link.a(), there, other);
            case TOGETHER -> Optional.of(Reason.of("why-together").with("other", id(link.b())));
            case ROUND, SOURCE, RUBBERS -> Optional.empty();
            case PLAYERS ->
                there.meets(other)
                        ? Optional.of(Reason.of("why-players").with("other", id(link.b())))
                        : Optional.empty();
        };
    }

    private Optional<Reason> asSecond(Link link, Spot there) {
        Spot other = spots[link.a()];
        return switch (link.kind()) {
            case CLUB -> clubs(link.a(), link.b(), there, other);
            case ROUND, RUBBERS ->
                Rules.isOutOfOrder(other, there)
                        ? Optional.of(Reason.of("why-" + link.kind().name().toLowerCase(java.util.Locale.ROOT))
                                .with("other", id(link.a())))
                        : Optional.empty();
            case SOURCE ->
                Rules.isBeforeSource(other, there, board.rest())
                        ? Optional.of(Reason.of("why-source")
                                .with("other", id(link.a()))
                                .with("end", Clock.time(other.end()))
                                .with("rest", board.rest()))
                        : Optional.empty();
            case TOGETHER -> Optional.of(Reason.of("why-together").with("other", id(link.a())));
            case PLAYERS ->
                there.meets(other)
                        ? Optional.of(Reason.of("why-players").with("other", id(link.a())))
                        : Optional.empty();
        };
    }

    private Optional<Reason> clubs(int other, int mine, Spot there, Spot spot) {
        ClubId club = board.tie(board.pieces().get(mine)).clubs().stream()
                .filter(board.tie(board.pieces().get(other)).clubs()::contains)
                .findFirst()
                .orElseThrow();
        if (Rules.isClubTwice(there, spot)) {
            return Optional.of(Reason.of("why-club-plays").with("club", club).with("other", id(other)));
        }
        return Rules.isTooSoon(there, spot, board.rest())
                ? Optional.of(Reason.of("why-club-rests")
                        .with("club", club)
                        .with("other", id(other))
                        .with("rest", board.rest()))
                : Optional.empty();
    }

    private Reason onCourts(Piece piece, Spot there) {
        long open = board.free(there.start(), there.end());
        Set<TieId> taking = new LinkedHashSet<>();
        for (Piece other : board.pieces()) {
            Spot spot = spots[other.number()];
            if (other.number() != piece.number() && spot.meets(there)) {
                open &= ~spot.courts();
                taking.add(board.tie(other).id());
            }
        }
        if (Long.bitCount(open) < piece.width()) {
            return taking.isEmpty()
                    ? Reason.of("why-courts-closed").with("needed", piece.width())
                    : Reason.of("why-courts-taken")
                            .with("needed", piece.width())
                            .with("others", new ArrayList<>(taking));
        }
        return price(piece, there, open);
    }

    /** The slot was free for this tie: what would be worse there. */
    private Reason price(Piece piece, Spot there, long open) {
        long mask = 0;
        for (int i = 0; i < piece.width(); i++) {
            mask |= Long.lowestOneBit(open & ~mask);
        }
        Spot[] moved = spots.clone();
        moved[piece.number()] =
                new Spot(there.start(), there.end(), there.slot(), mask, Long.numberOfTrailingZeros(mask));
        int[] duties = Placing.duties(board, plan.assignments());
        PlanScore other = Judge.of(board, moved, duties).score();
        for (Part part : Part.values()) {
            if (other.of(part) > plan.score().of(part)) {
                return Reason.of("why-worse-" + part.code());
            }
        }
        return Reason.of(other.breaches() > plan.score().breaches() ? "why-umpires" : "why-no-matter");
    }

    private TieId id(int piece) {
        return board.tie(board.pieces().get(piece)).id();
    }

    /** What each part of the score means, in the order in which they count. */
    static List<Reason> score(Plan plan) {
        Board board = new Board(plan.problem());

        List<Reason> reasons = new ArrayList<>();
        PlanScore score = plan.score();
        long gap = score.of(Part.LENGTH) - plan.bound().minutes();
        reasons.add(Reason.of(gap > 0 ? "score-end-gap" : "score-end")
                .with("finish", plan.finish())
                .with("bound", plan.bound().finish())
                .with("minutes", gap));
        reasons.addAll(plan.moved());
        if (score.of(Part.OVERRUN) > 0) {
            reasons.add(Reason.of("score-overrun").with("minutes", score.of(Part.OVERRUN)));
        }
        longestWait(board, Waits.of(plan)).ifPresent(reasons::add);
        reasons.add(Reason.of("score-back-to-back").with("count", score.of(Part.BACK_TO_BACK)));
        reasons.add(Reason.of("score-unequal-rest").with("minutes", score.of(Part.UNEQUAL_REST)));
        if (board.hasChoiceOfCourts()) {
            reasons.add(Reason.of("score-same-courts").with("count", score.of(Part.SAME_COURTS)));
        }
        return reasons;
    }

    private static Optional<Reason> longestWait(Board board, Waits waits) {
        return board.clubs().stream()
                .max(Comparator.comparingInt(waits::longest))
                .filter(club -> waits.longest(club) > 0)
                .map(club -> Reason.of("score-wait").with("club", club).with("minutes", waits.longest(club)));
    }
}
