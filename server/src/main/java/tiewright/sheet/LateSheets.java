package tiewright.sheet;

import java.util.Comparator;
import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.Exchange;
import tiewright.event.ExchangeFact;
import tiewright.event.Sheet;
import tiewright.event.Side;

/**
 * The sheet that the conditions foresee for a club that is late, as a proposal to whoever rules; nothing here is applied
 * by itself.
 */
public final class LateSheets {
    private LateSheets() {}

    /** Empty where the conditions foresee none, or none that would be legal now. */
    public static Optional<Sheet> foreseen(SheetOf whose) {
        Optional<Sheet> sheet =
                switch (whose.event().conditions().lateSheet()) {
                    case LAST_LEGAL -> last(whose);
                    case STRENGTH_ORDER -> Optional.of(StrengthSheet.of(whose));
                    case GRACE, DESK_RECEIPT, SHOWN_RECEIPT, REFEREE_FILLS, FORFEIT -> Optional.empty();
                };
        return sheet.filter(found -> SheetRules.faults(whose, found).isEmpty());
    }

    /** The club's last opened sheet of the same kind that would be legal now. */
    private static Optional<Sheet> last(SheetOf whose) {
        return whose.event().exchanges().values().stream()
                .filter(Exchange::isOpened)
                .filter(other -> other.id().kind() == whose.exchange().kind())
                .sorted(Comparator.comparing(
                                (Exchange other) -> other.openedAt().orElseThrow())
                        .reversed())
                .flatMap(other -> opened(whose.event(), other, whose.club()).stream())
                .filter(sheet -> SheetRules.faults(whose, sheet).isEmpty())
                .findFirst();
    }

    private static Optional<Sheet> opened(Event event, Exchange exchange, ClubId club) {
        Optional<ExchangeFact.SheetsOpened> opened = exchange.opened();
        return event.tie(exchange.id().tie())
                .flatMap(tie -> tie.sideOf(club))
                .flatMap(side -> opened.map(both -> side == Side.HOME ? both.home() : both.away()));
    }
}
