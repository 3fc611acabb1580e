package tiewright.http.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.ExchangeId;
import tiewright.event.Link;
import tiewright.event.SheetKind;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.NavLink;
import tiewright.wording.Words;

/** What a captain must not miss: a sheet that a newer link put in the place of theirs, and a new link that waits to be let in. */
final class ClubAlarms {
    private ClubAlarms() {}

    static List<NavLink> of(Visit visit) {
        List<NavLink> alarms = new ArrayList<>();
        Optional<ClubId> club = visit.viewer().club().filter(visit.viewer()::isCaptainOf);
        if (club.isEmpty()) {
            return alarms;
        }
        for (Tie tie : visit.event().tiesOf(club.get())) {
            for (SheetKind kind : SheetKind.values()) {
                replaced(visit, new ExchangeId(tie.id(), kind)).ifPresent(alarms::add);
            }
        }
        if (visit.event().isLetIn()) {
            visit.event().linksOf(club.get()).waiting().forEach(link -> alarms.add(waiting(visit, link)));
        }
        return alarms;
    }

    private static Optional<NavLink> replaced(Visit visit, ExchangeId exchange) {
        VisibleEvent event = visit.event();
        return event.unconfirmed(exchange)
                .map(link -> new NavLink(
                        (exchange.kind() == SheetKind.RUBBERS ? "/captain/sheet/" : "/captain/decider/")
                                + exchange.tie(),
                        visit.say(
                                "page-visit.sealed-by-newer-link",
                                "kind",
                                exchange.kind().code(),
                                "tie",
                                exchange.tie(),
                                "at",
                                sealedAt(event, exchange),
                                "label",
                                link.label(),
                                "by",
                                link.life().made().by().name(),
                                "made",
                                HallClock.said(event.clock(link.life().made().at()))),
                        false));
    }

    private static String sealedAt(VisibleEvent event, ExchangeId exchange) {
        return event.tie(exchange.tie())
                .flatMap(tie -> event.viewer().club().flatMap(tie::sideOf))
                .flatMap(side -> event.exchange(exchange).side(side).sealedAt())
                .map(at -> HallClock.said(event.clock(at)))
                .orElse("");
    }

    private static NavLink waiting(Visit visit, Link link) {
        Words words = visit.words();
        return new NavLink(
                "/captain/links",
                words.say(
                        "page-visit.link-waits",
                        "label",
                        link.label(),
                        "by",
                        link.life().made().by().name(),
                        "made",
                        HallClock.said(visit.event().clock(link.life().made().at()))),
                false);
    }
}
