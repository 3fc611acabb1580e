package tiewright.timetable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tiewright.event.Event;

/**
 * The published order of play, each tie only as much later as it must be: it keeps its turn and its courts unless something
 * forces it elsewhere. What was never published follows at the end.
 */
final class KeptOrder {
    private static final int LATEST = Clock.DAY;

    private final Event event;
    private final Board board;
    private final PublishedPlaces published;
    private final Spot[] spots;

    private KeptOrder(Event event, Board board) {
        this.event = event;
        this.board = board;
        this.published = new PublishedPlaces(event, board);
        this.spots = new Spot[board.pieces().size()];
    }

    /** Empty where nothing was published that is still to be played, or where its turns cannot be kept at all. */
    static Optional<Plan> of(Event event, PlanAsked asked, long seed) {
        FrozenStarts frozen = FrozenStarts.of(PlanProblem.asPublished(event, asked));
        PlanProblem problem = frozen.problem();
        KeptOrder together = new KeptOrder(event, new Board(problem));
        KeptOrder kept = together.wasPublishedTogether()
                ? together
                : new KeptOrder(event, new Board(problem.with(problem.manner().together(false))));
        return kept.anyPublished() && kept.place()
                ? Optional.of(kept.plan(seed).moving(frozen.moved()))
                : Optional.empty();
    }

    /** The clubs on duty stay where they can: none of them is then in another tie. */
    private Plan plan(long seed) {
        Plan unwatched = Placing.plan(board, spots, Placing.nobody(board), seed);
        int[] duties = board.pieces().stream().mapToInt(this::duty).toArray();
        Plan watched = Placing.plan(board, spots, duties, seed);
        return marked(watched.score().breaches() > unwatched.score().breaches() ? unwatched : watched);
    }

    private Plan marked(Plan plan) {
        List<Assignment> marked = plan.assignments().stream()
                .map(one -> one.pinned().isEmpty() && published.isAt(one) ? one.kept() : one)
                .toList();
        return plan.with(marked);
    }

    private int duty(Piece piece) {
        return event.order().umpires(board.tie(piece).id()).stream()
                .findFirst()
                .map(board::clubNumber)
                .orElse(Placing.NOBODY);
    }

    private boolean anyPublished() {
        return board.pieces().stream().anyMatch(piece -> published.of(piece).isPresent());
    }

    /** Every last round begins at one time already: else it is not asked for here. */
    private boolean wasPublishedTogether() {
        return board.links().stream()
                .filter(link -> link.kind() == Link.Kind.TOGETHER)
                .allMatch(link -> published.turn(board.pieces().get(link.a()))
                        == published.turn(board.pieces().get(link.b())));
    }

    private boolean place() {
        board.pieces().forEach(piece -> piece.pin().ifPresent(pin -> spots[piece.number()] = board.pinned(pin)));
        List<Piece> inTurn = board.pieces().stream()
                .sorted(Comparator.comparingInt(published::turn)
                        .thenComparing(piece -> board.tie(piece).stage())
                        .thenComparing(piece -> board.tie(piece).round())
                        .thenComparing(Piece::number))
                .toList();
        return inTurn.stream().allMatch(piece -> spots[piece.number()] != null || place(together(piece)));
    }

    /** Those that begin with it: one begins no earlier than all of them can. */
    private List<Piece> together(Piece first) {
        List<Piece> all = new ArrayList<>(List.of(first));
        for (int i = 0; i < all.size(); i++) {
            int number = all.get(i).number();
            board.linksOf(number).stream()
                    .filter(link -> link.kind() == Link.Kind.TOGETHER)
                    .map(link -> board.pieces().get(link.a() == number ? link.b() : link.a()))
                    .filter(other -> spots[other.number()] == null && !all.contains(other))
                    .forEach(all::add);
        }
        return all;
    }

    private boolean place(List<Piece> group) {
        int from = group.stream()
                .mapToInt(piece -> Math.max(board.base(), board.ready(piece.number())))
                .max()
                .orElseThrow();
        for (int start = from; start < from + LATEST; start++) {
            if (placed(group, start)) {
                return true;
            }
        }
        return false;
    }

    private boolean placed(List<Piece> group, int start) {
        for (Piece piece : group) {
            Optional<Spot> spot = spot(piece, start).filter(at -> fits(piece, at));
            if (spot.isEmpty()) {
                group.forEach(one -> spots[one.number()] = null);
                return false;
            }
            spots[piece.number()] = spot.get();
        }
        return true;
    }

    /** On its own courts; in the place of one that cannot be used any more on the first that nobody else needs. */
    private Optional<Spot> spot(Piece piece, int start) {
        long open = free(start, start + piece.minutes());
        long own = published.courts(piece);
        long courts = own & open;
        if (Long.bitCount(own) < piece.width()) {
            long others = open & ~own & ~claimed(piece, start);
            courts |= lowest(others == 0 ? open & ~own : others, piece.width() - Long.bitCount(own));
        }
        int slot = Math.floorDiv(start - board.base(), board.slot());
        return Long.bitCount(courts) == piece.width()
                ? Optional.of(
                        new Spot(start, start + piece.minutes(), slot, courts, Long.numberOfTrailingZeros(courts)))
                : Optional.empty();
    }

    private long free(int start, int end) {
        long open = board.free(start, end);
        for (Spot taken : spots) {
            if (taken != null && taken.start() < end && start < taken.end()) {
                open &= ~taken.courts();
            }
        }
        return open;
    }

    /** Courts on which others that have no place yet were published for a part of this time. */
    private long claimed(Piece piece, int start) {
        return board.pieces().stream()
                .filter(other -> other.number() != piece.number() && spots[other.number()] == null)
                .filter(other -> published.turn(other) < start + piece.minutes()
                        && start < published.turn(other) + other.minutes())
                .mapToLong(published::courts)
                .reduce(0, (one, other) -> one | other);
    }

    private static long lowest(long open, int width) {
        long left = open;
        long chosen = 0;
        for (int i = 0; i < width; i++) {
            chosen |= Long.lowestOneBit(left);
            left &= left - 1;
        }
        return chosen;
    }

    private boolean fits(Piece piece, Spot at) {
        return board.isOpen(at)
                && board.linksOf(piece.number()).stream().allMatch(link -> {
                    Spot a = link.a() == piece.number() ? at : spots[link.a()];
                    Spot b = link.b() == piece.number() ? at : spots[link.b()];
                    return a == null || b == null || !Rules.isBroken(link.kind(), a, b, board.rest());
                });
    }
}
