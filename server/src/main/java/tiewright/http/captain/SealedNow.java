package tiewright.http.captain;

import java.util.List;
import java.util.Optional;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.VisibleExchange;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.SheetView;
import tiewright.http.pieces.State;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;

/** The own sheet that is in: with its names, or with places for them where only the phone that sealed it may show them. */
final class SealedNow {
    private final OwnExchange here;
    private final Visit visit;
    private final VisibleExchange.VisibleSide own;

    SealedNow(OwnExchange here) {
        this.here = here;
        this.visit = here.visit();
        this.own = here.own();
    }

    Optional<SheetView> view() {
        if (here.exchange().isOpened()) {
            return Optional.empty();
        }
        if (here.isReadInTheAir()) {
            return own.atDesk() && visit.event().mayRead(here.id()) ? Optional.of(blank()) : Optional.empty();
        }
        return here.sealed()
                .map(kept -> view(kept.sheet().pairs().entrySet().stream()
                        .map(one -> row(one.getKey(), one.getValue()))
                        .toList()));
    }

    private SheetView blank() {
        return view(here.id().rubbers(visit.event().conditions()).stream()
                .map(rubber -> new SheetView.Row(TieViews.rubber(visit.words(), rubber), "", "", ""))
                .toList());
    }

    private SheetView view(List<SheetView.Row> rows) {
        String times = own.sealed() == 1
                ? visit.say("page-captain.sealed-once")
                : visit.say("page-captain.sealed-times-the-last-one", "sealed", own.sealed());
        String at = own.sealedAt()
                .map(moment -> visit.say(
                        "page-captain.at",
                        "moment",
                        HallClock.said(visit.event().clock(moment))))
                .orElse("");
        return new SheetView(
                visit.say("page-captain.in-for-you-now"),
                new State(Mark.SEALED, "sealed"),
                times + at,
                rows,
                visit.say("page-captain.show-the-names"));
    }

    private SheetView.Row row(RubberNo rubber, Optional<Pair> pair) {
        return new SheetView.Row(
                TieViews.rubber(visit.words(), rubber),
                pair.map(Pair::first).map(this::name).orElse(visit.say("page-captain.no-pair")),
                pair.map(Pair::second).map(this::name).orElse(""),
                "");
    }

    private String name(PlayerId player) {
        return visit.event().name(player);
    }
}
