package tiewright.film;

import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import tiewright.event.PlayerId;
import tiewright.scoring.SideNo;

/**
 * One rally of a replay.
 *
 * @param before how the court can have stood before it: one way, several after a rally of which nobody can tell who won it, none
 *     after the end of the game
 * @param seen the one of these on which unsure rallies changed nothing, as far as that can be; else any. A stand-in, no knowledge
 * @param winner the side that won it; empty where nobody did or nobody knows
 */
public record Step(RallyNote note, Start start, Set<Situation> before, Situation seen, Optional<SideNo> winner) {
    public Step {
        before = Set.copyOf(before);
    }

    /** The game was not over before it. */
    public boolean isPlayed() {
        return !before.isEmpty();
    }

    /** How the court stood, where that is known. */
    public Optional<Situation> situation() {
        return known(situation -> situation);
    }

    /** Who served: whom the notes name, else who must have. */
    public Optional<PlayerId> server() {
        return note.server().or(() -> known(Situation::server));
    }

    public Optional<SideNo> serving() {
        return note.server().map(start::side).or(() -> known(Situation::serving));
    }

    public Optional<PlayerId> receiver() {
        return known(Situation::receiver);
    }

    private <T> Optional<T> known(Function<Situation, T> what) {
        return before.stream().map(what).distinct().count() == 1
                ? before.stream().map(what).findFirst()
                : Optional.empty();
    }
}
