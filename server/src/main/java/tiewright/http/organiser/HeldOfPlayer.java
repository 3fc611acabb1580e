package tiewright.http.organiser;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.Pair;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.EntryAnswers;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.LinkSlips;
import tiewright.http.visit.TiePapers;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.wording.DeletionWords;

/**
 * What the organiser holds of one player, as a text to hand over to that player. What a club noted about its own players belongs to the
 * club: the text says where to ask, the same whether or not anything was noted.
 */
final class HeldOfPlayer {
    private final Visit visit;
    private final VisibleEvent event;
    private final Player player;
    private final List<String> lines = new ArrayList<>();

    HeldOfPlayer(Visit visit, PlayerId id) {
        this.visit = visit;
        this.event = visit.event();
        this.player = event.player(id).orElseThrow();
    }

    String text() {
        add("page-organiser.held-title", "player", event.name(player.id()), "event", name());
        entered();
        rubbers();
        links();
        add("page-organiser.held-by-the-club", "club", event.clubName(player.club()));
        lines.add(DeletionWords.sentence(visit.words(), event.deletion(), event.zone()));
        return String.join("\n", lines) + "\n";
    }

    private String name() {
        return event.about().map(about -> about.name()).orElse("");
    }

    private void entered() {
        add(
                "page-organiser.held-entered",
                "code",
                player.id().code(),
                "club",
                event.clubName(player.club()),
                "deputy",
                player.deputy() ? "yes" : "no");
        visit.ask(EntryAnswers::new)
                .bornYear(player.id())
                .ifPresent(year -> add("page-organiser.held-born", "year", Integer.toString(year)));
        visit.ask(EntryAnswers::new)
                .plays(player.id())
                .ifPresent(plays -> add("page-organiser.held-plays", "plays", plays.code()));
        player.rank().ifPresent(rank -> add("page-organiser.held-rank", "rank", rank));
        player.from().ifPresent(at -> add("page-organiser.held-from", "at", HallClock.said(at)));
        player.until().ifPresent(at -> add("page-organiser.held-until", "at", HallClock.said(at)));
        player.checkedInAt().ifPresent(at -> add("page-organiser.held-here", "at", HallClock.said(event.clock(at))));
    }

    private void rubbers() {
        for (Tie tie : event.tiesOf(player.club())) {
            Side side = tie.sideOf(player.club()).orElseThrow();
            for (Map.Entry<RubberNo, Tie.OpenedRubber> rubber : tie.opened().entrySet()) {
                rubber.getValue()
                        .pair(side)
                        .filter(pair -> pair.has(player.id()))
                        .ifPresent(pair -> rubber(
                                tie, rubber.getKey(), pair, rubber.getValue().pair(side.other())));
            }
        }
    }

    private void rubber(Tie tie, RubberNo rubber, Pair own, Optional<Pair> other) {
        TieViews views = new TieViews(event);
        String score = event.progress(tie).rubbers().stream()
                .filter(one -> one.rubber().equals(rubber))
                .findFirst()
                .map(one -> (TieViews.score(one.games()) + " " + views.how(tie, one.how())).strip())
                .orElse("");
        add(
                "page-organiser.held-rubber",
                "tie",
                views.title(tie),
                "rubber",
                new TiePapers(event).label(rubber),
                "partner",
                event.name(own.partnerOf(player.id())),
                "against",
                views.names(other),
                "score",
                score,
                "played",
                score.isEmpty() ? "no" : "yes");
    }

    private void links() {
        event.links().stream()
                .filter(link -> link.player().filter(player.id()::equals).isPresent())
                .forEach(link -> add(
                        "page-organiser.held-link",
                        "label",
                        link.label(),
                        "may",
                        LinkSlips.may(visit.words(), link.role()),
                        "ended",
                        link.revoked() ? "yes" : "no"));
    }

    private void add(String code, Object... facts) {
        lines.add(visit.say(code, facts));
    }
}
