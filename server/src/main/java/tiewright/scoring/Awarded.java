package tiewright.scoring;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Scores that a table holds although they were not played to the end. */
public final class Awarded {
    private Awarded() {}

    /**
     * The games of a rubber that {@code retirer} did not finish, made up for the other side: finished games stay, in the unfinished one the
     * other side gets the points that win against the retirer's points (max(target, retirer's points + 2), less where the
     * cap or by-1 says so), later games are won to nil until the other side has the majority. The retirer keeps every point.
     *
     * <p>Source: USA Pickleball rulebook 2024, 12.F: to 11, best of three, the side that leads 10-5 retires; the other side is
     * recorded as 12-10, 11-0.
     *
     * @param asItStood games so far, the last one perhaps unfinished; may be empty
     * @throws IllegalArgumentException if the rubber cannot have stood so, see {@link Legality#retiredRubber}
     */
    public static List<Score> lifted(Format format, int bestOf, List<Score> asItStood, SideNo retirer) {
        List<ScoreFault> faults = Legality.retiredRubber(format, bestOf, asItStood);
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException("a rubber of " + format.code() + " cannot stand so: " + faults);
        }
        List<Score> games = new ArrayList<>();
        Tally tally = new Tally(bestOf);
        for (Score game : asItStood) {
            Score whole = format.isOver(game) ? game : lifted(format, game, retirer);
            games.add(whole);
            tally.add(whole);
        }
        games.addAll(Collections.nCopies(tally.missingOf(retirer.other()), nil(format, retirer)));
        return List.copyOf(games);
    }

    /** One unfinished game made up for the side that goes on. */
    public static Score lifted(Format format, Score asItStood, SideNo retirer) {
        int kept = retirer.pointsIn(asItStood);
        return retirer.score(kept, format.winningScoreAgainst(kept));
    }

    /** The games of a rubber in which {@code missing} never came: as few as win it, each to nil. */
    public static List<Score> walkover(Format format, int bestOf, SideNo missing) {
        return lifted(format, bestOf, List.of(), missing);
    }

    private static Score nil(Format format, SideNo loser) {
        return loser.score(0, format.winningScoreAgainst(0));
    }
}
