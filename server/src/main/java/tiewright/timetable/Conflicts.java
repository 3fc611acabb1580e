package tiewright.timetable;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.TieId;

/**
 * Why can a day not hold what it should? A smallest set of requirements and ties that cannot hold together: none of them can be
 * left out. Proven by a bound or, for few ties, by trying everything.
 */
final class Conflicts {
    /** More ties than this are counted instead of named. */
    private static final int NAMED = 4;

    private Conflicts() {}

    /** Empty if nothing proves that no plan can be. */
    static Optional<Infeasible> of(Board board) {
        PlanProblem whole = board.problem();
        if (!cannotHold(whole)) {
            return Optional.empty();
        }
        List<Requirement> needed = new ArrayList<>(Requirement.of(whole));
        for (Requirement requirement : Requirement.of(whole)) {
            needed.remove(requirement);
            if (!cannotHold(without(whole, needed))) {
                needed.add(requirement);
            }
        }
        List<Requirement> kept =
                Requirement.of(whole).stream().filter(needed::contains).toList();
        PlanProblem rest = thinned(without(whole, kept));
        rest = rest.ties().size() > NAMED && club(rest).isEmpty() ? whole : rest;
        return Optional.of(new Infeasible(sentence(rest, kept), false, Optional.of(Bounds.of(board))));
    }

    /** A tie for which there never are courts enough, or something put by hand before what must come before it. */
    static Infeasible withoutRoom(Board board) {
        Reason because = board.pieces().stream()
                .filter(piece -> piece.pin().isEmpty() && neverFits(board, piece))
                .findFirst()
                .map(piece -> Reason.of("no-room-for-tie")
                        .with("tie", board.tie(piece).id())
                        .with("needed", piece.width()))
                .or(() -> pinInTheWay(board.problem()))
                .or(() -> requirementInTheWay(board.problem()))
                .orElse(Reason.of("no-order-found"));
        return new Infeasible(because, false, Optional.empty());
    }

    private static Optional<Reason> requirementInTheWay(PlanProblem problem) {
        return Requirement.of(problem).stream()
                .filter(one -> Starts.plain(new Board(one.dropped(problem))).isPresent())
                .findFirst()
                .map(one -> sentence(problem, List.of(one)));
    }

    private static Optional<Reason> pinInTheWay(PlanProblem problem) {
        return problem.pins().stream()
                .filter(pin -> Starts.plain(new Board(problem.withPins(problem.pins().stream()
                                .filter(other -> !other.equals(pin))
                                .toList())))
                        .isPresent())
                .findFirst()
                .map(pin -> Reason.of("pin-before-its-sources")
                        .with("tie", pin.tie())
                        .with("start", pin.start()));
    }

    private static boolean neverFits(Board board, Piece piece) {
        for (int slot = 0; slot < CourtTime.MOST_SLOTS; slot++) {
            if (!board.spots(slot, piece.width(), piece.minutes()).isEmpty()) {
                return false;
            }
        }
        return true;
    }

    private static PlanProblem without(PlanProblem whole, List<Requirement> kept) {
        PlanProblem problem = whole;
        for (Requirement requirement : Requirement.of(whole)) {
            problem = kept.contains(requirement) ? problem : requirement.dropped(problem);
        }
        return problem;
    }

    /** The ties of one club, where those alone cannot hold; else leaves out one tie after the other for as long as the rest cannot. */
    private static PlanProblem thinned(PlanProblem problem) {
        PlanProblem rest = new Board(problem)
                .clubs().stream()
                        .map(club -> problem.withTies(problem.ties().stream()
                                .filter(tie -> tie.clubs().contains(club))
                                .toList()))
                        .filter(Conflicts::cannotHold)
                        .findFirst()
                        .orElse(problem);
        for (PlanTie tie : rest.ties()) {
            List<PlanTie> others = rest.ties().stream()
                    .filter(other -> !other.id().equals(tie.id()))
                    .toList();
            PlanProblem smaller = rest.withTies(others);
            rest = !others.isEmpty() && cannotHold(smaller) ? smaller : rest;
        }
        return rest;
    }

    private static boolean cannotHold(PlanProblem problem) {
        if (problem.ties().isEmpty()) {
            return false;
        }
        Board board = new Board(problem);
        if (board.base() + Bounds.of(board).minutes() > board.closes()) {
            return true;
        }
        return board.closes() != Board.NEVER
                && board.pieces().size() <= ExactSearch.FEW
                && ExactSearch.plan(board, board.closes(), ExactSearch.USUAL_STEPS) == ExactSearch.End.NONE;
    }

    /** A club that is in all of these ties. */
    private static Optional<ClubId> club(PlanProblem rest) {
        return rest.ties().get(0).clubs().stream()
                .filter(one -> rest.ties().stream().allMatch(tie -> tie.clubs().contains(one)))
                .findFirst();
    }

    private static Reason sentence(PlanProblem rest, List<Requirement> kept) {
        List<Reason> culprits = new ArrayList<>();
        List<TieId> ties = rest.ties().stream().map(PlanTie::id).toList();
        Optional<ClubId> club = club(rest);
        Reason what = club.isPresent() && ties.size() > 1
                ? Reason.of("culprit-club").with("club", club.get()).with("count", ties.size())
                : Reason.of(ties.size() <= NAMED ? "culprit-ties" : "culprit-rubbers");
        culprits.add(what.with("ties", ties)
                .with("rubbers", rest.rubbers())
                .with("courts", rest.courts().size())
                .with("slot", rest.slotMinutes()));
        kept.forEach(requirement -> culprits.add(requirement.said()));
        return Reason.of("cannot-hold-together").with("culprits", culprits).with("start", rest.start());
    }
}
