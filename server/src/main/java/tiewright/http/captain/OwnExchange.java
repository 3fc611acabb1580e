package tiewright.http.captain;

import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;
import tiewright.event.Decision;
import tiewright.event.ExchangeId;
import tiewright.event.Sheet;
import tiewright.event.SheetKind;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleExchange;
import tiewright.http.answers.OwnSheets;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Visit;

/**
 * The exchange of sheets that a captain's page is about, seen from the own side.
 *
 * @param side of the own club in the tie
 */
record OwnExchange(Visit visit, ExchangeId id, Tie tie, Side side) {

    /** The exchange of the tie in the address; the own club must play in it. */
    static OwnExchange of(Visit visit, SheetKind kind) {
        Tie tie = visit.tie();
        Side side = tie.sideOf(visit.club())
                .orElseThrow(
                        () -> new NotFound(visit.words().say("page-captain.your-club-does-not-play", "tie", tie.id())));
        return new OwnExchange(visit, new ExchangeId(tie.id(), kind), tie, side);
    }

    /** Below it, the code of a tie. */
    static String path(SheetKind kind) {
        return kind == SheetKind.RUBBERS ? "/captain/sheet/" : "/captain/decider/";
    }

    String path() {
        return path(id.kind()) + tie.id();
    }

    VisibleExchange exchange() {
        return visit.event().exchange(id);
    }

    /** Both sheets opened while this page was made. */
    boolean openedMeanwhile() {
        return visit.ask(OwnSheets::new).openedMeanwhile(id);
    }

    VisibleExchange.VisibleSide own() {
        return exchange().side(side);
    }

    /** Whether somebody who listens in the network can read the answer on its way. */
    boolean isReadInTheAir() {
        return visit.hall().address().isReadInTheAir(visit.ctx());
    }

    /** The own sealed sheet, where this page may show it: never where somebody who listens could read it. */
    Optional<Decision.Sealed> sealed() {
        return isReadInTheAir() ? Optional.empty() : visit.ask(OwnSheets::new).sealed(id);
    }

    /** Whether this is the secret of the own sheet at the desk, as only the phone that sealed it knows it. */
    boolean isSecret(String secret) {
        return visit.ask(OwnSheets::new)
                .sealed(id)
                .filter(kept -> kept.secret().equals(secret))
                .isPresent();
    }

    /** The club's sheet of this kind that was opened last. */
    Optional<Sheet> lastSheet() {
        return visit.event().tiesOf(visit.club()).stream()
                .map(one -> visit.event().exchange(new ExchangeId(one.id(), id.kind())))
                .filter(VisibleExchange::isOpened)
                .max(Comparator.comparing(exchange -> exchange.openedAt().orElse(Instant.EPOCH)))
                .flatMap(exchange -> exchange.opened()
                        .flatMap(opened -> visit.event()
                                .tie(exchange.id().tie())
                                .flatMap(one -> one.sideOf(visit.club()))
                                .map(each -> each == Side.HOME ? opened.home() : opened.away())));
    }
}
