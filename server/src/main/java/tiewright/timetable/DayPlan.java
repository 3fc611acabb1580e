package tiewright.timetable;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.solution.ProblemFactCollectionProperty;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;

/** An order of play in the making: what stands where, and everything that the constraints need to judge it. */
@PlanningSolution
class DayPlan {
    static final String CLUBS = "clubs";
    static final int HARD_LEVELS = 1;
    static final int SOFT_LEVELS = 7;

    @ProblemFactCollectionProperty
    private List<Link> links;

    @ValueRangeProvider(id = CLUBS)
    @ProblemFactCollectionProperty
    @SuppressWarnings("UnusedVariable") // read by OptaPlanner
    private List<Duty.OnDuty> clubs;

    @PlanningEntityCollectionProperty
    private List<PlacedPiece> pieces;

    @PlanningEntityCollectionProperty
    private List<Duty> duties;

    @PlanningScore(bendableHardLevelsSize = HARD_LEVELS, bendableSoftLevelsSize = SOFT_LEVELS)
    private @Nullable BendableLongScore score;

    @SuppressWarnings("NullAway.Init") // OptaPlanner clones plans through it
    DayPlan() {}

    /** A plan that begins with these spots; every piece may go to any slot up to the last of them and a few more. */
    DayPlan(Board board, Spot[] first) {
        this.links = board.links();
        this.clubs = IntStream.range(0, board.clubs().size())
                .mapToObj(Duty.OnDuty::new)
                .toList();
        this.pieces = new ArrayList<>();
        this.duties = new ArrayList<>();
        SpotChoice choice = new SpotChoice(board, first);
        for (Piece piece : board.pieces()) {
            pieces.add(new PlacedPiece(board, piece, choice.of(piece), first[piece.number()]));
            if (board.problem().umpires()) {
                duties.add(new Duty(piece.number(), null));
            }
        }
    }

    Spot[] spots() {
        Spot[] spots = new Spot[pieces.size()];
        pieces.forEach(piece -> spots[piece.number()] = piece.at());
        return spots;
    }

    int[] dutyNumbers() {
        int[] numbers = new int[pieces.size()];
        java.util.Arrays.fill(numbers, Placing.NOBODY);
        duties.forEach(duty -> numbers[duty.piece()] = duty.clubNumber());
        return numbers;
    }

    List<PlacedPiece> pieces() {
        return pieces;
    }

    List<Duty> duties() {
        return duties;
    }

    List<Link> links() {
        return links;
    }

    BendableLongScore score() {
        return java.util.Objects.requireNonNull(score);
    }
}
