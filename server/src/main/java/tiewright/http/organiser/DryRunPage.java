package tiewright.http.organiser;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tiewright.event.RubberScore;
import tiewright.event.Side;
import tiewright.event.TieScore;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.standings.DryRun;
import tiewright.standings.Row;
import tiewright.standings.Standings;
import tiewright.standings.Table;
import tiewright.wording.StandingsWords;
import tiewright.wording.Words;

/** A dry run of the conditions: how often made-up pools end in a lot, and one of each way that they can. */
final class DryRunPage implements Page {
    private static final String HERE = "/organiser/dry-run";
    private static final String FORM = "dry-run";
    private static final int RUNS = 2_000;

    @Override
    public void at(Routes routes) {
        routes.get(Door.ORGANISER, HERE, visit -> visit.show(screen(visit, Tried.NOTHING)));
        routes.post(Door.ORGANISER, HERE, visit -> visit.show(screen(visit, Tried.again(visit.form()))));
    }

    private static Screen screen(Visit visit, Tried tried) {
        List<WorkView.Section> sections = new ArrayList<>(List.of(form(visit, tried)));
        if (!tried.isNothing()) {
            DryRun.Report report = DryRun.of(visit.event().conditions(), clubs(visit, tried), RUNS, seed(tried));
            sections.add(summary(visit.words(), report));
            report.ways().forEach(found -> sections.add(example(visit.words(), found)));
        }
        return Screen.of(
                "work",
                visit.say("page-organiser.dry-run-of-the-conditions"),
                new WorkView(
                        tried.refusal(),
                        new NavLink("/organiser/conditions", visit.say("page-organiser.back-to-the-conditions"), false),
                        List.of(visit.say("page-organiser.better-found-now-than-at")),
                        sections));
    }

    /** Sizes of the pools that are drawn, or any. */
    private static List<Integer> sizes(Visit visit) {
        Set<Integer> sizes = new LinkedHashSet<>(
                visit.event().pools().values().stream().map(List::size).toList());
        IntStream.rangeClosed(3, DryRun.MOST_CLUBS).forEach(sizes::add);
        return sizes.stream()
                .filter(size -> size >= 2 && size <= DryRun.MOST_CLUBS)
                .toList();
    }

    private static int clubs(Visit visit, Tried tried) {
        OptionalInt typed = tried.typed().number("clubs");
        return typed.isPresent() && typed.getAsInt() >= 2 && typed.getAsInt() <= DryRun.MOST_CLUBS
                ? typed.getAsInt()
                : sizes(visit).get(0);
    }

    private static long seed(Tried tried) {
        return Optional.of(tried.typed().text("seed"))
                .filter(text -> text.matches("[0-9]{1,15}"))
                .map(Long::parseLong)
                .orElse(1L);
    }

    private static WorkView.Section form(Visit visit, Tried tried) {
        Fields fields = Fields.of(FORM, tried);
        List<Option> sizes = sizes(visit).stream()
                .map(size -> Option.of(size.toString(), visit.say("page-organiser.clubs", "value", size), false))
                .toList();
        return WorkView.Section.of(FORM, "")
                .with(new WorkView.WorkForm(
                        FORM,
                        HERE,
                        List.of(
                                fields.select(
                                        "clubs",
                                        visit.say("page-organiser.clubs-in-a-pool-each"),
                                        "",
                                        sizes.get(0).value(),
                                        sizes),
                                fields.line("seed", visit.say("page-organiser.seed-the-same-number-gives"), "1")
                                        .withMaxLength(15)),
                        List.of(Button.main(visit.say("page-organiser.play-pools", "runs", RUNS)))));
    }

    private static WorkView.Section summary(Words words, DryRun.Report report) {
        String share = words.say(
                "page-organiser.pools-end-in-a-lot",
                "with",
                report.withLot(),
                "runs",
                report.runs(),
                "share",
                percent(report.share()),
                "low",
                percent(report.low()),
                "high",
                percent(report.high()),
                "number",
                Long.toString(report.seed()));
        String ways = report.ways().isEmpty()
                ? words.say("page-organiser.no-pool-needed-a-lot")
                : words.say(
                        "page-organiser.ways-to-a-lot", "count", report.ways().size());
        return WorkView.Section.of("summary", words.say("page-organiser.clubs", "value", report.clubs()), share, ways);
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", 100 * share);
    }

    private static WorkView.Section example(Words words, DryRun.Found found) {
        Table table = Standings.of(found.example());
        StandingsWords reasons = StandingsWords.withCodes();
        List<ReasonTable.Row> rows =
                table.rows().stream().map(row -> row(row, reasons)).toList();
        String id = "way-" + found.way().place() + "-" + found.way().clubs();
        List<String> ties =
                found.example().ties().stream().map(tie -> said(words, tie)).toList();
        return WorkView.Section.of(
                        id,
                        words.say(
                                "page-organiser.level-at-place",
                                "clubs",
                                found.way().clubs(),
                                "place",
                                found.way().place(),
                                "times",
                                found.times()))
                .saying(ties)
                .with(new ReasonTable(
                        id + "-table", words.say("page-organiser.table-of-this-example"), columns(words), rows, ""));
    }

    private static List<ReasonTable.Column> columns(Words words) {
        return Stream.of("club", "place", "tie-points", "rubbers", "points", "decided-by")
                .map(code -> new ReasonTable.Column(
                        words.say("page-organiser.dry." + code), !code.equals("club") && !code.equals("decided-by")))
                .toList();
    }

    private static ReasonTable.Row row(Row row, StandingsWords words) {
        return ReasonTable.Row.of(List.of(
                ReasonTable.Cell.of(row.club().code()), ReasonTable.Cell.of(Integer.toString(row.place())),
                ReasonTable.Cell.of(Integer.toString(row.tiePoints())),
                        ReasonTable.Cell.of(row.rubbersWon() + "-" + row.rubbersLost()),
                ReasonTable.Cell.of(row.pointsFor() + "-" + row.pointsAgainst()),
                        ReasonTable.Cell.of(words.reason(row.club(), row.decidedBy()))));
    }

    private static String said(Words words, TieScore tie) {
        return words.say(
                "page-organiser.tie-in-one-line",
                "home",
                tie.home(),
                "away",
                tie.away(),
                "score",
                tie.rubbersWon(Side.HOME) + "-" + tie.rubbersWon(Side.AWAY),
                "rubbers",
                tie.rubbers().stream().map(rubber -> said(words, rubber)).collect(Collectors.joining("; ")));
    }

    private static String said(Words words, RubberScore rubber) {
        String score = TieViews.score(rubber.games());
        return rubber.rubber().isDecider() ? words.say("page-organiser.decider-in-a-line", "score", score) : score;
    }
}
