package tiewright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tiewright.event.PrivateNote;
import tiewright.lineup.club.OwnRecord;
import tiewright.plainfiles.EventFolder;
import tiewright.plainfiles.PlainFile;
import tiewright.rating.Backtest;

@Command(
        name = "backtest",
        description = "Would these numbers have been right? Earlier games forecast from those before them.",
        mixinStandardHelpOptions = true)
final class BacktestCommand implements Callable<Integer> {
    private static final int IMPOSSIBLE = 4;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FOLDER")
    private Path folder = Path.of("");

    @Option(
            names = "--from",
            paramLabel = "DATE",
            description = "The first day that is forecast; unless given, that of the first game after a third of them.")
    private String from = "";

    @Option(
            names = "--every",
            paramLabel = "DAYS",
            description = "Days after which forecasts are made again; ${DEFAULT-VALUE} unless given.")
    private int every = 30;

    @Mixin
    private Assumed assumed = new Assumed();

    @Option(
            names = "--csv",
            description =
                    "Print date,home_1,home_2,away_1,away_2,format,chance,won,match,match_chance,match_won; chance is that of home.")
    private boolean csv;

    @Override
    public Integer call() {
        if (every < 1) {
            throw new BadInput("--every is a number of days, 1 or more.");
        }
        EventFolder read = Folders.sound(folder);
        if (read.earlier().results().isEmpty()
                && !read.missing(PlainFile.PAST_RESULTS).isEmpty()) {
            throw new BadInput(read.missing(PlainFile.PAST_RESULTS).get(0).toString());
        }
        Optional<Backtest> tried =
                Backtest.of(read.earlier().results(), new Backtest.Stretches(day(), every), assumed.stated());
        PrintWriter err = spec.commandLine().getErr();
        if (tried.isEmpty()) {
            err.println(
                    "There is nothing to try: games are needed before the first day that is forecast, and on it or after.");
            return IMPOSSIBLE;
        }
        print(tried.get().lines());
        say(err, tried.get());
        return 0;
    }

    private Optional<LocalDate> day() {
        try {
            return from.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(from));
        } catch (DateTimeParseException wrong) {
            throw new BadInput("--from is a date such as 2026-05-31, not \"" + from + "\".");
        }
    }

    private void print(List<Backtest.Line> lines) {
        Printed printed = new Printed(
                "date",
                "home_1",
                "home_2",
                "away_1",
                "away_2",
                "format",
                "chance",
                "won",
                "match",
                "match_chance",
                "match_won");
        lines.forEach(line -> printed.row(cells(line)));
        printed.to(spec.commandLine().getOut(), csv);
    }

    private static Object[] cells(Backtest.Line line) {
        PrivateNote.PastGame game = line.game();
        Optional<Backtest.Whole> match = line.match();
        return new Object[] {
            game.date(),
            game.home1(),
            game.home2(),
            game.away1(),
            game.away2(),
            game.format().code(),
            line.chance(),
            line.won() ? 1 : 0,
            match.isEmpty() ? "" : game.rubber().orElseThrow().match(),
            match.<Object>map(Backtest.Whole::chance).orElse(""),
            match.<Object>map(whole -> whole.won() ? 1 : 0).orElse("")
        };
    }

    /** How good they were, beside a coin and beside who had won more. */
    private static void say(PrintWriter err, Backtest tried) {
        Assumed.say(err, tried.last(), tried.lines().get(0).game().format().kind());
        List<OwnRecord.Scored> games = new ArrayList<>();
        List<OwnRecord.Scored> matches = new ArrayList<>();
        for (Backtest.Line line : tried.lines()) {
            games.add(new OwnRecord.Scored(line.chance(), line.won(), line.byWins()));
            line.match()
                    .ifPresent(whole -> matches.add(new OwnRecord.Scored(whole.chance(), whole.won(), line.byWins())));
        }
        say(err, "games", OwnRecord.of(games));
        if (!matches.isEmpty()) {
            say(err, "rubbers of several games", OwnRecord.of(matches));
        }
    }

    private static void say(PrintWriter err, String what, OwnRecord record) {
        err.println(String.format(
                Locale.ROOT,
                "%d %s: log score %.3f (a coin: 0.693), Brier score %.3f (a coin: 0.250).",
                record.scored(),
                what,
                record.logLoss(),
                record.brier()));
        record.bands().forEach(band -> err.println(said(band)));
        err.println(String.format(
                Locale.ROOT,
                "Of %d with somebody ahead by games won before, that side won %d; the side that these numbers put ahead %d.",
                record.called(),
                record.rightByRating(),
                record.rightByForecast()));
        if (record.scored() < OwnRecord.ENOUGH) {
            err.println("That is too few to say anything.");
        }
    }

    private static String said(OwnRecord.Band band) {
        return String.format(
                Locale.ROOT,
                "Said %.0f to %.0f %%: %d, on average %.1f %%, won %.1f %% (%.1f to %.1f).",
                100 * band.from(),
                100 * band.to(),
                band.forecasts(),
                100 * band.meanChance(),
                100.0 * band.won() / band.forecasts(),
                100 * band.low(),
                100 * band.high());
    }
}
