package tiewright.ledger;

/**
 * How large the file may become before it is written anew: it is only ever appended to, about 20 kB with each commit, so it would
 * grow without bound.
 *
 * @param atStart bytes above which it is written anew before it is opened
 * @param whileOpen bytes by which it may grow until that is done between two decisions
 */
record Growth(long atStart, long whileOpen) {
    private static final long MEGABYTE = 1 << 20;

    /** A day of a thousand entries passes without; somebody waits for it once in a day of many thousands. */
    static final Growth USUAL = new Growth(16 * MEGABYTE, 256 * MEGABYTE);
}
