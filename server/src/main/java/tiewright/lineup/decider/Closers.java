package tiewright.lineup.decider;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import tiewright.conditions.DeciderKind;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Sheet;
import tiewright.lineup.Freshness;
import tiewright.rating.Strengths;

/**
 * Whom one club has for the decider, and how strong each pair would be in it: players who have just come off court are less
 * fresh than those held back.
 *
 * <p>Singles in turns are played by the two who are named, so there a pair is worth its mean form without its extra.
 */
public final class Closers {
    /** No pair may play it. */
    public static final int NOBODY = -1;

    private final DeciderKind kind;
    private final List<PlayerId> players = new ArrayList<>();
    private final List<Pair> pairs;
    private final int[] first;
    private final int[] second;
    private final double[] rested; // a pair's strength with nobody tired, by pair, falling
    private final double[] lossPlayed; // by player
    private final double[] lossRested;

    /** @param candidates pairs that the captain would send, of equal ones the first; the conditions are looked at here */
    public Closers(DeciderKind kind, Strengths strengths, Freshness freshness, List<Pair> candidates) {
        this.kind = kind;
        Map<Pair, Double> strength = new HashMap<>();
        candidates.forEach(pair -> strength.put(pair, strength(kind, strengths, pair)));
        this.pairs = candidates.stream()
                .sorted(Comparator.comparingDouble((Pair pair) -> strength.get(pair))
                        .reversed())
                .toList();
        pairs.forEach(pair ->
                pair.players().stream().filter(one -> !players.contains(one)).forEach(players::add));
        this.first =
                pairs.stream().mapToInt(pair -> players.indexOf(pair.first())).toArray();
        this.second =
                pairs.stream().mapToInt(pair -> players.indexOf(pair.second())).toArray();
        this.rested = pairs.stream().mapToDouble(strength::get).toArray();
        this.lossPlayed = players.stream()
                .mapToDouble(player -> freshness.lossInDecider(player, true))
                .toArray();
        this.lossRested = players.stream()
                .mapToDouble(player -> freshness.lossInDecider(player, false))
                .toArray();
    }

    static double strength(DeciderKind kind, Strengths strengths, Pair pair) {
        return kind == DeciderKind.SINGLES_TURNS
                ? (strengths.meanForm(pair.first()) + strengths.meanForm(pair.second())) / 2
                : strengths.meanRating(pair);
    }

    /** The rubbers of each player as bits, from the pairs that a sheet names. */
    int[] rubbers(List<Optional<Pair>> sheet) {
        int[] rubbers = new int[players.size()];
        for (int rubber = 0; rubber < sheet.size(); rubber++) {
            int bit = 1 << rubber;
            sheet.get(rubber)
                    .ifPresent(pair -> IntStream.of(players.indexOf(pair.first()), players.indexOf(pair.second()))
                            .filter(player -> player >= 0)
                            .forEach(player -> rubbers[player] |= bit));
        }
        return rubbers;
    }

    public int[] rubbers(Sheet sheet) {
        return rubbers(List.copyOf(sheet.pairs().values()));
    }

    /** The strongest of those who may play after these rubbers; {@link #NOBODY} if none may. */
    public int best(int[] rubbers) {
        int best = NOBODY;
        double most = Double.NEGATIVE_INFINITY;
        for (int pair = 0; pair < rested.length && rested[pair] > most; pair++) { // nobody below can be stronger
            double strength = strength(pair, rubbers);
            if (strength > most && isAllowed(pair, rubbers)) {
                best = pair;
                most = strength;
            }
        }
        return best;
    }

    public double strength(int pair, int[] rubbers) {
        return rested[pair] - (loss(first[pair], rubbers) + loss(second[pair], rubbers)) / 2;
    }

    /** The strongest pair with what it has lost; empty if none may play. */
    public Optional<LevelWorth.Sent> sent(int[] rubbers) {
        int best = best(rubbers);
        return best == NOBODY
                ? Optional.empty()
                : Optional.of(new LevelWorth.Sent(pairs.get(best), rested[best] - strength(best, rubbers)));
    }

    private double loss(int player, int[] rubbers) {
        return rubbers[player] != 0 ? lossPlayed[player] : lossRested[player];
    }

    /** One from each: both have played, and not only with each other. */
    boolean isAllowed(int pair, int[] rubbers) {
        int one = rubbers[first[pair]];
        int other = rubbers[second[pair]];
        return kind != DeciderKind.ONE_FROM_EACH
                || one != 0 && other != 0 && !(one == other && Integer.bitCount(one) == 1);
    }

    List<Pair> pairs() {
        return pairs;
    }

    int player(PlayerId id) {
        return players.indexOf(id);
    }

    int players() {
        return players.size();
    }
}
