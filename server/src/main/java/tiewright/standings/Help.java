package tiewright.standings;

import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.TieId;

/**
 * A result between two other clubs that settles it.
 *
 * @param winner empty when the tie has to be drawn
 * @param prospect what the result makes certain: through or out
 */
public record Help(TieId tie, ClubId home, ClubId away, Optional<ClubId> winner, Prospect prospect) {}
