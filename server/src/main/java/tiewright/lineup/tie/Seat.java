package tiewright.lineup.tie;

import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.variable.PlanningVariable;
import tiewright.lineup.Wish;

/** One of the two places of a rubber. Rubbers count from 0; a seat of a hand-made plan may be empty. */
@PlanningEntity
class Seat {
    @PlanningId
    private int id;

    private int rubber;

    @PlanningVariable(valueRangeProviderRefs = LineupPlan.PLAYERS)
    private @Nullable SeatPlayer player;

    Seat() {}

    Seat(int id, int rubber, @Nullable SeatPlayer player) {
        this.id = id;
        this.rubber = rubber;
        this.player = player;
    }

    int id() {
        return id;
    }

    int rubber() {
        return rubber;
    }

    @Nullable
    SeatPlayer player() {
        return player;
    }

    /** Who sits here; an empty seat has nobody and must not be asked. */
    SeatPlayer taken() {
        return Objects.requireNonNull(player);
    }

    Optional<SeatPlayer> occupant() {
        return Optional.ofNullable(player);
    }

    void take(@Nullable SeatPlayer other) {
        player = other;
    }

    boolean isEmpty() {
        return player == null;
    }

    /** The rank of who sits here; an empty seat has none and must not be asked. */
    int rank() {
        return taken().rank();
    }

    boolean isOf(Wish wish) {
        return player != null && wish.players().contains(player.id());
    }

    @Override
    public String toString() {
        return "rubber " + (rubber + 1) + ": " + (player == null ? "nobody" : player.id());
    }
}
