package tiewright.standings;

/** What becomes of the ties of a club that withdrew. */
public enum Treatment {
    /** All its ties are taken out, played or not, and it has no row. */
    ANNUL,
    /** Its finished ties stay, the others do not count; it keeps its row. */
    KEEP,
    /** Its finished ties stay; every rubber not yet decided goes to the other club, 0 to the target. */
    AWARD
}
