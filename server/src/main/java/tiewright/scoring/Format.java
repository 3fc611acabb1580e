package tiewright.scoring;

import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How one game is scored and when it ends.
 *
 * <p>Unless an ending says otherwise a game is won by the first side with at least {@code target} points and two more than
 * the other, and the last point may be won by either side.
 *
 * @param target points to play to, 1 to 99
 * @param byOne the first side at the target wins, one point ahead is enough
 * @param cap the first side with this many points wins whatever the difference; target to 199
 * @param serveLast the point that ends the game counts only for the serving side; a rally that the receiving side wins
 *     there gives it the serve and no point (USA Pickleball rulebook 2025, 12.B.1.b-c). It changes who wins and how long
 *     it takes, never which final scores are possible
 */
public record Format(Kind kind, int target, boolean byOne, OptionalInt cap, boolean serveLast) {
    private static final int MOST_TARGET = 99;
    private static final int MOST_CAP = 199;
    private static final Pattern CODE =
            Pattern.compile("(side-out|rally)-([1-9]\\d?)((?:-cap-[1-9]\\d{0,2}|-by-1|-serve-last)*)");
    private static final Pattern ENDING = Pattern.compile("-(?:cap-(\\d+)|(by-1)|(serve-last))");

    public Format {
        if (target < 1 || target > MOST_TARGET) {
            throw new IllegalArgumentException("a game is played to 1 to " + MOST_TARGET + " points, not " + target);
        }
        if (cap.isPresent() && (cap.getAsInt() < target || cap.getAsInt() > MOST_CAP)) {
            throw new IllegalArgumentException(
                    "a cap is " + target + " to " + MOST_CAP + " points, not " + cap.getAsInt());
        }
    }

    /** Who can win a point. */
    public enum Kind {
        /** Only the serving side; in doubles both of its players serve in turn, except one only at the start of a game. */
        SIDE_OUT("side-out"),
        /** Whoever wins the rally; that side serves next. */
        RALLY("rally");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }
    }

    /** An ending of a code that varies how the game ends. */
    public enum Ending {
        CAP,
        BY_1,
        SERVE_LAST
    }

    public static Format sideOut(int target) {
        return new Format(Kind.SIDE_OUT, target, false, OptionalInt.empty(), false);
    }

    public static Format rally(int target) {
        return new Format(Kind.RALLY, target, false, OptionalInt.empty(), false);
    }

    /** Reads a code such as {@code side-out-11} or {@code rally-21-cap-30}; endings in any order, each at most once. */
    public static Optional<Format> parse(String code) {
        Matcher parts = CODE.matcher(code);
        if (!parts.matches()) {
            return Optional.empty();
        }
        Set<Ending> seen = EnumSet.noneOf(Ending.class);
        OptionalInt cap = OptionalInt.empty();
        Matcher endings = ENDING.matcher(parts.group(3));
        while (endings.find()) {
            if (!seen.add(ending(endings))) {
                return Optional.empty();
            }
            if (endings.group(1) != null) {
                cap = OptionalInt.of(Integer.parseInt(endings.group(1)));
            }
        }
        int target = Integer.parseInt(parts.group(2));
        if (cap.isPresent() && (cap.getAsInt() < target || cap.getAsInt() > MOST_CAP)) {
            return Optional.empty();
        }
        Kind kind = parts.group(1).equals(Kind.RALLY.code) ? Kind.RALLY : Kind.SIDE_OUT;
        return Optional.of(new Format(kind, target, seen.contains(Ending.BY_1), cap, seen.contains(Ending.SERVE_LAST)));
    }

    private static Ending ending(Matcher found) {
        return found.group(1) != null ? Ending.CAP : found.group(2) != null ? Ending.BY_1 : Ending.SERVE_LAST;
    }

    /** The code that {@link #parse} reads back; endings in the order cap, by-1, serve-last. */
    public String code() {
        return kind.code + "-" + target
                + (cap.isPresent() ? "-cap-" + cap.getAsInt() : "")
                + (byOne ? "-by-1" : "")
                + (serveLast ? "-serve-last" : "");
    }

    /** The endings that are written but change nothing: tell whoever chose them. */
    public Set<Ending> idle() {
        Set<Ending> idle = EnumSet.noneOf(Ending.class);
        if (byOne && cap.isPresent()) {
            idle.add(Ending.CAP); // the game is over at the target, at or below the cap
        }
        if (serveLast && kind == Kind.SIDE_OUT) {
            idle.add(Ending.SERVE_LAST); // in side-out every point is won on serve
        }
        return idle;
    }

    /**
     * The points with which a side wins against an opponent who has {@code other} points, if nothing more happens to the
     * opponent: max(target, other + 2), less where the cap or by-1 says so.
     *
     * @throws IllegalArgumentException if a game in which somebody lost with so many points cannot be
     */
    public int winningScoreAgainst(int other) {
        if (other < 0 || other > mostOfLoser()) {
            throw new IllegalArgumentException("nobody loses a game of " + code() + " with " + other + " points");
        }
        long twoAhead = Math.max(target, other + 2L);
        return byOne ? target : (int) Math.min(mostPoints(), twoAhead);
    }

    /** The side that has won, if the game with these points is over. A score past the end counts as over. */
    public Optional<SideNo> winner(Score score) {
        if (!isOver(score.home(), score.away())) {
            return Optional.empty();
        }
        return score.home() == score.away()
                ? Optional.empty()
                : Optional.of(score.home() > score.away() ? SideNo.ONE : SideNo.TWO);
    }

    public boolean isOver(Score score) {
        return isOver(score.home(), score.away());
    }

    boolean isOver(int one, int two) {
        int most = Math.max(one, two);
        return most >= target && (byOne || Math.abs(one - two) >= 2 || most >= mostPoints());
    }

    /** True if the game can go on without limit: two ahead and no cap. */
    public boolean isOpenEnded() {
        return !byOne && cap.isEmpty();
    }

    /** The most points anybody can have; Integer.MAX_VALUE in an open-ended format. */
    int mostPoints() {
        return byOne ? target : cap.orElse(Integer.MAX_VALUE);
    }

    private int mostOfLoser() {
        return isOpenEnded() ? Integer.MAX_VALUE : mostPoints() - 1;
    }
}
