package tiewright.http.everybody;

import java.util.List;
import java.util.Optional;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.views.BoardView;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.wording.Words;

/** The board for the wall: what is on, what comes next, and the sheets that were just turned over. */
final class Board {
    private static final int A_FEW = 4;

    private final VisibleEvent event;
    private final TieViews views;

    private Board(Visit visit) {
        this.event = visit.event();
        this.views = visit.ties();
    }

    static BoardView of(Visit visit) {
        Board board = new Board(visit);
        return new BoardView(NowPage.view(visit, Optional.empty()), board.turned());
    }

    private List<BoardView.Turned> turned() {
        return TieOrder.sorted(event.ties().stream()
                        .filter(tie -> event.goesOn(tie)
                                && tie.isOpened()
                                && event.progress(tie).rubbers().isEmpty())
                        .toList())
                .stream()
                .limit(A_FEW)
                .map(this::turned)
                .toList();
    }

    private BoardView.Turned turned(Tie tie) {
        List<String> courts = event.order().courts(tie);
        return new BoardView.Turned(
                courts.isEmpty() ? "" : Words.say(event, "page-visit.courts", "count", courts.size(), "courts", courts),
                views.when(tie),
                views.side(tie, Side.HOME),
                views.side(tie, Side.AWAY),
                tie.opened().entrySet().stream()
                        .map(one -> rubber(one.getKey(), one.getValue()))
                        .toList());
    }

    private BoardView.Rubber rubber(RubberNo number, Tie.OpenedRubber opened) {
        return new BoardView.Rubber(
                TieViews.rubber(Words.of(event), number),
                String.join(" + ", views.names(opened.pair(Side.HOME))),
                String.join(" + ", views.names(opened.pair(Side.AWAY))));
    }
}
