package tiewright.http.everybody;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import tiewright.event.Pair;
import tiewright.event.Player;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieProgress;
import tiewright.event.VisibleEvent;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.TieViews;

/**
 * What a player is told who has no rubber to go to now. Nobody reads "free" before everything is settled that could still
 * ask for this player: a held card, a decider that may come, a tie whose time has passed.
 */
final class Waiting {
    private final VisibleEvent event;
    private final TieViews views;
    private final Player player;
    private final List<Tie> open;

    /**
     * @param open the ties of the player's club that go on or are to come, in their order
     */
    Waiting(VisibleEvent event, Player player, List<Tie> open) {
        this.event = event;
        this.views = new TieViews(event);
        this.player = player;
        this.open = open;
    }

    /** One sentence; empty while a rubber of an opened tie waits for the player, for its card says it all. */
    String words() {
        if (open.isEmpty()) {
            return "No tie of your club is left, or none is arranged yet.";
        }
        List<Tie> opened = open.stream().filter(Tie::isOpened).toList();
        if (opened.stream().anyMatch(tie -> names(tie, event.progress(tie).left()))) {
            return "";
        }
        return opened.stream()
                .flatMap(tie -> mayBeNeeded(tie).stream())
                .findFirst()
                .orElseGet(() -> resting(opened) + until());
    }

    private Optional<String> mayBeNeeded(Tie tie) {
        TieProgress progress = event.progress(tie);
        String title = views.title(tie);
        if (names(tie, progress.held())) {
            return Optional.of("The card of your rubber in " + title + " is being settled: stay near the desk.");
        }
        if (tie.isDeciderOpened() || !progress.canComeToDecider()) {
            return Optional.empty();
        }
        if (progress.awaitsDecider()) {
            return Optional.of(title + " is level and goes to a decider. Its pairs are not open yet: stay near.");
        }
        int lead = Math.abs(progress.won(Side.HOME) - progress.won(Side.AWAY));
        return lead <= progress.left().size() + progress.held().size()
                ? Optional.of(title + " may still come to a decider, and you may be named for it: stay near.")
                : Optional.empty();
    }

    private String resting(List<Tie> opened) {
        return opened.stream()
                .findFirst()
                .map(tie -> "No rubber of yours is left in " + views.title(tie) + ". ")
                .orElse("");
    }

    /** Free until the published start of the next tie, which it does not begin before. */
    private String until() {
        Optional<Tie> next = open.stream().filter(tie -> !tie.isOpened()).findFirst();
        Optional<Instant> start = next.flatMap(event::startsAt);
        if (next.isEmpty()) {
            return "No other tie of your club is to come yet.";
        }
        if (start.isEmpty()) {
            return views.title(next.get()) + " has no time yet: look here again.";
        }
        String at = HallClock.said(event.clock(start.get()));
        return start.get().isAfter(event.now())
                ? "Free until " + at + ", the next start of your club."
                : views.title(next.get()) + " was to start at " + at + ": stay near.";
    }

    private boolean names(Tie tie, List<RubberNo> rubbers) {
        Side side = tie.sideOf(player.club()).orElseThrow();
        return rubbers.stream()
                .flatMap(rubber -> Optional.ofNullable(tie.opened().get(rubber)).stream())
                .flatMap(rubber -> rubber.pair(side).stream())
                .anyMatch((Pair pair) -> pair.has(player.id()));
    }
}
