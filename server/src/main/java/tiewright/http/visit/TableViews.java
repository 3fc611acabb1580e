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
        ReasonTable shown =
                new ReasonTable("table-" + pool, "Pool " + pool, columns(draws), rows, foot(visit, pool, table));
        return new TablesView.PoolTable(
                pool,
                shown,
                new CopyText(
                        "copy-" + pool,
                        "Pool " + pool + " as text",
                        text(event, pool, table, shown.foot()),
                        "Copy",
                        "Copied"));
    }

    private static List<ReasonTable.Column> columns(boolean draws) {
        List<ReasonTable.Column> columns = new ArrayList<>();
        columns.add(new ReasonTable.Column("Club", false));
        columns.add(new ReasonTable.Column("Place", true));
        columns.add(new ReasonTable.Column("Tie points", true));
        columns.add(new ReasonTable.Column("Ties won-lost" + (draws ? "-drawn" : ""), true));
        columns.add(new ReasonTable.Column("Rubbers", true));
        columns.add(new ReasonTable.Column("Games", true));
        columns.add(new ReasonTable.Column("Points", true));
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
        return new ReasonTable.Row(cells, "Why " + TieViews.ordinal(row.place()), reasons, false);
    }

    private static String foot(Visit visit, String pool, Table table) {
        VisibleEvent event = visit.event();
        OfficialFact.TableSigned signed = event.signedTables().get(pool);
        if (signed != null) {
            String at = Optional.ofNullable(event.disputes().signedAt().get(pool))
                    .map(event::clock)
                    .map(HallClock::said)
                    .orElse("");
            return "Final, by " + signed.by() + (at.isEmpty() ? "." : ", " + at + ".");
        }
        if (table.isProvisional()) {
            return "Provisional: " + table.tiesLeft() + (table.tiesLeft() == 1 ? " tie is" : " ties are")
                    + " not finished.";
        }
        return visit.ask(Answers::new)
                .objectionsUntil(pool)
                .map(event::clock)
                .map(HallClock::said)
                .map(until -> "All ties are finished. Provisional, objections until " + until
                        + ", then until an official signs this table.")
                .orElse("All ties are finished. Provisional until an official signs this table.");
    }

    private static String text(VisibleEvent event, String pool, Table table, String foot) {
        List<String> lines = new ArrayList<>();
        lines.add("Pool " + pool);
        for (Row row : table.rows()) {
            lines.add(row.place() + " " + event.clubName(row.club()) + ", ties " + row.tiesWon() + "-" + row.tiesLost()
                    + ", rubbers " + row.rubbersWon() + "-" + row.rubbersLost() + ", points " + row.pointsFor() + "-"
                    + row.pointsAgainst());
        }
        lines.add(foot);
        return String.join("\n", lines);
    }
}
