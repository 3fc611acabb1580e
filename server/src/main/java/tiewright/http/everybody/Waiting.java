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
import tiewright.http.answers.StillToCome;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.wording.Words;

/**
 * What a player is told who has no rubber to go to now. Nobody reads "free" before everything is settled that could still
 * ask for this player: a held card, a decider that may come, a tie whose time has passed.
 */
final class Waiting {
    private final VisibleEvent event;
    private final TieViews views;
    private final Words words;
    private final Player player;
    private final List<Tie> open;
    private final Visit visit;

    /**
     * @param open the ties of the player's club that go on or are to come, in their order
     */
    Waiting(Visit visit, Player player, List<Tie> open) {
        this.visit = visit;
        this.event = visit.event();
        this.views = new TieViews(event);
        this.words = Words.of(event);
        this.player = player;
        this.open = open;
    }

    /** One sentence; empty while a rubber of an opened tie waits for the player, for its card says it all. */
    String words() {
        if (open.isEmpty()) {
            return noTie();
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

    /** The club has gone, may still come to a tie of the knockout, or has nothing ahead. */
    private String noTie() {
        return Optional.ofNullable(event.withdrawals().get(player.club()))
                .map(gone -> words.say(
                        "page.withdrew-" + gone.treatment().code(),
                        "club",
                        event.clubName(gone.club()),
                        "ruling",
                        gone.ruling()))
                .or(this::perhaps)
                .orElseGet(() -> words.say("page-everybody.no-tie-of-your-club"));
    }

    private Optional<String> perhaps() {
        return visit.ask(StillToCome::new).of(player.club()).stream()
                .findFirst()
                .map(tie -> event.startsAt(tie)
                        .map(start -> words.say(
                                "page-everybody.may-still-play-at",
                                "tie",
                                views.title(tie),
                                "at",
                                HallClock.said(event.clock(start))))
                        .orElseGet(() -> words.say("page-everybody.may-still-play", "tie", views.title(tie))));
    }

    private Optional<String> mayBeNeeded(Tie tie) {
        TieProgress progress = event.progress(tie);
        String title = views.title(tie);
        if (names(tie, progress.held())) {
            return Optional.of(words.say("page-everybody.the-card-of-your-rubber", "tie", title));
        }
        if (tie.isDeciderOpened() || !progress.canComeToDecider()) {
            return Optional.empty();
        }
        if (progress.awaitsDecider()) {
            return Optional.of(words.say("page-everybody.is-level-and-goes-to", "tie", title));
        }
        int lead = Math.abs(progress.weightWon(Side.HOME) - progress.weightWon(Side.AWAY));
        return lead <= progress.weightOpen()
                ? Optional.of(words.say("page-everybody.may-still-come-to-a", "tie", title))
                : Optional.empty();
    }

    private String resting(List<Tie> opened) {
        return opened.stream()
                .findFirst()
                .map(tie -> words.say("page-everybody.no-rubber-of-yours-left", "tie", views.title(tie)) + " ")
                .orElse("");
    }

    /** Free until the published start of the next tie, which it does not begin before. */
    private String until() {
        Optional<Tie> next = open.stream().filter(tie -> !tie.isOpened()).findFirst();
        Optional<Instant> start = next.flatMap(event::startsAt);
        if (next.isEmpty()) {
            return perhaps().orElseGet(() -> words.say("page-everybody.no-other-tie-of-your"));
        }
        if (start.isEmpty()) {
            return words.say("page-everybody.has-no-time-yet-look", "tie", views.title(next.get()));
        }
        String at = HallClock.said(event.clock(start.get()));
        return start.get().isAfter(event.now())
                ? words.say("page-everybody.free-until-the-next-start-2", "at", at)
                : words.say("page-everybody.was-to-start-at-stay", "tie", views.title(next.get()), "at", at);
    }

    private boolean names(Tie tie, List<RubberNo> rubbers) {
        Side side = tie.sideOf(player.club()).orElseThrow();
        return rubbers.stream()
                .flatMap(rubber -> Optional.ofNullable(tie.opened().get(rubber)).stream())
                .flatMap(rubber -> rubber.pair(side).stream())
                .anyMatch((Pair pair) -> pair.has(player.id()));
    }
}
