package tiewright.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import tiewright.event.ClubId;
import tiewright.event.TieId;

/** The ties of one pool, numbered in the order of play. */
public final class PoolPlan {
    /** Pool names after which a bare number could be read as another pool's tie or as a tie of the knockout. */
    private static final Pattern NEEDS_A_DOT = Pattern.compile(".*[0-9]|F|SF|QF|P|R");

    private PoolPlan() {}

    /**
     * Who meets whom in which round, by the {@linkplain Berger Berger tables}.
     *
     * @param clubs in the order of the draw: the first has number 1; 2 to {@value Berger#LARGEST} different clubs
     * @return the ties by round, in the order of the table; {@code A1}, {@code A2}, … for pool A
     */
    public static List<PoolTie> ties(String pool, List<ClubId> clubs) {
        if (clubs.stream().distinct().count() != clubs.size()) {
            throw new IllegalArgumentException("a club stands twice in pool " + pool);
        }
        List<PoolTie> ties = new ArrayList<>();
        int round = 0;
        for (List<Berger.Pairing> pairings : Berger.rounds(clubs.size())) {
            round++;
            for (Berger.Pairing p : pairings) {
                TieId tie = tie(pool, ties.size() + 1);
                ties.add(new PoolTie(tie, pool, round, clubs.get(p.home() - 1), clubs.get(p.away() - 1)));
            }
        }
        return List.copyOf(ties);
    }

    /** {@code A7}; with a dot where the bare form could be mistaken, such as {@code P.3} (P3 is the tie for third). */
    static TieId tie(String pool, int number) {
        return TieId.of(pool + (NEEDS_A_DOT.matcher(pool).matches() ? "." : "") + number);
    }
}
