package tiewright.timetable;

import java.util.random.RandomGenerator;
import tiewright.scoring.Format;
import tiewright.scoring.GameState;
import tiewright.scoring.SideNo;

/** Draws how long rubbers take, in minutes of play: games of two even pairs, played out rally by rally. */
final class RubberDraws {
    /** Games played out once, from which all are drawn: a quantile of them is sure to a rally or so. */
    private static final int GAMES = 4_000;

    private final int[] rallies = new int[GAMES];
    private final int majority;
    private final double minute;

    RubberDraws(Format format, int bestOf, Pace pace, RandomGenerator random) {
        this.majority = bestOf / 2 + 1;
        this.minute = pace.secondsPerRally() / 60;
        for (int i = 0; i < GAMES; i++) {
            rallies[i] = game(format, random);
        }
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
