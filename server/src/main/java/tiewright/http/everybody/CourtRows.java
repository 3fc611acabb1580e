package tiewright.http.everybody;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieProgress;
import tiewright.event.VisibleEvent;
import tiewright.event.VisibleExchange;
import tiewright.http.pieces.CourtRow;
import tiewright.http.pieces.Moved;
import tiewright.http.visit.Changes;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.wording.Words;

/** Ties beside the numbers of their courts, as a hall reads them. */
final class CourtRows {
    private final VisibleEvent event;
    private final Words words;
    private final TieViews views;
    private final Optional<ClubId> own;

    /** @param own the club whose ties are marked */
    CourtRows(Visit visit, Optional<ClubId> own) {
        this.event = visit.event();
        this.words = visit.words();
        this.views = visit.ties();
        this.own = own;
    }

    /** A tie that is being played: a row for each court that it is on, one where none of its rubbers is called just now. */
    List<CourtRow> playing(Tie tie) {
        List<RubberNo> left = event.progress(tie).left();
        List<CourtRow> rows = tie.calls().entrySet().stream()
                .filter(call -> left.contains(call.getKey()))
                .map(call -> row(tie, call.getValue().court(), now(tie, call.getKey())))
                .toList();
        return rows.isEmpty() ? List.of(row(tie, planned(tie), "")) : rows;
    }

    private String planned(Tie tie) {
        return String.join(", ", event.order().courts(tie));
    }

    /** A tie that is to come. */
    CourtRow next(Tie tie) {
        String likely = views.expected(tie);
        List<String> parts = new ArrayList<>(List.of(likely.isEmpty() ? views.when(tie) : likely));
        if (!tie.isOpened()) {
            VisibleExchange exchange = event.exchange(ExchangeId.sheets(tie.id()));
            int in = (exchange.home().in() ? 1 : 0) + (exchange.away().in() ? 1 : 0);
            parts.add(words.say("page-everybody.sheets-in", "in", in));
        }
        new Changes(event)
                .last(tie)
                .map(Moved::why)
                .filter(why -> !why.isEmpty())
                .ifPresent(parts::add);
        return row(tie, planned(tie), String.join("; ", parts));
    }

    private CourtRow row(Tie tie, String court, String detail) {
        TieProgress progress = event.progress(tie);
        return new CourtRow(
                court,
                "/tie/" + tie.id(),
                side(tie, progress, Side.HOME),
                side(tie, progress, Side.AWAY),
                views.state(tie),
                progress.rubbers().isEmpty()
                        ? new Changes(event).last(tie).map(Moved::old).orElse("")
                        : "",
                detail,
                own.filter(tie::has).isPresent());
    }

    private CourtRow.Side side(Tie tie, TieProgress progress, Side side) {
        boolean begun = !progress.rubbers().isEmpty();
        return new CourtRow.Side(
                views.side(tie, side),
                begun ? Integer.toString(progress.won(side)) : "",
                progress.won(side) > progress.won(side.other()));
    }

    /** The rubber with all four names. */
    private String now(Tie tie, RubberNo rubber) {
        return words.say(
                "page-everybody.rubber-now",
                "rubber",
                TieViews.rubberWithin(words, rubber),
                "home",
                names(tie, rubber, Side.HOME),
                "away",
                names(tie, rubber, Side.AWAY));
    }

    private String names(Tie tie, RubberNo rubber, Side side) {
        Optional<Pair> pair = Optional.ofNullable(tie.opened().get(rubber)).flatMap(one -> one.pair(side));
        return String.join(" + ", views.names(pair));
    }
}
