package tiewright.lineup.tie;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveListFactory;

/** Moves that exchange the pairs of two rubbers: player by player the way there leads through two much worse sheets. */
public class RubberSwaps implements MoveListFactory<LineupPlan> {
    @Override
    public List<RubberSwap> createMoveList(LineupPlan plan) {
        List<RubberSwap> moves = new ArrayList<>();
        List<Seat> seats = plan.seats();
        for (int one = 0; one < seats.size(); one += 2) {
            for (int other = one + 2; other < seats.size(); other += 2) {
                moves.add(new RubberSwap(
                        List.of(seats.get(one), seats.get(one + 1), seats.get(other), seats.get(other + 1))));
            }
        }
        return moves;
    }

    /** The first two seats and the last two exchange their players. */
    static final class RubberSwap extends AbstractMove<LineupPlan> {
        private static final String PLAYER = "player";

        private final List<Seat> seats;

        RubberSwap(List<Seat> seats) {
            this.seats = seats;
        }

        @Override
        public boolean isMoveDoable(ScoreDirector<LineupPlan> director) {
            return seats.stream().anyMatch(seat -> !seat.isEmpty());
        }

        @Override
        protected AbstractMove<LineupPlan> createUndoMove(ScoreDirector<LineupPlan> director) {
            return new RubberSwap(seats);
        }

        @Override
        protected void doMoveOnGenuineVariables(ScoreDirector<LineupPlan> director) {
            for (int i = 0; i < 2; i++) {
                @Nullable SeatPlayer up = seats.get(i).player();
                seat(director, seats.get(i), seats.get(i + 2).player());
                seat(director, seats.get(i + 2), up);
            }
        }

        private static void seat(ScoreDirector<LineupPlan> director, Seat seat, @Nullable SeatPlayer player) {
            director.beforeVariableChanged(seat, PLAYER);
            seat.take(player);
            director.afterVariableChanged(seat, PLAYER);
        }

        @Override
        public RubberSwap rebase(ScoreDirector<LineupPlan> director) {
            return new RubberSwap(
                    seats.stream().map(director::lookUpWorkingObject).toList());
        }

        @Override
        public String toString() {
            return "exchange " + seats.get(0) + " and " + seats.get(2);
        }
    }
}
