package tiewright.timetable;

import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a plan is worth, worked out from the plan alone with plain loops; what it breaks, in sentences. */
final class Judge {
    private final Board board;
    private final Spot[] spots;
    private final int[] duties;
    private final Set<Reason> reasons = new LinkedHashSet<>();
    private long breaches;

    private Judge(Board board, Spot[] spots, int[] duties) {
        this.board = board;
        this.spots = spots;
        this.duties = duties;
    }

    /** @param spots one for each piece */
    static Judge of(Board board, Spot[] spots, int[] duties) {
        Judge judge = new Judge(board, spots, duties);
        judge.courts();
        board.links().forEach(judge::link);
        judge.umpires();
        return judge;
    }

    List<Reason> breaches() {
        return List.copyOf(reasons);
    }

    PlanScore score() {
        Map<Part, Long> parts = new EnumMap<>(Part.class);
        int end = board.base();
        for (Spot spot : spots) {
            end = Math.max(end, spot.end());
        }
        Waits waits = Waits.of(board, spots);
        parts.put(Part.OVERRUN, (long) Math.max(0, end - board.closes()));
        parts.put(Part.LENGTH, (long) end - board.base());
        parts.put(Part.WAIT, waits.squares());
        parts.put(Part.BACK_TO_BACK, waits.backToBacks());
        parts.put(Part.UNEQUAL_REST, waits.unequalRest());
        parts.put(Part.SAME_COURTS, sameCourts());
        parts.put(Part.DUTIES, dutySquares());
        return new PlanScore(breaches, parts);
    }

    private void courts() {
        for (Piece one : board.pieces()) {
            Spot spot = spots[one.number()];
            if (!board.isOpen(spot)) {
                breach(Reason.of("breach-court-closed")
                        .with("tie", id(one))
                        .with("courts", board.courtNames(spot))
                        .with("start", Clock.time(spot.start())));
            }
            if (spot.start() < board.ready(one.number())) {
                breach(Reason.of(board.isKeptByItsStart(board.tie(one)) ? "breach-published" : "breach-not-here")
                        .with("tie", id(one))
                        .with("start", Clock.time(spot.start()))
                        .with("ready", Clock.time(board.ready(one.number()))));
            }
            taken(one, spot);
        }
    }

    private void taken(Piece one, Spot spot) {
        for (Piece other : board.pieces()) {
            boolean bothPinned = one.pin().isPresent() && other.pin().isPresent();
            if (one.number() < other.number() && !bothPinned && spot.isSharedWith(spots[other.number()])) {
                breach(Reason.of("breach-court-taken")
                        .with("one", id(one))
                        .with("other", id(other))
                        .with("start", Clock.time(spot.start())));
            }
        }
    }

    private void link(Link link) {
        Spot a = spots[link.a()];
        Spot b = spots[link.b()];
        if (Rules.isBroken(link.kind(), a, b, board.rest())) {
            Piece one = board.pieces().get(link.a());
            Piece other = board.pieces().get(link.b());
            String code = link.kind() == Link.Kind.CLUB && !a.meets(b)
                    ? "breach-rest"
                    : "breach-" + link.kind().name().toLowerCase(java.util.Locale.ROOT);
            breach(Reason.of(code)
                    .with("one", id(one))
                    .with("other", id(other))
                    .with("start", Clock.time(b.start()))
                    .with("rest", board.rest()));
        }
    }

    private void umpires() {
        for (Piece one : board.pieces()) {
            int duty = duties[one.number()];
            if (duty != Placing.NOBODY) {
                Spot spot = spots[one.number()];
                for (Piece other : board.pieces()) {
                    boolean meet = spot.meets(spots[other.number()]);
                    if (meet && board.tie(other).clubs().contains(board.clubs().get(duty))) {
                        breach(umpire("breach-umpire-plays", one, duty));
                    }
                    if (meet && one.number() < other.number() && duties[other.number()] == duty) {
                        breach(umpire("breach-umpire-twice", one, duty));
                    }
                }
            }
        }
    }

    private Reason umpire(String code, Piece piece, int duty) {
        return Reason.of(code).with("tie", id(piece)).with("club", board.clubs().get(duty));
    }

    private void breach(Reason reason) {
        breaches++;
        reasons.add(reason);
    }

    private tiewright.event.TieId id(Piece piece) {
        return board.tie(piece).id();
    }

    private long sameCourts() {
        return board.links().stream()
                .filter(link -> board.hasChoiceOfCourts() && link.kind() == Link.Kind.CLUB)
                .filter(link -> (spots[link.a()].courts() & spots[link.b()].courts()) != 0)
                .count();
    }

    private long dutySquares() {
        long[] count = new long[board.clubs().size()];
        for (int duty : duties) {
            if (duty != Placing.NOBODY) {
                count[duty]++;
            }
        }
        return java.util.Arrays.stream(count).map(n -> n * n).sum();
    }
}
