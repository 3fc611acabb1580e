package tiewright.event;

import java.util.Optional;

/**
 * One side of a tie: the club if it is known, and where it comes from if it was not known from the start.
 *
 * <p>At least one of the two is there.
 *
 * @param kept by a ruling the club stays, whatever the results say since
 */
public record Slot(Optional<ClubId> club, Optional<SlotSource> from, boolean kept) {
    public Slot(Optional<ClubId> club, Optional<SlotSource> from) {
        this(club, from, false);
    }

    public Slot {
        if (club.isEmpty() && from.isEmpty()) {
            throw new IllegalArgumentException("a slot needs a club or a source");
        }
    }

    public static Slot of(ClubId club) {
        return new Slot(Optional.of(club), Optional.empty());
    }

    public static Slot from(SlotSource source) {
        return new Slot(Optional.empty(), Optional.of(source));
    }

    public Slot filledBy(ClubId known) {
        return new Slot(Optional.of(known), from);
    }

    /** The club stays by ruling. */
    Slot keptBy(ClubId known) {
        return new Slot(Optional.of(known), from, true);
    }

    /** The club that takes the slot now, or nobody yet; a slot without a source keeps its club. */
    Slot takenBy(Optional<ClubId> known) {
        return from.isPresent() ? new Slot(known, from) : this;
    }
}
