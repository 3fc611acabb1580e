package tiewright.standings;

/**
 * What a tie counts in the table, such as 1/0/0, 2/1/0 or 3/1/0. Any whole numbers; it is the organiser's business that a
 * win counts more than a loss.
 */
public record PointsForTie(int won, int drawn, int lost) {}
