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
import tiewright.event.RubberScore;
import tiewright.event.Side;
import tiewright.event.TieScore;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Counted;
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
            sections.add(summary(report));
            report.ways().forEach(found -> sections.add(example(found)));
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

    private static WorkView.Section summary(DryRun.Report report) {
        String share = report.withLot() + " of " + report.runs() + " pools end in a lot: " + percent(report.share())
                + ", with 95 % certainty " + percent(report.low()) + " to " + percent(report.high()) + " (seed "
                + report.seed() + ").";
        String ways = report.ways().isEmpty()
                ? "No pool needed a lot. That is no proof that none ever will."
                : Counted.of(report.ways().size(), "way") + " were found; one example of each stands below.";
        return WorkView.Section.of("summary", report.clubs() + " clubs", share, ways);
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", 100 * share);
    }

    private static WorkView.Section example(DryRun.Found found) {
        Table table = Standings.of(found.example());
        StandingsWords words = StandingsWords.withCodes();
        List<ReasonTable.Row> rows =
                table.rows().stream().map(row -> row(row, words)).toList();
        String id = "way-" + found.way().place() + "-" + found.way().clubs();
        List<String> ties =
                found.example().ties().stream().map(DryRunPage::said).toList();
        return WorkView.Section.of(
                        id,
                        found.way().clubs() + " clubs level at place "
                                + found.way().place() + ": " + found.times() + " times")
                .saying(ties)
                .with(new ReasonTable(id + "-table", "The table of this example", columns(), rows, ""));
    }

    private static List<ReasonTable.Column> columns() {
        return List.of(
                new ReasonTable.Column("Club", false),
                new ReasonTable.Column("Place", true),
                new ReasonTable.Column("Tie points", true),
                new ReasonTable.Column("Rubbers", true),
                new ReasonTable.Column("Points", true),
                new ReasonTable.Column("Decided by", false));
    }

    private static ReasonTable.Row row(Row row, StandingsWords words) {
        return ReasonTable.Row.of(List.of(
                ReasonTable.Cell.of(row.club().code()), ReasonTable.Cell.of(Integer.toString(row.place())),
                ReasonTable.Cell.of(Integer.toString(row.tiePoints())),
                        ReasonTable.Cell.of(row.rubbersWon() + "-" + row.rubbersLost()),
                ReasonTable.Cell.of(row.pointsFor() + "-" + row.pointsAgainst()),
                        ReasonTable.Cell.of(words.reason(row.club(), row.decidedBy()))));
    }

    private static String said(TieScore tie) {
        return tie.home() + " v " + tie.away() + " " + tie.rubbersWon(Side.HOME) + "-" + tie.rubbersWon(Side.AWAY)
                + ": " + tie.rubbers().stream().map(DryRunPage::said).collect(Collectors.joining("; "));
    }

    private static String said(RubberScore rubber) {
        return (rubber.rubber().isDecider() ? "decider " : "") + TieViews.score(rubber.games());
    }
}
