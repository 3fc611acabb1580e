package tiewright.standings;

/** How two sums, won and lost, are turned into one value. */
public enum Form {
    /** The sum won alone. */
    WON,
    /** Won minus lost. */
    DIFFERENCE,
    /** Won divided by lost; with nothing lost it ranks first, whatever was won. */
    RATIO
}
