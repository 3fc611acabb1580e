package tiewright.draw;

import tiewright.event.SlotSource;
import tiewright.event.TieId;

/** A tie of the knockout before its clubs are known; round 1 is the first round of the whole bracket. */
public record PlannedTie(TieId tie, int round, SlotSource homeFrom, SlotSource awayFrom) {}
