package tiewright.setup;

import java.util.List;
import tiewright.event.Actor;
import tiewright.event.Event;
import tiewright.event.NoteChecks;
import tiewright.event.Noted;
import tiewright.event.PlayerId;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote.PlayerForgotten;

/**
 * A captain deletes what the club noted about one of its own, at the player's wish; the name stays until the day of deletion. Never
 * stale: what was noted a moment ago goes as well.
 *
 * @param films codes of the filmed games whose notes go too
 */
public record ForgetPlayer(PlayerId player, List<String> films) implements PrivateDecision {
    public ForgetPlayer {
        films = List.copyOf(films);
    }

    @Override
    public Outcome decide(Event event, Noted noted, Actor by) {
        return NoteChecks.byCaptain(event, noted, by)
                .ownPlayer(player, "forget-player")
                .kept(() -> List.of(new PlayerForgotten(noted.club(), player, films)));
    }

    @Override
    public boolean isNeverStale() {
        return true;
    }
}
