package tiewright.draw;

/**
 * Why a draw cannot be made as asked.
 *
 * @param subject the club, seed or pool concerned, empty where the code says it all
 * @param given the number that was given, 0 where none belongs to the code
 * @param limit the number that it must reach or not exceed, 0 where there is none
 */
public record DrawFault(Code code, String subject, int given, int limit) {
    /** Every reason. */
    public enum Code {
        NO_SPOKEN_SEED,
        CLUB_TWICE,
        SEED_TWICE,
        SEED_BELOW_ONE,
        NO_POOL,
        TOO_MANY_POOLS,
        POOL_TOO_SMALL,
        POOL_TOO_LARGE,
        POOL_TWICE,
        NOT_A_POOL_NAME,
        NO_QUALIFIER,
        TOO_MANY_FROM_A_POOL,
        TOO_FEW_QUALIFIERS,
        TOO_MANY_QUALIFIERS,
        /** More cases than the count of allowed draws may take. */
        TOO_MANY_CASES
    }

    static DrawFault of(Code code, String subject) {
        return new DrawFault(code, subject, 0, 0);
    }

    static DrawFault of(Code code, int given, int limit) {
        return new DrawFault(code, "", given, limit);
    }
}
