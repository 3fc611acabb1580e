package tiewright.standings;

/** What is counted for a club over its ties. */
public enum Quantity {
    TIE_POINTS,
    TIES_WON,
    RUBBERS,
    GAMES,
    POINTS
}
