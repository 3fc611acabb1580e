package tiewright.sheet;

import tiewright.event.Event;
import tiewright.event.PlayerId;
import tiewright.event.RubberScore;
import tiewright.event.Side;
import tiewright.event.Stage;
import tiewright.event.Tie;

/** Who may be named in the knockout where the conditions want earlier ties: those in which a player was really on court. */
public final class Eligibility {
    private Eligibility() {}

    /** Whether the player may be named in this tie, as far as earlier ties go. */
    public static boolean mayPlay(Event event, Tie tie, PlayerId player) {
        int needed = event.conditions().eligibilityTies();
        return needed == 0 || tie.stage() == Stage.POOL || tiesPlayed(event, player) >= needed;
    }

    /** Ties in which the player stood in a rubber that was played or given up; walkovers do not count. */
    static int tiesPlayed(Event event, PlayerId player) {
        return (int) event.ties().values().stream()
                .filter(tie -> hasPlayed(tie, player))
                .count();
    }

    private static boolean hasPlayed(Tie tie, PlayerId player) {
        return tie.opened().entrySet().stream()
                .filter(opened -> tie.card(opened.getKey())
                        .score(opened.getKey())
                        .filter(RubberScore::isPlayed)
                        .isPresent())
                .anyMatch(opened ->
                        isIn(opened.getValue(), Side.HOME, player) || isIn(opened.getValue(), Side.AWAY, player));
    }

    private static boolean isIn(Tie.OpenedRubber rubber, Side side, PlayerId player) {
        return rubber.pair(side).filter(pair -> pair.has(player)).isPresent();
    }
}
