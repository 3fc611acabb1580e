package tiewright.draw;

import tiewright.event.ClubId;
import tiewright.event.TieId;

/** A tie of a pool before it is played: which pool and round (from 1), and who is named first. */
public record PoolTie(TieId tie, String pool, int round, ClubId home, ClubId away) {}
