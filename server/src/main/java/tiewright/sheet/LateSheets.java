package tiewright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.Exchange;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.SheetKind;
import tiewright.event.Side;

/**
 * The sheet that the conditions foresee for a club that is late, as a proposal to whoever rules; nothing here is applied
 * by itself.
 */
public final class LateSheets {
    private LateSheets() {}

    /** Empty where the conditions foresee none, or none that would be legal now. */
    public static Optional<Sheet> foreseen(Event event, ExchangeId exchange, ClubId club) {
        Optional<Sheet> sheet =
                switch (event.conditions().lateSheet()) {
                    case LAST_LEGAL -> last(event, exchange, club);
                    case STRENGTH_ORDER -> byStrength(event, exchange, club);
                    case GRACE, DESK_RECEIPT, SHOWN_RECEIPT, REFEREE_FILLS, FORFEIT -> Optional.empty();
                };
        return sheet.filter(
                found -> SheetRules.faults(event, exchange, club, found).isEmpty());
    }

    /** The club's last opened sheet of the same kind that would be legal now. */
    private static Optional<Sheet> last(Event event, ExchangeId exchange, ClubId club) {
        return event.exchanges().values().stream()
                .filter(Exchange::isOpened)
                .filter(other -> other.id().kind() == exchange.kind())
                .sorted(Comparator.comparing(
                                (Exchange other) -> other.openedAt().orElseThrow())
                        .reversed())
                .flatMap(other -> opened(event, other, club).stream())
                .filter(sheet -> SheetRules.faults(event, exchange, club, sheet).isEmpty())
                .findFirst();
    }

    private static Optional<Sheet> opened(Event event, Exchange exchange, ClubId club) {
        Optional<ExchangeFact.SheetsOpened> opened = exchange.opened();
        return event.tie(exchange.id().tie())
                .flatMap(tie -> tie.sideOf(club))
                .flatMap(side -> opened.map(both -> side == Side.HOME ? both.home() : both.away()));
    }

    /** The strongest two first, then the next two, starting again at the top where players may play more than once. */
    private static Optional<Sheet> byStrength(Event event, ExchangeId exchange, ClubId club) {
        Squad squad = new Squad(event, exchange, club);
        List<PlayerId> order = squad.here().stream()
                .sorted(Comparator.comparingInt(
                        (PlayerId player) -> squad.rank(player) == 0 ? Integer.MAX_VALUE : squad.rank(player)))
                .toList();
        List<RubberNo> rubbers = List.copyOf(SheetRules.rubbers(event, exchange));
        int most = exchange.kind() == SheetKind.DECIDER ? 1 : event.conditions().maxRubbersPerPlayer();
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < StrengthOrder.fullest(order.size(), most, rubbers.size()); i++) {
            pairs.add(Pair.of(order.get(2 * i % order.size()), order.get((2 * i + 1) % order.size())));
        }
        pairs.sort(Comparator.comparingInt(pair -> squad.rank(pair.first()) + squad.rank(pair.second())));
        SortedMap<RubberNo, Optional<Pair>> sheet = new TreeMap<>();
        for (int i = 0; i < rubbers.size(); i++) {
            sheet.put(rubbers.get(i), i < pairs.size() ? Optional.of(pairs.get(i)) : Optional.empty());
        }
        return Optional.of(new Sheet(sheet));
    }
}
