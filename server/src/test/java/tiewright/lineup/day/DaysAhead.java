package tiewright.lineup.day;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import tiewright.event.PlayerId;
import tiewright.event.TieId;
import tiewright.lineup.Freshness;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.Ties;
import tiewright.rating.Strengths;

/** Days for tests: ties T1, T2, … of the players a1, a2, … an hour apart from 9 o'clock. */
final class DaysAhead {
    private DaysAhead() {}

    static DayProblem day(int ties, int rubbers, int players, Strengths strengths, DayProblem.Wanted wanted) {
        List<DayProblem.Ahead> ahead = new ArrayList<>();
        for (int tie = 0; tie < ties; tie++) {
            LineupProblem problem = LineupProblem.of(
                    Ties.rules(rubbers),
                    Ties.squad("a", players),
                    Ties.squad("b", 2 * rubbers),
                    strengths,
                    LineupProblem.Against.STRAIGHT,
                    1);
            ahead.add(new DayProblem.Ahead(TieId.of("T" + (tie + 1)), problem, 1, 540 + 60 * tie));
        }
        return new DayProblem(ahead, Map.of(), wanted, Freshness.Cost.USUAL);
    }

    /** A day with its own strengths in each tie, weights, loads and promises, drawn. */
    static DayProblem random(Random random, int ties, int rubbers, int players) {
        List<DayProblem.Ahead> ahead = new ArrayList<>();
        Strengths ours = Ties.random(random, players);
        int starts = 540;
        for (int tie = 0; tie < ties; tie++) {
            LineupProblem.Against against =
                    random.nextBoolean() ? LineupProblem.Against.STRAIGHT : LineupProblem.Against.UNKNOWN;
            LineupProblem problem = LineupProblem.of(
                    Ties.rules(rubbers), Ties.squad("a", players), Ties.squad("b", 2 * rubbers), ours, against, 1);
            ahead.add(new DayProblem.Ahead(TieId.of("T" + (tie + 1)), problem, random.nextInt(5) / 4.0, starts));
            starts += 20 + random.nextInt(60);
        }
        Map<PlayerId, DayProblem.Before> before = new HashMap<>();
        for (int player = 1; player <= players; player++) {
            if (random.nextBoolean()) {
                before.put(
                        PlayerId.of("a" + player),
                        new DayProblem.Before(
                                random.nextInt(3), OptionalInt.of(500 + random.nextInt(40)), random.nextInt(2)));
            }
        }
        Map<PlayerId, Integer> promised = new HashMap<>();
        for (int more = 1 + random.nextInt(3); more > 0; more--) {
            promised.put(PlayerId.of("a" + (1 + random.nextInt(players))), 1 + random.nextInt(3));
        }
        DayProblem.Wanted wanted =
                new DayProblem.Wanted(random.nextInt(3), promised, random.nextInt(4), random.nextBoolean());
        return new DayProblem(ahead, before, wanted, Freshness.Cost.USUAL);
    }
}
