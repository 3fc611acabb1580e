package tiewright.standings;

import tiewright.conditions.WalkoverScore;

/**
 * What the conditions of play say about a table.
 *
 * @param points what a tie counts
 * @param procedure how level clubs are parted
 * @param shape what a tie consists of
 * @param walkover what a rubber counts that is given to a club because the other one withdrew
 */
public record TableRules(PointsForTie points, Procedure procedure, TieShape shape, WalkoverScore walkover) {}
