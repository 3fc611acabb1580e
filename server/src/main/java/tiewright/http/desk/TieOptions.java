package tiewright.http.desk;

import java.util.List;
import java.util.SortedMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.TextField;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;

/** What the small forms of one tie let an official choose from, and what was typed in them. */
final class TieOptions {
    final Visit visit;
    final VisibleEvent event;
    final TieViews views;
    final Tie tie;
    final Tried tried;

    TieOptions(Visit visit, Tie tie, Tried tried) {
        this.visit = visit;
        this.event = visit.event();
        this.views = new TieViews(event);
        this.tie = tie;
        this.tried = tried;
    }

    String path(String act) {
        return DeskTiePages.of(tie) + act;
    }

    String say(String code, Object... facts) {
        return visit.say(code, facts);
    }

    List<Option> sides(Predicate<Side> which) {
        return Stream.of(Side.values())
                .filter(which)
                .map(side -> Option.of(side.code(), views.side(tie, side), false))
                .toList();
    }

    /** The players of the club of this side, and nobody else. */
    List<Option> squad(Side side, String chosen) {
        return tie.club(side).stream()
                .flatMap(club -> event.squad(club).stream())
                .map(player -> Option.of(
                        player.id().code(),
                        event.name(player.id()),
                        player.id().code().equals(chosen)))
                .toList();
    }

    List<Option> rubbers(SortedMap<RubberNo, ?> of, String field) {
        String chosen = tried.value(field, "");
        return of.keySet().stream()
                .map(no -> Option.of(
                        no.toString(),
                        TieViews.rubber(visit.words(), no),
                        no.toString().equals(chosen)))
                .toList();
    }

    TextField text(String id, String label) {
        return TextField.of(id, TextField.Kind.LINE, label, tried.value(id, ""))
                .withError(tried.error(id))
                .withMaxLength(300);
    }
}
