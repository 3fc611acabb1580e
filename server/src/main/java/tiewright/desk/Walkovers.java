package tiewright.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.How;
import tiewright.event.PlayFact;
import tiewright.event.Side;
import tiewright.event.Stage;
import tiewright.event.Tie;
import tiewright.event.TieProgress;

/**
 * Ties of the knockout that a club which withdrew cannot play: every rubber left goes to the other club. In a pool the
 * table sees to it, by the treatment that the ruling chose.
 */
final class Walkovers {
    private Walkovers() {}

    /** The ties, with the side that withdrew. A tie with a held rubber waits until that is settled. */
    static List<Waiting> waiting(Event event) {
        List<Waiting> waiting = new ArrayList<>();
        for (Tie tie : event.ties().values()) {
            if (tie.stage() != Stage.POOL && tie.isReady()) {
                TieProgress progress = event.progress(tie);
                gone(event, tie)
                        .filter(side -> !progress.finished() && progress.held().isEmpty())
                        .ifPresent(side -> waiting.add(new Waiting(tie, side, progress)));
            }
        }
        return waiting;
    }

    record Waiting(Tie tie, Side gone, TieProgress progress) {
        ClubId club() {
            return tie.club(gone).orElseThrow();
        }

        List<PlayFact> cards(Event event) {
            How how = gone == Side.HOME ? How.WALKOVER_HOME : How.WALKOVER_AWAY;
            List<PlayFact> cards = new ArrayList<>();
            progress.left()
                    .forEach(rubber -> cards.add(new PlayFact.CardEntered(
                            tie.id(),
                            rubber,
                            Reading.of(event.conditions(), rubber, List.of(), how)
                                    .counted(),
                            how)));
            return cards;
        }
    }

    /** The one side that withdrew; empty when none or both did. */
    private static Optional<Side> gone(Event event, Tie tie) {
        boolean home = hasWithdrawn(event, tie, Side.HOME);
        boolean away = hasWithdrawn(event, tie, Side.AWAY);
        return home == away ? Optional.empty() : Optional.of(home ? Side.HOME : Side.AWAY);
    }

    static boolean hasWithdrawn(Event event, Tie tie, Side side) {
        return tie.club(side).filter(event.withdrawals()::containsKey).isPresent();
    }
}
