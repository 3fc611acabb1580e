package tiewright.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Exchange;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.Tie;
import tiewright.event.TieId;

/** Who may alter a squad, and when. */
final class Squads {
    private Squads() {}

    /** The organiser at any time; the club's own captain until the first sheet is sealed. */
    static List<Refusal> mayAlter(Event event, Decision.Given given, ClubId club) {
        if (given.by().role() == Role.ORGANISER) {
            return List.of();
        }
        if (!Checks.isCaptainOf(given.by(), club)) {
            return List.of(Refusal.of("setup.not-your-squad").with("club", club));
        }
        return event.isFrozen() ? List.of(Refusal.of("setup.squads-closed")) : List.of();
    }

    /** The first tie whose opened sheets name the player, now or before a change after the opening. */
    static Optional<TieId> playsIn(Event event, PlayerId player) {
        return event.ties().values().stream()
                .filter(tie -> opened(event, tie).stream().anyMatch(pair -> pair.has(player)))
                .map(Tie::id)
                .findFirst();
    }

    private static List<Pair> opened(Event event, Tie tie) {
        List<Pair> pairs = new ArrayList<>();
        tie.opened()
                .values()
                .forEach(rubber -> Stream.of(rubber.home(), rubber.away())
                        .flatMap(Optional::stream)
                        .forEach(pairs::add));
        event.exchanges().values().stream()
                .filter(exchange -> exchange.id().tie().equals(tie.id()))
                .flatMap(exchange -> exchange.opened().stream())
                .flatMap(sheets -> Stream.of(sheets.home(), sheets.away()))
                .flatMap(sheet -> sheet.pairs().values().stream())
                .flatMap(Optional::stream)
                .forEach(pairs::add);
        return pairs;
    }

    /** A tie for which a sheet of this club is in and not opened: nobody may know whom it names. */
    static Optional<TieId> sealedFor(Event event, ClubId club) {
        return event.exchanges().values().stream()
                .filter(exchange -> !exchange.isOpened() && isIn(event, exchange, club))
                .map(exchange -> exchange.id().tie())
                .findFirst();
    }

    private static boolean isIn(Event event, Exchange exchange, ClubId club) {
        return event.tie(exchange.id().tie())
                .flatMap(tie -> tie.sideOf(club))
                .filter(side -> exchange.side(side).isIn())
                .isPresent();
    }
}
