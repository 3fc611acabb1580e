package tiewright.http.everybody;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.Event;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Sheet;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.event.VisibleExchange;
import tiewright.http.pieces.CardView;
import tiewright.http.pieces.CopyText;
import tiewright.http.pieces.Receipt;
import tiewright.http.pieces.TieLine;
import tiewright.http.views.TieView;
import tiewright.http.views.TiesView;
import tiewright.http.visit.Changes;
import tiewright.http.visit.Door;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TiePapers;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.sheet.Swaps;
import tiewright.wording.Words;

/** All ties in the order of play, and one tie with its sheets, receipts and card. */
final class TiesPage implements Page {

    @Override
    public void at(Routes routes) {
        routes.everybodys(
                "/ties", visit -> Screen.of("ties", visit.words().say("page-everybody.order-of-the-ties"), all(visit)));
        routes.get(Door.ANYBODY, "/tie/{tie}", visit -> {
            Tie tie = visit.tie();
            visit.show(Screen.of("tie", new TieViews(visit.event()).title(tie), one(visit.event(), tie)));
        });
    }

    private static TiesView all(Visit visit) {
        VisibleEvent event = visit.event();
        TieViews views = visit.ties();
        Map<String, List<TieLine>> slots = new LinkedHashMap<>();
        List<String> text = new ArrayList<>();
        for (Tie tie : TieOrder.sorted(List.copyOf(event.ties()))) {
            slots.computeIfAbsent(
                            tie.start()
                                    .map(HallClock::said)
                                    .orElse(visit.words().say("page-everybody.without-a-time")),
                            start -> new ArrayList<>())
                    .add(views.line(tie));
            text.add(line(views, tie));
        }
        return new TiesView(
                slots.entrySet().stream()
                        .map(slot -> new TiesView.Slot(slot.getKey(), List.copyOf(slot.getValue())))
                        .toList(),
                new CopyText(
                        "copy-ties",
                        visit.words().say("page-everybody.order-of-the-ties-as"),
                        String.join("\n", text),
                        visit.words().say("page-everybody.copy"),
                        visit.words().say("page-everybody.copied")));
    }

    private static String line(TieViews views, Tie tie) {
        TieLine line = views.line(tie);
        String score = line.homeScore().isEmpty() ? "" : " " + line.homeScore() + "-" + line.awayScore();
        return line.when() + " " + line.where() + (line.where().isEmpty() ? "" : " ") + line.home() + " v "
                + line.away() + score;
    }

    private static TieView one(VisibleEvent event, Tie tie) {
        TiePapers papers = new TiePapers(event);
        TieViews views = new TieViews(event);
        VisibleExchange sheets = event.exchange(ExchangeId.sheets(tie.id()));
        VisibleExchange decider = event.exchange(ExchangeId.decider(tie.id()));
        List<Receipt> receipts = new ArrayList<>(receipts(views, tie, sheets, "sheet"));
        receipts.addAll(receipts(views, tie, decider, Words.of(event).say("page-everybody.pair-for-the-decider")));
        List<String> changes = new ArrayList<>(swaps(event, tie));
        java.util.stream.Stream.concat(sheets.replacements().stream(), decider.replacements().stream())
                .map(change -> change(event, change))
                .forEach(changes::add);
        return new TieView(
                views.line(tie),
                papers.card(tie),
                papers.sheets(tie),
                receipts,
                changes,
                new Changes(event).history(tie),
                new CopyText(
                        "copy-tie",
                        Words.of(event).say("page-everybody.this-tie-as-text"),
                        text(papers.card(tie)),
                        Words.of(event).say("page-everybody.copy"),
                        Words.of(event).say("page-everybody.copied")));
    }

    /** What the notice at the opening said of a sheet that a newer link had sealed. */
    private static List<String> swaps(VisibleEvent event, Tie tie) {
        return event.notices().stream()
                .map(Event.Posted::notice)
                .filter(notice -> notice.tie().filter(tie.id()::equals).isPresent())
                .filter(notice -> notice.text().code().equals(Swaps.SAYING))
                .map(notice -> Words.of(event).saying(notice.text()))
                .toList();
    }

    private static List<Receipt> receipts(TieViews views, Tie tie, VisibleExchange exchange, String what) {
        List<Receipt> receipts = new ArrayList<>();
        for (Side side : Side.values()) {
            exchange.side(side)
                    .receipt()
                    .ifPresent(code -> receipts.add(new Receipt(
                            views.side(tie, side) + ": receipt of the " + what,
                            code,
                            secretLine(exchange, side),
                            hashed(tie, exchange, side),
                            "/help/receipts",
                            "How to check it")));
        }
        return receipts;
    }

    private static String secretLine(VisibleExchange exchange, Side side) {
        if (exchange.side(side).ruled().isPresent()) {
            return "A ruling stands in the place of this sheet; it has no secret.";
        }
        return exchange.isOpened()
                ? "It is the SHA-256 of these lines: secret, tie, club, then each rubber with the codes of its players."
                : "The secret and the sheet come out with the opening.";
    }

    /** What anybody can hash again: one line each, every line ended by a line feed. */
    private static List<String> hashed(Tie tie, VisibleExchange exchange, Side side) {
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

    private static String change(VisibleEvent event, tiewright.event.Exchange.Replacement change) {
        String pair = change.fact()
                .pair()
                .map(two -> Words.of(event)
                        .say(
                                "page-everybody.and",
                                "first",
                                event.name(two.first()),
                                "second",
                                event.name(two.second())))
                .orElse(Words.of(event).say("page-everybody.no-pair"));
        return Words.of(event)
                .say(
                        "page-everybody.is-now-approved-by",
                        "at",
                        HallClock.said(event.clock(change.at())),
                        "club",
                        event.clubName(change.fact().club()),
                        "rubber",
                        TieViews.rubber(change.fact().rubber()),
                        "pair",
                        pair,
                        "door",
                        change.fact().door(),
                        "approvedBy",
                        change.fact().approvedBy());
    }

    private static String text(CardView card) {
        List<String> lines = new ArrayList<>();
        lines.add(card.title() + ", " + card.when());
        for (CardView.Row row : card.rows()) {
            lines.add(row.label() + ": " + String.join("/", row.homePlayers()) + " v "
                    + String.join("/", row.awayPlayers()) + " "
                    + (row.homePoints().isEmpty() ? "" : row.homePoints() + "-" + row.awayPoints())
                    + (row.note().isEmpty() ? "" : " " + row.note()));
        }
        lines.add(card.totalWords() + ": " + card.homeTotal() + "-" + card.awayTotal());
        return String.join("\n", lines);
    }
}
