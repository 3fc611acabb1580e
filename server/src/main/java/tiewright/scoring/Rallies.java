package tiewright.scoring;

/** How many rallies a game, or the rest of one, takes: mean and standard deviation. */
public record Rallies(double mean, double sd) {}
