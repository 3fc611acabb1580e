package tiewright.http.everybody;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Player;
import tiewright.event.RubberScore;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.views.PlayerView;
import tiewright.http.visit.OwnResult;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TieViews;
import tiewright.wording.Words;

/** The rubbers of a player so far, each from the player's own side: won or lost, own points first. */
final class PlayedToday {
    private final VisibleEvent event;
    private final TieViews views;
    private final Player player;

    PlayedToday(VisibleEvent event, Player player) {
        this.event = event;
        this.views = new TieViews(event);
        this.player = player;
    }

    List<PlayerView.Played> all() {
        List<PlayerView.Played> played = new ArrayList<>();
        for (Tie tie : TieOrder.sorted(event.tiesOf(player.club()))) {
            Side side = tie.sideOf(player.club()).orElseThrow();
            for (RubberScore score : event.progress(tie).rubbers()) {
                Optional.ofNullable(tie.opened().get(score.rubber()))
                        .flatMap(rubber -> rubber.pair(side))
                        .filter(pair -> pair.has(player.id()))
                        .ifPresent(pair -> played.add(new PlayerView.Played(
                                views.when(tie),
                                TieViews.rubber(Words.of(event), score.rubber()),
                                event.name(pair.partnerOf(player.id())),
                                views.side(tie, side.other()),
                                OwnResult.words(views, tie, side, score))));
            }
        }
        return played;
    }
}
