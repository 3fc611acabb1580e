package tiewright.lineup.tie;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.solution.ProblemFactCollectionProperty;
import org.optaplanner.core.api.domain.solution.ProblemFactProperty;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import tiewright.event.PlayerId;
import tiewright.lineup.Squad;
import tiewright.lineup.TieRules;
import tiewright.lineup.Wish;
import tiewright.lineup.Wishes;

/** A sheet in the making: who sits where, and everything that the constraints need to judge it. */
@PlanningSolution
class LineupPlan {
    static final String PLAYERS = "players";

    @ProblemFactProperty
    private TieFacts facts;

    @ProblemFactCollectionProperty
    private List<Wish> wishes;

    @ValueRangeProvider(id = PLAYERS)
    @ProblemFactCollectionProperty
    private List<SeatPlayer> players;

    @PlanningEntityCollectionProperty
    private List<Seat> seats;

    @PlanningScore
    private @Nullable HardMediumSoftLongScore score;

    @SuppressWarnings("NullAway.Init") // OptaPlanner clones plans through it
    LineupPlan() {}

    LineupPlan(Board board) {
        this.facts = new TieFacts(board);
        Squad squad = board.problem().ours();
        this.wishes = board.problem().wishes().stream()
                .filter(wish -> Wishes.isBinding(wish, squad))
                .toList();
        this.players = new ArrayList<>();
        for (PlayerId id : board.players()) {
            players.add(new SeatPlayer(
                    id, players.size(), squad.rank(id), true, squad.member(id).flatMap(Squad.Member::plays)));
        }
        this.seats = new ArrayList<>();
        for (int seat = 0; seat < 2 * board.rules().rubbers(); seat++) {
            if (board.seating().fills(seat / 2)) { // what the squad cannot fill has no seats to try
                seats.add(new Seat(seat, seat / 2, null));
            }
        }
    }

    /**
     * What never changes while a sheet is made.
     *
     * @param board identity is enough: one plan has one
     */
    record TieFacts(Board board) {
        TieRules rules() {
            return board.rules();
        }

        boolean fills(int rubber) {
            return board.seating().fills(rubber);
        }

        boolean areOfOneKind(int rubber, int other) {
            return board.seating().top(rubber) == board.seating().top(other);
        }

        boolean isTop(int rubber) {
            return board.seating().top(rubber) == rubber;
        }

        /** Whether these two may stand together in their rubber. */
        boolean admits(Seat one, Seat other) {
            return rules().each()
                    .kinds()
                    .of(one.rubber() + 1)
                    .admits(one.taken().plays(), other.taken().plays());
        }

        /** The pairs that sit together; a rubber with an empty seat or with one player twice has none. */
        int[] line(List<Seat> seats) {
            SeatPlayer[] sitting = new SeatPlayer[2 * rules().rubbers()];
            for (Seat seat : seats) {
                sitting[seat.id()] = seat.player();
            }
            int[] line = new int[rules().rubbers()];
            Arrays.setAll(line, rubber -> pair(sitting[2 * rubber], sitting[2 * rubber + 1]));
            return line;
        }

        private int pair(@Nullable SeatPlayer one, @Nullable SeatPlayer other) {
            if (one == null || other == null || one.number() == other.number() || !one.present() || !other.present()) {
                return Board.EMPTY;
            }
            return board.pairNumber(one.number(), other.number());
        }
    }

    int[] line() {
        return facts.line(seats);
    }

    TieFacts facts() {
        return facts;
    }

    List<Wish> wishes() {
        return wishes;
    }

    List<SeatPlayer> players() {
        return players;
    }

    List<Seat> seats() {
        return seats;
    }

    HardMediumSoftLongScore score() {
        return java.util.Objects.requireNonNull(score);
    }
}
