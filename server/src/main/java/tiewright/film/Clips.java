package tiewright.film;

import java.util.List;
import java.util.Optional;
import tiewright.event.PlayerId;

/**
 * Which rallies are looked for on film.
 *
 * @param player who ended the rally
 * @param ending how
 * @param noted what else is noted of it
 */
public record Clips(Optional<PlayerId> player, Optional<Ending> ending, Optional<RallyKey> noted) {
    /** The rallies of a game that are all of this, in order. */
    public List<Step> in(CardCheck game) {
        return game.replay().steps().stream().filter(this::isMeant).toList();
    }

    private boolean isMeant(Step step) {
        RallyNote note = step.note();
        return (player.isEmpty() || note.player().equals(player))
                && (ending.isEmpty() || note.ending() == ending.get())
                && (noted.isEmpty() || noted.get().isNotedIn(note));
    }
}
