package tiewright.timetable;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import tiewright.event.ClubId;

/** A problem taken apart into numbers: pieces to place, where they could stand, and what has to do with what. */
final class Board {
    static final int NEVER = 1_000_000;

    private final PlanProblem problem;
    private final int base;
    private final int closes;
    private final int[] from;
    private final int[] until;
    private final Map<String, Integer> courtNumbers = new HashMap<>();
    private final List<ClubId> clubs;
    private final List<Piece> pieces;
    private final List<Link> links;
    private final List<List<Link>> linksOf = new ArrayList<>();
    private final int[] ready;
    private final int[][] tiesOfClub;

    Board(PlanProblem problem) {
        this.problem = problem;
        this.base = Clock.minute(problem.start());
        this.closes = problem.closes().map(Clock::minute).orElse(NEVER);
        this.from = problem.courts().stream()
                .mapToInt(court -> court.from().map(Clock::minute).orElse(0))
                .toArray();
        this.until = problem.courts().stream()
                .mapToInt(court -> court.until().map(Clock::minute).orElse(NEVER))
                .toArray();
        problem.courts().forEach(court -> courtNumbers.put(court.name(), courtNumbers.size()));
        Set<ClubId> known = new LinkedHashSet<>();
        problem.ties().forEach(tie -> known.addAll(tie.clubs()));
        this.clubs = List.copyOf(known);
        this.pieces = Pieces.of(problem);
        this.ready = pieces.stream().mapToInt(piece -> ready(tie(piece))).toArray();
        this.links = Links.of(this);
        pieces.forEach(piece -> linksOf.add(links.stream()
                .filter(link -> link.a() == piece.number() || link.b() == piece.number())
                .toList()));
        this.tiesOfClub = tiesOfClub(problem, clubs);
    }

    private static int[][] tiesOfClub(PlanProblem problem, List<ClubId> clubs) {
        return clubs.stream()
                .map(club -> IntStream.range(0, problem.ties().size())
                        .filter(tie -> problem.ties().get(tie).clubs().contains(club))
                        .toArray())
                .toArray(int[][]::new);
    }

    PlanProblem problem() {
        return problem;
    }

    /** Minute of the day at which the first slot begins. */
    int base() {
        return base;
    }

    int slot() {
        return problem.slotMinutes();
    }

    int rest() {
        return problem.restMinutes();
    }

    /** Minute of the day, or {@link #NEVER}. */
    int closes() {
        return closes;
    }

    List<Piece> pieces() {
        return pieces;
    }

    List<Link> links() {
        return links;
    }

    List<ClubId> clubs() {
        return clubs;
    }

    /** Those in which a piece is one of the two. */
    List<Link> linksOf(int piece) {
        return linksOf.get(piece);
    }

    PlanTie tie(int number) {
        return problem.ties().get(number);
    }

    PlanTie tie(Piece piece) {
        return tie(piece.tie());
    }

    int courts() {
        return from.length;
    }

    /** More than one tie can be on court at once, so it makes a difference on which. */
    boolean hasChoiceOfCourts() {
        return courts() >= 2 * problem.courtsPerTie();
    }

    /** Open for all of this time. A court that is open as long as the venue is stays open past the closing: that is an overrun. */
    boolean isOpen(int court, int start, int end) {
        return from[court] <= start && (end <= until[court] || until[court] >= closes && closes != NEVER);
    }

    boolean isOpen(Spot spot) {
        for (int court = 0; court < courts(); court++) {
            if ((spot.courts() >> court & 1) == 1 && !isOpen(court, spot.start(), spot.end())) {
                return false;
            }
        }
        return true;
    }

    /** Where a piece stays. */
    Spot pinned(Pin pin) {
        int start = Clock.minute(pin.start(), base);
        return spot(pin.courts(), start, start + pin.minutes());
    }

    Spot spot(Assignment assignment) {
        int start = Clock.minute(assignment.start());
        int length = Math.floorMod(Clock.minute(assignment.end()) - start, Clock.DAY);
        int from = start < base && assignment.slot() > 0 ? start + 24 * 60 : start; // the day ran past midnight
        return spot(assignment.courts(), from, from + length);
    }

    private Spot spot(List<String> names, int start, int end) {
        long mask = 0;
        for (String name : names) {
            mask |= 1L << courtNumber(name);
        }
        return new Spot(start, end, Math.floorDiv(start - base, slot()), mask, Long.numberOfTrailingZeros(mask));
    }

    /** A name that stands for a court which cannot be used any more is bad input, told before. */
    int courtNumber(String name) {
        return java.util.Objects.requireNonNull(courtNumbers.get(name), name);
    }

    /** Courts open all of this time, apart from those on which something is pinned, as bits. */
    long free(int start, int end) {
        long mask = 0;
        for (int court = 0; court < courts(); court++) {
            if (isOpen(court, start, end)) {
                mask |= 1L << court;
            }
        }
        for (Piece piece : pieces) {
            Optional<Spot> pinned = piece.pin().map(this::pinned);
            if (pinned.isPresent()
                    && pinned.get().start() < end
                    && start < pinned.get().end()) {
                mask &= ~pinned.get().courts();
            }
        }
        return mask;
    }

    /** Where a piece of this width and length could stand in a slot: free courts taken in turn, as many as it needs. */
    List<Spot> spots(int slotNumber, int width, int minutes) {
        int start = base + slotNumber * slot();
        long open = free(start, start + minutes);
        List<Spot> spots = new ArrayList<>();
        while (Long.bitCount(open) >= width) {
            long mask = 0;
            int block = Long.numberOfTrailingZeros(open);
            for (int i = 0; i < width; i++) {
                long lowest = Long.lowestOneBit(open);
                mask |= lowest;
                open &= ~lowest;
            }
            spots.add(new Spot(start, start + minutes, slotNumber, mask, block));
        }
        return spots;
    }

    List<String> courtNames(Spot spot) {
        return problem.courts().stream()
                .map(PlanCourt::name)
                .filter(name -> (spot.courts() >> Objects.requireNonNull(courtNumbers.get(name)) & 1) == 1)
                .toList();
    }

    int[] tiesOf(int club) {
        return tiesOfClub[club];
    }

    /** Before this minute a club of the tie is not here, or its start was published for then. */
    int ready(PlanTie tie) {
        return new Readiness(problem).minute(tie);
    }

    /** It is the published start that keeps the tie from beginning earlier. */
    boolean isKeptByItsStart(PlanTie tie) {
        return new Readiness(problem).isPublished(tie);
    }

    int ready(int piece) {
        return ready[piece];
    }

    boolean hasClub(int piece, int club) {
        return tie(pieces.get(piece)).clubs().contains(clubs.get(club));
    }

    int clubNumber(ClubId club) {
        return clubs.indexOf(club);
    }
}
