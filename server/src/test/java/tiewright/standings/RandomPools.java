package tiewright.standings;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import tiewright.event.ClubId;
import tiewright.event.How;
import tiewright.event.RubberNo;
import tiewright.event.RubberScore;
import tiewright.event.Side;
import tiewright.event.TieId;
import tiewright.event.TieScore;
import tiewright.scoring.Score;

/** Pools in which clubs are often level: few points, and results copied and turned round. */
final class RandomPools {
    private final Random random;
    private final TieShape shape;

    RandomPools(Random random, TieShape shape) {
        this.random = random;
        this.shape = shape;
    }

    static List<ClubId> clubs(int count) {
        List<ClubId> clubs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            clubs.add(ClubId.of(String.valueOf((char) ('A' + i))));
        }
        return clubs;
    }

    /** All play all once, the last {@code open} ties not finished, some of those begun. */
    List<TieScore> ties(List<ClubId> clubs, int open) {
        List<TieScore> ties = new ArrayList<>();
        int all = clubs.size() * (clubs.size() - 1) / 2;
        int[] order = random.ints(0, 1_000_000).distinct().limit(all).toArray();
        List<int[]> pairs = new ArrayList<>();
        for (int i = 0; i < clubs.size(); i++) {
            for (int j = i + 1; j < clubs.size(); j++) {
                pairs.add(
                        random.nextBoolean()
                                ? new int[] {i, j, order[pairs.size()]}
                                : new int[] {j, i, order[pairs.size()]});
            }
        }
        pairs.sort((one, other) -> Integer.compare(one[2], other[2]));
        boolean cyclic = random.nextInt(3) == 0; // the same score all round: everybody level for long
        List<RubberScore> pattern = rubbers(shape.rubbers());
        for (int[] pair : pairs) {
            boolean finished = ties.size() < all - open;
            int played = finished ? shape.rubbers() : random.nextInt(2) * random.nextInt(shape.rubbers());
            List<RubberScore> rubbers = cyclic && finished ? pattern : rubbers(played);
            TieId id = TieId.of("T" + (ties.size() + 1));
            TieScore tie = new TieScore(id, clubs.get(pair[0]), clubs.get(pair[1]), rubbers, finished, shape.weights());
            ties.add(finished ? decided(tie) : tie);
        }
        return ties;
    }

    /** The same ties, the open ones finished at random. */
    List<TieScore> complete(List<TieScore> ties) {
        List<TieScore> ended = new ArrayList<>();
        for (TieScore tie : ties) {
            List<RubberScore> rubbers = new ArrayList<>(tie.rubbers());
            for (int number = rubbers.size() + 1; number <= shape.rubbers(); number++) {
                rubbers.add(rubber(RubberNo.of(number)));
            }
            ended.add(tie.finished() ? tie : decided(tie.with(rubbers, true)));
        }
        return ended;
    }

    private TieScore decided(TieScore tie) {
        if (shape.decider().isEmpty() || tie.winner().isPresent()) {
            return tie;
        }
        List<RubberScore> rubbers = new ArrayList<>(tie.rubbers());
        rubbers.add(rubber(RubberNo.DECIDER));
        return tie.with(rubbers, true);
    }

    private List<RubberScore> rubbers(int count) {
        List<RubberScore> rubbers = new ArrayList<>();
        for (int number = 1; number <= count; number++) {
            rubbers.add(rubber(RubberNo.of(number)));
        }
        return rubbers;
    }

    private RubberScore rubber(RubberNo number) {
        Side winner = random.nextBoolean() ? Side.HOME : Side.AWAY;
        List<Score> games = new ArrayList<>();
        int lost = random.nextInt(shape.games().toWin());
        for (int i = 0; i < lost; i++) {
            games.add(game(winner.other()));
        }
        for (int i = 0; i < shape.games().toWin(); i++) {
            games.add(game(winner));
        }
        return new RubberScore(number, games, How.PLAYED);
    }

    private Score game(Side winner) {
        int loser = random.nextInt(shape.games().target());
        int best = loser > shape.games().target() - shape.games().leastMargin()
                ? loser + shape.games().leastMargin()
                : shape.games().target();
        return winner == Side.HOME ? Score.of(best, loser) : Score.of(loser, best);
    }
}
