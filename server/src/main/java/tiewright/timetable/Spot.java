package tiewright.timetable;

/**
 * A place in time and hall.
 *
 * @param start minute of the day, likewise the end
 * @param slot counted from 0; of what is off the grid, the slot in which it begins, -1 before the first
 * @param courts a bit for each
 * @param block the first court, counted from 0
 */
record Spot(int start, int end, int slot, long courts, int block) {
    boolean meets(Spot other) {
        return start < other.end && other.start < end;
    }

    boolean isSharedWith(Spot other) {
        return (courts & other.courts) != 0 && meets(other);
    }
}
