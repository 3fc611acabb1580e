package tiewright.event;

import java.util.Optional;

/**
 * One side of a tie: the club if it is known, and where it comes from if it was not known from the start.
 *
 * <p>At least one of the two is there.
 */
public record Slot(Optional<ClubId> club, Optional<SlotSource> from) {
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
}
