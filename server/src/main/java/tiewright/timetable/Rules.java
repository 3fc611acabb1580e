package tiewright.timetable;

/** When do two spots go badly together? */
final class Rules {
    private Rules() {}

    static boolean isBroken(Link.Kind kind, Spot a, Spot b, int rest) {
        return switch (kind) {
            case CLUB -> isClubTwice(a, b) || isTooSoon(a, b, rest);
            case ROUND, RUBBERS -> isOutOfOrder(a, b);
            case SOURCE -> isBeforeSource(a, b, rest);
            case TOGETHER -> a.start() != b.start();
            case PLAYERS -> a.meets(b);
        };
    }

    /** One club would be in two ties at once. */
    static boolean isClubTwice(Spot a, Spot b) {
        return a.meets(b);
    }

    /** A club would rest for less than the least time between the two, in minutes. */
    static boolean isTooSoon(Spot a, Spot b, int rest) {
        return !a.meets(b) && Math.max(b.start() - a.end(), a.start() - b.end()) < rest;
    }

    /** The later one of the order begins first. */
    static boolean isOutOfOrder(Spot earlier, Spot later) {
        return later.start() < earlier.start();
    }

    /** It begins before its source is over and whoever comes from there has rested. */
    static boolean isBeforeSource(Spot source, Spot then, int rest) {
        return then.start() < source.end() + rest;
    }
}
