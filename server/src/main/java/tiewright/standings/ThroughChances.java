package tiewright.standings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
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
 * number of points up to two below the target, each as likely. Where games bring table points the loser of a rubber wins as
 * many as of even games, elsewhere none. These are assumptions of ours, which know nothing of how strong clubs are. The same plays serve all ends. Where a lot decides, each of those it is drawn among is as likely.
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

    /**
     * An end of the tie in rubbers of the club and of the other, the decider among them.
     *
     * @param lead by how much those of the club weigh more
     */
    public record End(int own, int other, int lead) implements Comparable<End> {
        private static final Comparator<End> ORDER = Comparator.comparingInt(End::lead)
                .thenComparingInt(end -> end.own - end.other)
                .thenComparingInt(End::own);

        /** Of a tie whose rubbers weigh the same. */
        public End(int own, int other) {
            this(own, other, own - other);
        }

        @Override
        public int compareTo(End end) {
            return ORDER.compare(this, end);
        }

        private End and(int ownDecider, int otherDecider) {
            return new End(own + ownDecider, other + otherDecider, lead + ownDecider - otherDecider);
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
        Map<End, Set<RubberNo>> ends = ends();
        for (int play = 0; play < plays; play++) {
            for (Map.Entry<End, Set<RubberNo>> end : ends.entrySet()) {
                sums.merge(
                        end.getKey(),
                        share(end.getValue(), new SplittableRandom(seed * 1_000_003 + play)),
                        Double::sum);
            }
        }
        Map<End, Double> chances = new HashMap<>();
        sums.forEach((end, sum) -> chances.put(end, sum / plays));
        return new TreeMap<>(chances);
    }

    /** Every end, with the rubbers of one way that leads there: those that the club wins. */
    private Map<End, Set<RubberNo>> ends() {
        TieShape shape = input.rules().shape();
        Map<End, Set<RubberNo>> ends = new LinkedHashMap<>();
        for (int mask = 0; mask < 1 << shape.rubbers(); mask++) {
            Set<RubberNo> won = new TreeSet<>();
            int lead = 0;
            for (RubberNo rubber : RubberNo.upTo(shape.rubbers())) {
                boolean ours = (mask >> (rubber.number() - 1) & 1) == 1;
                lead += ours ? rubber.weight(shape.weights()) : -rubber.weight(shape.weights());
                if (ours) {
                    won.add(rubber);
                }
            }
            End end = new End(won.size(), shape.rubbers() - won.size(), lead);
            if (lead == 0 && shape.decider().isPresent()) {
                Set<RubberNo> withDecider = new TreeSet<>(won);
                withDecider.add(RubberNo.DECIDER);
                ends.putIfAbsent(end.and(1, 0), withDecider);
                ends.putIfAbsent(end.and(0, 1), won);
            } else {
                ends.putIfAbsent(end, won);
            }
        }
        return ends;
    }

    /** The share of a place among those that go through, in one play. */
    private double share(Set<RubberNo> end, SplittableRandom random) {
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
        TieScore level = score.with(rubbers, true);
        if (shape.decider().isPresent() && level.winner().isEmpty()) {
            rubbers.add(game(RubberNo.DECIDER, random.nextBoolean() ? Side.HOME : Side.AWAY, random));
        }
        return score.with(rubbers, true);
    }

    /** The asked tie with these rubbers won by the club and the others lost, whatever has been played of it. */
    private TieScore ended(TieScore score, Set<RubberNo> won, SplittableRandom random) {
        Side own = score.home().equals(club) ? Side.HOME : Side.AWAY;
        TieShape shape = input.rules().shape();
        List<RubberScore> scores = new ArrayList<>();
        for (RubberNo rubber : RubberNo.upTo(shape.rubbers())) {
            scores.add(game(rubber, won.contains(rubber) ? own : own.other(), random));
        }
        if (shape.decider().isPresent() && score.with(scores, true).winner().isEmpty()) {
            scores.add(game(RubberNo.DECIDER, won.contains(RubberNo.DECIDER) ? own : own.other(), random));
        }
        return score.with(scores, true);
    }

    private RubberScore game(RubberNo rubber, Side winner, SplittableRandom random) {
        Games games = input.rules().shape().games(rubber);
        List<Score> scores = new ArrayList<>();
        int lost = input.rules().points().countsGames() ? lostGames(games, random) : 0;
        for (int game = 0; game < lost; game++) {
            scores.add(score(games, winner.other(), random));
        }
        for (int game = 0; game < games.toWin(); game++) {
            scores.add(score(games, winner, random));
        }
        return new RubberScore(rubber, scores, How.PLAYED);
    }

    /** How many games the loser of an even rubber wins. */
    private static int lostGames(Games games, SplittableRandom random) {
        int one = 0;
        int other = 0;
        while (games.toWin() > 1 && Math.max(one, other) < games.toWin()) {
            if (random.nextBoolean()) {
                one++;
            } else {
                other++;
            }
        }
        return Math.min(one, other);
    }

    private static Score score(Games games, Side winner, SplittableRandom random) {
        int lost = random.nextInt(Math.max(1, games.target() - 1));
        return winner == Side.HOME ? Score.of(games.target(), lost) : Score.of(lost, games.target());
    }
}
