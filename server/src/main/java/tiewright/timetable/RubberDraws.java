package tiewright.timetable;

import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import tiewright.scoring.Format;
import tiewright.scoring.GameState;
import tiewright.scoring.SideNo;

/** Draws how long rubbers take, in minutes of play: games of two even pairs, played out rally by rally. */
final class RubberDraws {
    /** Games played out once for each format, from which all are drawn: a quantile of them is sure to a rally or so. */
    private static final int GAMES = 1_000;

    private static final long SEED = 1;
    private static final Map<Format, int[]> PLAYED = new ConcurrentHashMap<>();

    private final int[] rallies;
    private final int majority;
    private final double minute;

    RubberDraws(Format format, int bestOf, Pace pace) {
        this.majority = bestOf / 2 + 1;
        this.minute = pace.secondsPerRally() / 60;
        this.rallies = PLAYED.computeIfAbsent(format, RubberDraws::games);
    }

    private static int[] games(Format format) {
        RandomGenerator random = new Random(SEED);
        return IntStream.range(0, GAMES).map(i -> game(format, random)).toArray();
    }

    private static int game(Format format, RandomGenerator random) {
        GameState state = GameState.start(format, SideNo.ONE);
        int count = 0;
        while (!state.isOver()) {
            boolean server = random.nextDouble() < RubberTime.SERVING_SIDE_WINS;
            state = state.after(server ? state.serving() : state.serving().other());
            count++;
        }
        return count;
    }

    /** One rubber, in minutes. */
    double draw(RandomGenerator random) {
        int one = 0;
        int two = 0;
        int count = 0;
        while (one < majority && two < majority) {
            count += rallies[random.nextInt(GAMES)];
            if (random.nextBoolean()) {
                one++;
            } else {
                two++;
            }
        }
        return count * minute;
    }
}
