package tiewright.lineup.tie;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveListFactory;

/**
 * Moves that seat two players in one rubber at once; whoever sat there takes the seats that they leave. Seating one after
 * the other leads through a sheet that may break a wish or the order of strength.
 */
public class PairSeatings implements MoveListFactory<LineupPlan> {
    @Override
    public List<PairSeating> createMoveList(LineupPlan plan) {
        List<PairSeating> moves = new ArrayList<>();
        List<SeatPlayer> players = plan.players();
        for (int first = 0; first < plan.seats().size(); first += 2) {
            for (int one = 0; one < players.size(); one++) {
                for (int other = one + 1; other < players.size(); other++) {
                    moves.add(seating(
                            plan,
                            plan.seats().get(first),
                            players.get(one),
                            plan.seats().get(first + 1),
                            players.get(other)));
                }
            }
        }
        return moves;
    }

    private static PairSeating seating(LineupPlan plan, Seat left, SeatPlayer one, Seat right, SeatPlayer other) {
        List<Seat> seats = new ArrayList<>(List.of(left, right));
        List<Optional<SeatPlayer>> sitting = new ArrayList<>(List.of(Optional.of(one), Optional.of(other)));
        List<Optional<SeatPlayer>> unseated = new ArrayList<>(List.of(left.occupant(), right.occupant()));
        unseated.removeIf(who ->
                who.filter(player -> player.equals(one) || player.equals(other)).isPresent());
        for (Seat seat : plan.seats()) {
            boolean leaves = seat.occupant()
                    .filter(player -> player.equals(one) || player.equals(other))
                    .isPresent();
            if (leaves && seat.rubber() != left.rubber() && !unseated.isEmpty()) {
                seats.add(seat);
                sitting.add(unseated.remove(0));
            }
        }
        return new PairSeating(seats, sitting);
    }

    /** These seats take these players. */
    static final class PairSeating extends AbstractMove<LineupPlan> {
        private static final String PLAYER = "player";

        private final List<Seat> seats;
        private final List<Optional<SeatPlayer>> sitting;

        PairSeating(List<Seat> seats, List<Optional<SeatPlayer>> sitting) {
            this.seats = List.copyOf(seats);
            this.sitting = List.copyOf(sitting);
        }

        @Override
        public boolean isMoveDoable(ScoreDirector<LineupPlan> director) {
            return !seats.stream().map(Seat::occupant).toList().equals(sitting);
        }

        @Override
        protected PairSeating createUndoMove(ScoreDirector<LineupPlan> director) {
            return new PairSeating(seats, seats.stream().map(Seat::occupant).toList());
        }

        @Override
        protected void doMoveOnGenuineVariables(ScoreDirector<LineupPlan> director) {
            for (int i = 0; i < seats.size(); i++) {
                @Nullable SeatPlayer player = sitting.get(i).orElse(null);
                director.beforeVariableChanged(seats.get(i), PLAYER);
                seats.get(i).take(player);
                director.afterVariableChanged(seats.get(i), PLAYER);
            }
        }

        @Override
        public PairSeating rebase(ScoreDirector<LineupPlan> director) {
            return new PairSeating(
                    seats.stream().map(director::lookUpWorkingObject).toList(),
                    sitting.stream()
                            .map(who -> who.map(director::lookUpWorkingObject))
                            .toList());
        }

        @Override
        public String toString() {
            return "seat " + sitting + " in " + seats;
        }
    }
}
