package tiewright.http.everybody;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Sheet;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.event.VisibleExchange;
import tiewright.http.pieces.Receipt;
import tiewright.http.visit.TieViews;
import tiewright.wording.Words;

/** The receipts of a tie's sheets, and from the opening on all that they were made from. */
record TieReceipts(VisibleEvent event, TieViews views, Tie tie) {
    List<Receipt> all() {
        List<Receipt> receipts = new ArrayList<>(of(event.exchange(ExchangeId.sheets(tie.id())), "sheet"));
        receipts.addAll(of(event.exchange(ExchangeId.decider(tie.id())), "pair"));
        return receipts;
    }

    private List<Receipt> of(VisibleExchange exchange, String what) {
        Words words = Words.of(event);
        List<Receipt> receipts = new ArrayList<>();
        for (Side side : Side.values()) {
            exchange.side(side)
                    .receipt()
                    .ifPresent(code -> receipts.add(new Receipt(
                            words.say("page-everybody.receipt-of", "club", views.side(tie, side), "what", what),
                            code,
                            words.say("page-everybody.receipt-" + made(exchange, side)),
                            hashed(exchange, side),
                            "/help/receipts",
                            words.say("page-everybody.how-to-check-it"))));
        }
        return receipts;
    }

    private static String made(VisibleExchange exchange, Side side) {
        if (exchange.side(side).ruled().isPresent()) {
            return "ruled";
        }
        return exchange.isOpened() ? "opened" : "closed";
    }

    /** What anybody can hash again: one line each, every line ended by a line feed. */
    private List<String> hashed(VisibleExchange exchange, Side side) {
        Optional<ExchangeFact.SheetsOpened> opened = exchange.opened();
        Optional<String> secret = opened.flatMap(both -> side == Side.HOME ? both.homeSecret() : both.awaySecret());
        if (secret.isEmpty() || tie.club(side).isEmpty()) {
            return List.of();
        }
        Optional<Sheet> sheet = opened.map(both -> side == Side.HOME ? both.home() : both.away());
        List<String> lines = new ArrayList<>(
                List.of(secret.get(), tie.id().code(), tie.club(side).get().code()));
        sheet.ifPresent(one -> one.canonical().lines().forEach(lines::add));
        return lines;
    }
}
