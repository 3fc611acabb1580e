package tiewright.saturday;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Event;
import tiewright.event.Exchange;
import tiewright.event.ExchangeId;
import tiewright.event.Tie;

/** Both sheets in and the time come, or both captains asked: then both are open; never one side without the other. */
final class OpensWhenDue implements Promise {
    @Override
    public List<Broken> broken(Moment moment) {
        List<Broken> broken = new ArrayList<>();
        for (Tie tie : moment.event().ties().values()) {
            if (isCounted(moment.event(), tie)) {
                look(moment, tie).ifPresent(broken::add);
            }
        }
        return broken;
    }

    private static boolean isCounted(Event event, Tie tie) {
        return tie.isReady()
                && event.opening().flatMap(chosen -> chosen.neutral()).isEmpty()
                && event.withdrawals().keySet().stream().noneMatch(tie::has);
    }

    private static Optional<Broken> look(Moment moment, Tie tie) {
        Exchange sheets = moment.event().exchange(ExchangeId.sheets(tie.id()));
        boolean bothIn = isIn(sheets.home()) && isIn(sheets.away());
        boolean bothAsk = sheets.home().openingAsked() && sheets.away().openingAsked();
        Optional<Instant> deadline = moment.event()
                .startsAt(tie)
                .map(start -> start.minus(
                        Duration.ofMinutes(moment.event().conditions().sheetDeadlineMinutes())));
        boolean isTime = deadline.filter(at -> !at.isAfter(moment.now())).isPresent();
        boolean hasNames = tie.opened().keySet().stream().anyMatch(rubber -> !rubber.isDecider());
        if (bothIn) {
            moment.met(Looked.BOTH_SHEETS_IN);
        }
        if (bothIn && (bothAsk || isTime) && !sheets.isOpened()) {
            return Optional.of(new Broken(
                    7, "both sheets of tie " + tie.id() + " are in, it is " + moment.clock() + ", and nothing opens"));
        }
        return sheets.isOpened() == hasNames
                ? Optional.empty()
                : Optional.of(new Broken(7, "tie " + tie.id() + " shows names without an opening, or none after one"));
    }

    private static boolean isIn(Exchange.SideOfExchange side) {
        return side.isIn() && side.atDesk();
    }
}
