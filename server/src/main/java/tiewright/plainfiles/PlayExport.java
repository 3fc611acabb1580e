package tiewright.plainfiles;

import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.Exchange;
import tiewright.event.ExchangeId;
import tiewright.event.OfficialFact;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.RubberScore;
import tiewright.event.Sheet;
import tiewright.event.SheetKind;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.scoring.Score;

/** What was to be played and what was, as rows. */
final class PlayExport {
    private final Event event;
    private final ZoneId zone;

    PlayExport(Event event, ZoneId zone) {
        this.event = event;
        this.zone = zone;
    }

    CsvText ties() {
        CsvText text = new CsvText(PlainFile.TIES);
        event.ties()
                .values()
                .forEach(tie -> text.row(
                        tie.id(),
                        tie.stage().code(),
                        tie.pool(),
                        tie.round(),
                        tie.home().club(),
                        tie.away().club(),
                        tie.home().from(),
                        tie.away().from(),
                        tie.start(),
                        tie.court()));
        return text;
    }

    /** The sheets as they were opened; a sealed one has no row. */
    CsvText sheets() {
        CsvText text = new CsvText(PlainFile.SHEETS);
        for (Tie tie : event.ties().values()) {
            for (SheetKind kind : SheetKind.values()) {
                Exchange exchange = event.exchange(new ExchangeId(tie.id(), kind));
                exchange.opened().ifPresent(opened -> {
                    sheet(text, tie, Side.HOME, exchange, opened.home(), opened.homeSecret());
                    sheet(text, tie, Side.AWAY, exchange, opened.away(), opened.awaySecret());
                });
            }
        }
        return text;
    }

    private void sheet(CsvText text, Tie tie, Side side, Exchange exchange, Sheet sheet, Optional<String> secret) {
        Optional<ClubId> club = tie.club(side);
        Optional<LocalTime> at =
                exchange.openedAt().map(opened -> opened.atZone(zone).toLocalTime());
        // a side that was ruled shows the sheet of the ruling, to which no receipt belongs
        Optional<String> receipt = exchange.side(side)
                .receipt()
                .filter(any -> exchange.side(side).ruled().isEmpty());
        sheet.pairs()
                .forEach((rubber, pair) ->
                        text.row(tie.id(), club, rubber, first(pair), second(pair), at, receipt, secret));
    }

    /** Who played, after every replacement. */
    CsvText rubbers() {
        CsvText text = new CsvText(PlainFile.RUBBERS);
        event.ties()
                .values()
                .forEach(tie -> tie.opened()
                        .forEach((rubber, pairs) -> text.row(
                                tie.id(),
                                rubber,
                                first(pairs.home()),
                                second(pairs.home()),
                                first(pairs.away()),
                                second(pairs.away()))));
        return text;
    }

    private static Optional<PlayerId> first(Optional<Pair> pair) {
        return pair.map(Pair::first);
    }

    private static Optional<PlayerId> second(Optional<Pair> pair) {
        return pair.map(Pair::second);
    }

    /** The scores that count: a held rubber has none. */
    CsvText results() {
        boolean several = event.conditions().bestOf() > 1;
        List<String> header = new ArrayList<>(PlainFile.RESULTS.columns());
        if (!several) {
            header.remove("game");
        }
        CsvText text = new CsvText(header);
        for (Tie tie : event.ties().values()) {
            event.progress(tie).rubbers().forEach(score -> games(text, tie, score, several));
        }
        return text;
    }

    /** @param numbered whether each game says which of several it is */
    private static void games(CsvText text, Tie tie, RubberScore score, boolean numbered) {
        List<Score> games = score.games().isEmpty() ? List.of(Score.of(0, 0)) : score.games();
        for (int i = 0; i < games.size(); i++) {
            List<Object> cells = new ArrayList<>(List.of(
                    tie.id(),
                    score.rubber(),
                    games.get(i).home(),
                    games.get(i).away(),
                    score.how().code()));
            if (numbered) {
                cells.add(i + 1);
            }
            text.row(cells.toArray());
        }
    }

    CsvText withdrawals() {
        CsvText text = new CsvText(PlainFile.WITHDRAWALS);
        event.withdrawals()
                .values()
                .forEach(withdrawn -> text.row(
                        withdrawn.club(),
                        withdrawn.afterTie(),
                        withdrawn.treatment().code()));
        return text;
    }

    CsvText lots() {
        CsvText text = new CsvText(PlainFile.LOTS);
        event.lots().forEach((pool, draws) -> {
            for (int i = 0; i < draws.size(); i++) {
                OfficialFact.LotDrawn draw = draws.get(i);
                int number = i + 1;
                draw.order().forEach(club -> text.row(pool, number, club, draw.witness()));
            }
        });
        return text;
    }
}
