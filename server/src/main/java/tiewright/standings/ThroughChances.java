package tiewright.standings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.How;
import tiewright.event.RubberNo;
import tiewright.event.RubberScore;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.event.TieScore;
import tiewright.scoring.Score;

/**
 * How likely does a club go through after each way in which one of its open ties can end?
 *
 * <p>The other open ties are played out many times: every rubber and decider left is even, the loser of a game has any
 * number of points up to two below the target, each as likely. Both are assumptions of ours, which know nothing of how
 * strong clubs are. The same plays serve all ends. Where a lot decides, each of those it is drawn among is as likely.
 */
public final class ThroughChances {
    /** Plays of the rest of the pool unless more are asked for: a chance is then right to within five points. */
    public static final int USUAL_PLAYS = 400;

    private final TableInput input;
    private final ClubId club;
    private final TieId tie;
    private final int through;

    private ThroughChances(TableInput input, ClubId club, TieId tie, int through) {
        this.input = input;
        this.club = club;
        this.tie = tie;
        this.through = through;
    }

    /** An end of the tie in rubbers of the club and of the other, the decider among them. */
    public record End(int own, int other) implements Comparable<End> {
        @Override
        public int compareTo(End end) {
            return own - other != end.own - end.other
                    ? Integer.compare(own - other, end.own - end.other)
                    : Integer.compare(own, end.own);
        }
    }

    /** For a tie of a pool as the event stands, and the places that its knockout has for that pool; empty for a knockout tie. */
    public static Map<End, Double> of(Event event, TieId id, ClubId club, int plays, long seed) {
        return event.tie(id)
                .flatMap(Tie::pool)
                .map(pool -> of(PoolTables.input(event, pool), club, id, PoolTables.through(event, pool), plays, seed))
                .orElse(Map.of());
    }

    /**
     * @param through how many clubs of this table go through, 1 or more
     * @return every end that no rubber is left void in; empty if the club does not play this tie in the table, or has played it
     */
    public static Map<End, Double> of(TableInput input, ClubId club, TieId tie, int through, int plays, long seed) {
        boolean open = input.ties().stream().anyMatch(one -> one.tie().equals(tie) && one.has(club) && !one.finished());
        return open ? new ThroughChances(input, club, tie, through).play(plays, seed) : Map.of();
    }

    private Map<End, Double> play(int plays, long seed) {
        Map<End, Double> sums = new TreeMap<>();
        for (int play = 0; play < plays; play++) {
            for (End end : ends()) {
                sums.merge(end, share(end, new SplittableRandom(seed * 1_000_003 + play)), Double::sum);
            }
        }
        Map<End, Double> chances = new HashMap<>();
        sums.forEach((end, sum) -> chances.put(end, sum / plays));
        return new TreeMap<>(chances);
    }

    private List<End> ends() {
        TieShape shape = input.rules().shape();
        List<End> ends = new ArrayList<>();
        for (int own = 0; own <= shape.rubbers(); own++) {
            int other = shape.rubbers() - own;
            if (own == other && shape.decider().isPresent()) {
                ends.add(new End(own + 1, other));
                ends.add(new End(own, other + 1));
            } else {
                ends.add(new End(own, other));
            }
        }
        return ends;
    }

    /** The share of a place among those that go through, in one play. */
    private double share(End end, SplittableRandom random) {
        List<TieScore> ties = new ArrayList<>();
        for (TieScore score : input.ties()) {
            boolean asked = score.tie().equals(tie);
            ties.add(score.finished() || asked ? score : played(score, random));
        }
        ties.replaceAll(score -> score.tie().equals(tie) ? ended(score, end, random) : score);
        Table table =
                Standings.of(new TableInput(input.clubs(), ties, input.rules(), input.withdrawals(), input.lots()));
        return table.row(club)
                .map(row -> {
                    int sharing = row.onlyALotParts()
                            ? row.decidedBy().deciding().level().size()
                            : 1;
                    return Math.max(0, Math.min(1, (through - row.place() + 1.0) / sharing));
                })
                .orElse(0.0);
    }

    private TieScore played(TieScore score, SplittableRandom random) {
        TieShape shape = input.rules().shape();
        List<RubberScore> rubbers = new ArrayList<>(score.rubbers());
        for (RubberNo rubber : RubberNo.upTo(shape.rubbers())) {
            if (rubbers.stream().noneMatch(one -> one.rubber().equals(rubber))) {
                rubbers.add(game(rubber, random.nextBoolean() ? Side.HOME : Side.AWAY, random));
            }
        }
        TieScore level = new TieScore(score.tie(), score.home(), score.away(), rubbers, true);
        if (shape.decider().isPresent() && level.winner().isEmpty()) {
            rubbers.add(game(RubberNo.DECIDER, random.nextBoolean() ? Side.HOME : Side.AWAY, random));
        }
        return new TieScore(score.tie(), score.home(), score.away(), rubbers, true);
    }

    /** The asked tie with this end, whatever has been played of it: its rubbers go to the club first. */
    private TieScore ended(TieScore score, End end, SplittableRandom random) {
        Side own = score.home().equals(club) ? Side.HOME : Side.AWAY;
        int rubbers = input.rules().shape().rubbers();
        boolean decided = end.own() + end.other() > rubbers;
        int won = decided && end.own() > end.other() ? end.own() - 1 : end.own();
        List<RubberScore> scores = new ArrayList<>();
        for (RubberNo rubber : RubberNo.upTo(rubbers)) {
            scores.add(game(rubber, rubber.number() <= won ? own : own.other(), random));
        }
        if (decided) {
            scores.add(game(RubberNo.DECIDER, end.own() > end.other() ? own : own.other(), random));
        }
        return new TieScore(score.tie(), score.home(), score.away(), scores, true);
    }

    private RubberScore game(RubberNo rubber, Side winner, SplittableRandom random) {
        Games games = input.rules().shape().games(rubber);
        List<Score> scores = new ArrayList<>();
        for (int game = 0; game < games.toWin(); game++) {
            int lost = random.nextInt(Math.max(1, games.target() - 1));
            scores.add(winner == Side.HOME ? Score.of(games.target(), lost) : Score.of(lost, games.target()));
        }
        return new RubberScore(rubber, scores, How.PLAYED);
    }
}
