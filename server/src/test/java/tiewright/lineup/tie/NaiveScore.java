package tiewright.lineup.tie;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.score.calculator.EasyScoreCalculator;
import tiewright.event.PlayerId;
import tiewright.lineup.Wish;
import tiewright.sheet.StrengthOrder;

/** The score of a plan once more, with plain loops from the sheet alone: a second opinion on the constraints. */
public class NaiveScore implements EasyScoreCalculator<LineupPlan, HardMediumSoftLongScore> {
    @Override
    public HardMediumSoftLongScore calculateScore(LineupPlan plan) {
        Board board = plan.facts().board();
        SeatPlayer[] sitting = new SeatPlayer[2 * board.rules().rubbers()];
        plan.seats().forEach(seat -> sitting[seat.id()] = seat.player());
        long breaches = players(sitting, board) + rubbers(sitting, board);
        for (Wish wish : plan.wishes()) {
            breaches += wish(wish, sitting);
        }
        Merit merit = Merit.of(board, plan.line());
        return HardMediumSoftLongScore.of(-breaches, merit.worth(), -1_000_000L * merit.missing() + merit.learning());
    }

    private static long players(SeatPlayer[] sitting, Board board) {
        long breaches = 0;
        Set<PlayerId> seen = new HashSet<>();
        for (SeatPlayer one : sitting) {
            if (one != null && seen.add(one.id())) {
                long times = 0;
                for (SeatPlayer other : sitting) {
                    times += other != null && other.id().equals(one.id()) ? 1 : 0;
                }
                breaches += Math.max(0, times - board.rules().mostPerPlayer());
            }
            breaches += one != null && !one.present() ? 1 : 0;
        }
        return breaches;
    }

    private static long rubbers(SeatPlayer[] sitting, Board board) {
        long breaches = 0;
        List<Integer> sums = new ArrayList<>();
        for (int rubber = 0; rubber < sitting.length / 2; rubber++) {
            SeatPlayer one = sitting[2 * rubber];
            SeatPlayer other = sitting[2 * rubber + 1];
            boolean both = one != null && other != null;
            breaches += both && one.id().equals(other.id()) ? 1 : 0;
            breaches += (one == null) != (other == null) ? 1 : 0;
            breaches += both && !board.rules().each().kinds().of(rubber + 1).admits(one.plays(), other.plays()) ? 1 : 0;
            breaches += board.seating().fills(rubber) ? (one == null ? 1 : 0) + (other == null ? 1 : 0) : 0;
            sums.add(both ? one.rank() + other.rank() : null);
        }
        for (int upper = 0; upper < sums.size(); upper++) {
            for (int lower = upper + 1; lower < sums.size(); lower++) {
                boolean known = sums.get(upper) != null && sums.get(lower) != null;
                boolean oneKind = board.rules().each().kinds().of(upper + 1)
                        == board.rules().each().kinds().of(lower + 1);
                boolean top = true;
                for (int before = 0; before < upper; before++) {
                    top &= board.rules().each().kinds().of(before + 1)
                            != board.rules().each().kinds().of(upper + 1);
                }
                breaches += known
                                && oneKind
                                && StrengthOrder.isBroken(board.rules().order(), top, sums.get(upper), sums.get(lower))
                        ? 1
                        : 0;
            }
        }
        for (int empty = 0; empty < sitting.length; empty++) {
            for (int lower = empty + 1; lower < sitting.length; lower++) {
                breaches += board.seating().fills(empty / 2)
                                && sitting[empty] == null
                                && sitting[lower] != null
                                && lower / 2 > empty / 2
                        ? 1
                        : 0;
            }
        }
        return breaches;
    }

    private static long wish(Wish wish, SeatPlayer[] sitting) {
        long breaches = 0;
        boolean plays = false;
        for (int rubber = 0; rubber < sitting.length / 2; rubber++) {
            Optional<PlayerId> one = id(sitting[2 * rubber]);
            Optional<PlayerId> other = id(sitting[2 * rubber + 1]);
            boolean oneNamed = one.map(wish.players()::contains).orElse(false);
            boolean otherNamed = other.map(wish.players()::contains).orElse(false);
            boolean asPair = oneNamed && otherNamed && !one.equals(other);
            plays |= oneNamed || otherNamed;
            int named = (oneNamed ? 1 : 0) + (otherNamed ? 1 : 0);
            breaches += switch (wish.kind()) {
                case TOGETHER -> asPair ? 0 : named;
                case APART -> asPair ? 1 : 0;
                case MUST_REST -> named;
                case MUST_PLAY -> 0;
            };
        }
        return breaches + (wish.kind() == Wish.Kind.MUST_PLAY && !plays ? 1 : 0);
    }

    private static Optional<PlayerId> id(SeatPlayer player) {
        return Optional.ofNullable(player).map(SeatPlayer::id);
    }
}
