package tiewright.event;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A blind exchange as one viewer may see it. Nobody sees a name here before the opening; the sheet itself is read by its
 * own captain through another door.
 *
 * @param deadline when the sheets must be in, if that is known
 * @param past the deadline has passed
 */
public record VisibleExchange(
        ExchangeId id,
        VisibleSide home,
        VisibleSide away,
        Optional<Instant> deadline,
        boolean past,
        Optional<Instant> openedAt,
        Optional<ExchangeFact.SheetsOpened> opened,
        List<Exchange.Replacement> replacements) {

    /**
     * @param in a sheet is in: the one signal that everybody may see
     * @param sealedAt when the sheet that would count was sealed: for the desk and the own captain
     * @param sealed how often one was sealed: for the own captain until the opening, then for all
     * @param atDesk the sheet lies at the desk and not on the captain's phone: for the own captain, for all from the deadline on;
     *     before it, the same as {@code in}
     * @param receipt at once for the own captain, for all from the deadline on
     */
    public record VisibleSide(
            boolean in,
            Optional<Instant> sealedAt,
            int sealed,
            Optional<String> receipt,
            boolean atDesk,
            boolean openingAsked,
            boolean told,
            Optional<ExchangeFact.SideRuled> ruled) {}

    static VisibleExchange of(Event event, ExchangeId id, Viewer viewer, Instant now) {
        Exchange exchange = event.exchange(id);
        Optional<Tie> tie = event.tie(id.tie());
        Optional<Instant> deadline = Deadlines.of(event, id);
        boolean past = deadline.filter(at -> !now.isBefore(at)).isPresent();
        return new VisibleExchange(
                id,
                side(exchange.home(), Eyes.of(viewer, tie.flatMap(t -> t.club(Side.HOME)), exchange, past)),
                side(exchange.away(), Eyes.of(viewer, tie.flatMap(t -> t.club(Side.AWAY)), exchange, past)),
                deadline,
                past,
                exchange.openedAt(),
                exchange.opened(),
                exchange.replacements().stream().map(one -> one.forEyes(viewer)).toList());
    }

    public VisibleSide side(Side side) {
        return side == Side.HOME ? home : away;
    }

    public boolean isOpened() {
        return openedAt.isPresent();
    }

    private static VisibleSide side(Exchange.SideOfExchange side, Eyes eyes) {
        return new VisibleSide(
                side.isIn(),
                eyes.own || eyes.late ? side.sealedAt() : eyes.official ? side.firstSealedAt() : Optional.empty(),
                eyes.own || eyes.opened ? side.sealed() : 0,
                eyes.own || eyes.late ? side.receipt() : Optional.empty(),
                // before the deadline a sheet that moved to the phone must not betray that it replaced another
                eyes.own || eyes.late ? side.atDesk() : side.isIn(),
                side.openingAsked(),
                side.told() && eyes.ofTheClub,
                side.ruled());
    }

    /**
     * Whose eyes see a side, and when.
     *
     * @param own the club's captain
     * @param ofTheClub anybody of the club, its captain too
     * @param late the deadline has passed, or the sheets are opened
     */
    private record Eyes(boolean own, boolean ofTheClub, boolean official, boolean late, boolean opened) {
        static Eyes of(Viewer viewer, Optional<ClubId> club, Exchange exchange, boolean past) {
            return new Eyes(
                    club.filter(viewer::isCaptainOf).isPresent(),
                    club.filter(viewer::isOf).isPresent(),
                    viewer.role().isOfficial(),
                    exchange.isOpened() || past,
                    exchange.isOpened());
        }
    }
}
