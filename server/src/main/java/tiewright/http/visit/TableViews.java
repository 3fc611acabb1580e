package tiewright.http.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.OfficialFact;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.Answers;
import tiewright.http.pieces.CopyText;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.views.TablesView;
import tiewright.standings.Row;
import tiewright.standings.Table;
import tiewright.wording.StandingsWords;
import tiewright.wording.Words;

/** The table of a pool, each place with its reason. */
public final class TableViews {
    private TableViews() {}

    public static TablesView.PoolTable pool(Visit visit, String pool) {
        VisibleEvent event = visit.event();
        Table table = visit.ask(Answers::new).table(pool);
        StandingsWords words = new StandingsWords(visit.words());
        boolean draws = table.rows().stream().anyMatch(row -> row.tiesDrawn() > 0);
        List<ReasonTable.Row> rows =
                table.rows().stream().map(row -> row(row, words, event, draws)).toList();
        ReasonTable shown = new ReasonTable(
                "table-" + pool,
                visit.words().say("page-visit.pool", "pool", pool),
                columns(visit.words(), draws),
                rows,
                foot(visit, pool, table));
        return new TablesView.PoolTable(
                pool,
                shown,
                new CopyText(
                        "copy-" + pool,
                        visit.words().say("page-visit.pool-as-text", "pool", pool),
                        text(event, pool, table, shown.foot()),
                        visit.words().say("page-visit.copy"),
                        visit.words().say("page-visit.copied")));
    }

    private static List<ReasonTable.Column> columns(Words words, boolean draws) {
        List<ReasonTable.Column> columns = new ArrayList<>();
        columns.add(new ReasonTable.Column(words.say("page-visit.column.club"), false));
        columns.add(new ReasonTable.Column(words.say("page-visit.column.place"), true));
        columns.add(new ReasonTable.Column(words.say("page-visit.column.tie-points"), true));
        columns.add(new ReasonTable.Column(
                words.say(draws ? "page-visit.column.won-lost-drawn" : "page-visit.column.won-lost"), true));
        columns.add(new ReasonTable.Column(words.say("page-visit.column.rubbers"), true));
        columns.add(new ReasonTable.Column(words.say("page-visit.column.games"), true));
        columns.add(new ReasonTable.Column(words.say("page-visit.column.points"), true));
        return columns;
    }

    private static ReasonTable.Row row(Row row, StandingsWords words, VisibleEvent event, boolean draws) {
        List<ReasonTable.Cell> cells = List.of(
                new ReasonTable.Cell(event.clubName(row.club()), "/club/" + row.club()),
                ReasonTable.Cell.of(Integer.toString(row.place())),
                ReasonTable.Cell.of(Integer.toString(row.tiePoints())),
                ReasonTable.Cell.of(row.tiesWon() + "-" + row.tiesLost() + (draws ? "-" + row.tiesDrawn() : "")),
                ReasonTable.Cell.of(row.rubbersWon() + "-" + row.rubbersLost()),
                ReasonTable.Cell.of(row.gamesWon() + "-" + row.gamesLost()),
                ReasonTable.Cell.of(row.pointsFor() + "-" + row.pointsAgainst()));
        List<String> reasons = row.decidedBy().lines().stream()
                .map(line -> words.line(row.club(), line))
                .toList();
        return new ReasonTable.Row(
                cells, Words.of(event).say("page-visit.why", "place", TieViews.ordinal(row.place())), reasons, false);
    }

    private static String foot(Visit visit, String pool, Table table) {
        VisibleEvent event = visit.event();
        OfficialFact.TableSigned signed = event.signedTables().get(pool);
        if (signed != null) {
            String at = Optional.ofNullable(event.disputes().signedAt().get(pool))
                    .map(event::clock)
                    .map(HallClock::said)
                    .orElse("");
            return visit.words()
                    .say(at.isEmpty() ? "page-visit.signed" : "page-visit.signed-at", "by", signed.by(), "at", at);
        }
        if (table.isProvisional()) {
            return visit.words().say("page-visit.provisional", "ties", table.tiesLeft());
        }
        return visit.ask(Answers::new)
                .objectionsUntil(pool)
                .map(event::clock)
                .map(HallClock::said)
                .map(until -> visit.words().say("page-visit.all-ties-are-finished-provisional-2", "until", until))
                .orElse(visit.words().say("page-visit.all-ties-are-finished-provisional"));
    }

    private static String text(VisibleEvent event, String pool, Table table, String foot) {
        List<String> lines = new ArrayList<>();
        lines.add(Words.of(event).say("page-visit.pool", "pool", pool));
        for (Row row : table.rows()) {
            lines.add(Words.of(event)
                    .say(
                            "page-visit.ties-rubbers-points",
                            "place",
                            row.place(),
                            "club",
                            event.clubName(row.club()),
                            "tiesWon",
                            row.tiesWon(),
                            "tiesLost",
                            row.tiesLost(),
                            "rubbersWon",
                            row.rubbersWon(),
                            "rubbersLost",
                            row.rubbersLost(),
                            "pointsFor",
                            row.pointsFor(),
                            "pointsAgainst",
                            row.pointsAgainst()));
        }
        lines.add(foot);
        return String.join("\n", lines);
    }
}
