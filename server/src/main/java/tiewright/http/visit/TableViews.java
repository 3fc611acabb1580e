package tiewright.http.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import tiewright.event.ClubId;
import tiewright.event.OfficialFact;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieProgress;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.Answers;
import tiewright.http.pieces.CopyText;
import tiewright.http.pieces.DayLine;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.views.TablesView;
import tiewright.standings.NeedsReport;
import tiewright.standings.Row;
import tiewright.standings.Table;
import tiewright.wording.NeedsWords;
import tiewright.wording.StandingsWords;
import tiewright.wording.Words;

/** The table of a pool: who goes on below a line, what each club can still be, and the reason of each place. */
public final class TableViews {
    private final Visit visit;
    private final VisibleEvent event;
    private final Words words;
    private final String pool;
    private final Table table;
    private final Map<ClubId, NeedsReport> needs;
    private final ThroughLine line;

    private TableViews(Visit visit, String pool) {
        this.visit = visit;
        this.event = visit.event();
        this.words = visit.words();
        this.pool = pool;
        this.table = visit.ask(Answers::new).table(pool);
        this.needs = table.isProvisional()
                ? visit.ask(Answers::new).needs(pool).stream()
                        .collect(Collectors.toMap(NeedsReport::club, Function.identity()))
                : Map.of();
        this.line = new ThroughLine(event, pool);
    }

    public static TablesView.PoolTable pool(Visit visit, String pool) {
        return new TableViews(visit, pool).shown();
    }

    private TablesView.PoolTable shown() {
        List<ReasonTable.Row> rows = table.rows().stream().map(this::row).toList();
        ReasonTable shown =
                new ReasonTable("table-" + pool, words.say("page-visit.pool", "pool", pool), columns(), rows, foot());
        return new TablesView.PoolTable(
                pool,
                shown,
                new CopyText(
                        "copy-" + pool,
                        words.say("page-visit.pool-as-text", "pool", pool),
                        text(shown.foot()),
                        words.say("page-visit.copy"),
                        words.say("page-visit.copied")));
    }

    private boolean draws() {
        return table.rows().stream().anyMatch(row -> row.tiesDrawn() > 0);
    }

    private List<ReasonTable.Column> columns() {
        List<ReasonTable.Column> columns = new ArrayList<>();
        columns.add(new ReasonTable.Column(words.say("page-visit.column.place-and-club"), false));
        columns.add(new ReasonTable.Column(words.say("page-visit.column.tie-points"), true));
        columns.add(new ReasonTable.Column(
                words.say(draws() ? "page-visit.column.won-lost-drawn" : "page-visit.column.won-lost"), true));
        columns.add(new ReasonTable.Column(words.say("page-visit.column.rubbers"), true));
        columns.add(new ReasonTable.Column(words.say("page-visit.column.difference"), true));
        columns.add(new ReasonTable.Column(words.say("page-visit.column.so-far"), false));
        if (!needs.isEmpty()) {
            columns.add(new ReasonTable.Column(words.say("page-visit.column.can-be"), false));
        }
        return columns;
    }

    private ReasonTable.Row row(Row row) {
        List<ReasonTable.Cell> cells = new ArrayList<>(List.of(
                new ReasonTable.Cell(
                        words.say(
                                "page-visit.place-and-club", "place", row.place(), "club", event.clubName(row.club())),
                        "/club/" + row.club()),
                ReasonTable.Cell.of(Integer.toString(row.tiePoints())),
                ReasonTable.Cell.of(row.tiesWon() + "–" + row.tiesLost() + (draws() ? "–" + row.tiesDrawn() : "")),
                ReasonTable.Cell.of(row.rubbersWon() + "–" + row.rubbersLost()),
                ReasonTable.Cell.of(signed(row.rubbersWon() - row.rubbersLost())),
                ReasonTable.Cell.ofMarks(soFar(row.club()))));
        if (!needs.isEmpty()) {
            cells.add(ReasonTable.Cell.of(canBe(row.club())));
        }
        return new ReasonTable.Row(
                cells,
                words.say("page-visit.why", "place", TieViews.ordinal(words, row.place())),
                reasons(row),
                line.below(row.place(), table));
    }

    private static String signed(int difference) {
        return difference > 0 ? "+" + difference : difference < 0 ? "−" + -difference : "0";
    }

    /** A square for each tie of the club in this pool, in the order in which they are played. */
    private List<DayLine.Rubber> soFar(ClubId club) {
        return TieOrder.sorted(event.tiesOf(club)).stream()
                .filter(tie -> tie.pool().filter(pool::equals).isPresent())
                .map(tie -> square(tie, club))
                .toList();
    }

    private DayLine.Rubber square(Tie tie, ClubId club) {
        Side side = tie.sideOf(club).orElseThrow();
        TieProgress progress = event.progress(tie);
        boolean played = progress.finished() && !progress.rubbers().isEmpty();
        String kind = event.isGone(tie) && !played
                ? "void"
                : !played
                        ? "left"
                        : progress.winner()
                                .map(won -> won == side ? "won" : "lost")
                                .orElse("void");
        String against = tie.club(side.other()).map(event::clubName).orElse("");
        return new DayLine.Rubber(kind, words.say("page-visit.tie-" + kind, "club", against));
    }

    private String canBe(ClubId club) {
        return Optional.ofNullable(needs.get(club))
                .map(report -> words.say(
                        report.places().isCertain() ? "page-visit.can-be.one" : "page-visit.can-be.range",
                        "best",
                        TieViews.ordinal(words, report.places().best()),
                        "worst",
                        TieViews.ordinal(words, report.places().worst())))
                .orElse("");
    }

    private List<String> reasons(Row row) {
        StandingsWords standings = new StandingsWords(words);
        List<String> reasons = new ArrayList<>();
        row.decidedBy().lines().forEach(one -> reasons.add(standings.line(row.club(), one)));
        reasons.add(words.say(
                "page-visit.counts",
                "rubbers",
                row.rubbersWon() + "–" + row.rubbersLost(),
                "games",
                row.gamesWon() + "–" + row.gamesLost(),
                "points",
                row.pointsFor() + "–" + row.pointsAgainst()));
        Optional.ofNullable(needs.get(row.club()))
                .ifPresent(report -> reasons.add(new NeedsWords(words).overall(report)));
        return reasons;
    }

    private String foot() {
        OfficialFact.TableSigned signed = event.signedTables().get(pool);
        if (signed != null) {
            String at = Optional.ofNullable(event.disputes().signedAt().get(pool))
                    .map(event::clock)
                    .map(HallClock::said)
                    .orElse("");
            return words.say(at.isEmpty() ? "page-visit.signed" : "page-visit.signed-at", "by", signed.by(), "at", at);
        }
        if (table.isProvisional()) {
            return words.say("page-visit.provisional", "ties", table.tiesLeft());
        }
        return visit.ask(Answers::new)
                .objectionsUntil(pool)
                .map(event::clock)
                .map(HallClock::said)
                .map(until -> words.say("page-visit.all-ties-are-finished-provisional-2", "until", until))
                .orElse(words.say("page-visit.all-ties-are-finished-provisional"));
    }

    private String text(String foot) {
        List<String> lines = new ArrayList<>();
        lines.add(words.say("page-visit.pool", "pool", pool));
        for (Row row : table.rows()) {
            lines.add(text(row));
        }
        lines.add(foot);
        return String.join("\n", lines);
    }

    private String text(Row row) {
        return words.say(
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
                row.pointsAgainst());
    }
}
