package tiewright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tiewright.film.CardCheck;
import tiewright.film.Counted;
import tiewright.film.FilmGame;
import tiewright.film.GameCounts;
import tiewright.plainfiles.EventFolder;
import tiewright.plainfiles.PlainFile;
import tiewright.wording.FilmWords;
import tiewright.wording.Words;

@Command(
        name = "film",
        description = "What the rallies of filmed games give: score and counts, with doubt.",
        mixinStandardHelpOptions = true)
final class FilmCommand implements Callable<Integer> {
    private static final int CONFLICT = 3;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FOLDER")
    private Path folder = Path.of("");

    @Option(names = "--csv", description = "Print game,subject,measure,value,out_of,low,high.")
    private boolean csv;

    @Override
    public Integer call() {
        EventFolder read = Folders.sound(folder, PlainFile.GAMES, PlainFile.RALLIES);
        List<CardCheck> checks = read.films().stream()
                .map(game -> CardCheck.within(read.event(), game))
                .toList();
        Printed printed = new Printed("game", "subject", "measure", "value", "out_of", "low", "high");
        checks.forEach(check -> GameCounts.of(check).forEach(count -> row(printed, check.game(), count)));
        printed.to(spec.commandLine().getOut(), csv);
        PrintWriter err = spec.commandLine().getErr();
        FilmWords words = new FilmWords(Words.ofCodes(ZoneOffset.UTC));
        checks.forEach(check -> words.conflicts(check).forEach(err::println));
        if (!csv) {
            err.println(
                    "Small samples: they describe past film and do not judge a person. low and high hold 95 % of what the share could be.");
        }
        return checks.stream().anyMatch(CardCheck::isInConflict) ? CONFLICT : 0;
    }

    private void row(Printed printed, FilmGame game, Counted count) {
        printed.row(
                game.code(),
                count.subject(),
                count.measure().code(),
                count.value(),
                count.outOf().isPresent() ? count.outOf().getAsInt() : "",
                cell(count.low()),
                cell(count.high()));
    }

    /** All digits for a program, three for people. */
    private Object cell(OptionalDouble value) {
        return value.isEmpty()
                ? ""
                : csv ? (Object) value.getAsDouble() : String.format(Locale.ROOT, "%.3f", value.getAsDouble());
    }
}
