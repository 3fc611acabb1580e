package tiewright.standings;

import tiewright.event.ClubId;
import tiewright.event.TieId;

/** A supposed result of a tie that the club has left. */
public record OwnResult(TieId tie, ClubId opponent, Result result) {}
