package tiewright.timetable;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.entity.PlanningPin;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.domain.variable.PlanningVariable;

/** A piece and the spot it stands on. Numbered from 0; a piece of a hand-made plan may stand nowhere. */
@PlanningEntity
class PlacedPiece {
    static final String SPOTS = "spots";

    @PlanningId
    private int number;

    private Board board;

    @ValueRangeProvider(id = SPOTS)
    private List<Spot> spots;

    @PlanningPin
    private boolean pinned;

    @PlanningVariable(valueRangeProviderRefs = SPOTS)
    private @Nullable Spot spot;

    @SuppressWarnings("NullAway.Init") // OptaPlanner clones plans through it
    PlacedPiece() {}

    PlacedPiece(Board board, Piece piece, List<Spot> spots, @Nullable Spot spot) {
        this.number = piece.number();
        this.board = board;
        this.spots = spots;
        this.pinned = piece.pin().isPresent();
        this.spot = spot;
    }

    List<Spot> spots() {
        return spots;
    }

    int number() {
        return number;
    }

    Board board() {
        return board;
    }

    @Nullable
    Spot spot() {
        return spot;
    }

    /** Of a piece that stands somewhere. */
    Spot at() {
        return java.util.Objects.requireNonNull(spot);
    }

    boolean isPinned() {
        return pinned;
    }

    /** The club by its number on the board plays here. */
    boolean hasClub(int club) {
        return board.hasClub(number, club);
    }

    int start() {
        return at().start();
    }

    int end() {
        return at().end();
    }

    void move(@Nullable Spot other) {
        spot = other;
    }

    @Override
    public String toString() {
        return board.tie(board.pieces().get(number)).id() + " " + spot;
    }
}
