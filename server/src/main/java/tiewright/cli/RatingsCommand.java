package tiewright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tiewright.event.Event;
import tiewright.event.PlayerId;
import tiewright.plainfiles.EventFolder;
import tiewright.rating.Ageing;
import tiewright.rating.Evidence;
import tiewright.rating.Prior;
import tiewright.rating.Ratings;
import tiewright.rating.Verdict;
import tiewright.scoring.Format;
import tiewright.wording.RatingWords;

@Command(
        name = "ratings",
        description = "Form of players and chemistry of pairs, with their doubt.",
        mixinStandardHelpOptions = true)
final class RatingsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FOLDER")
    private Path folder = Path.of("");

    @Option(
            names = "--half-life",
            paramLabel = "DAYS",
            description =
                    "A game that is so many days old at the day of the event counts half; unless given forms may move with time instead.")
    private String halfLife = "";

    @Mixin
    private Assumed assumed = new Assumed();

    @Option(names = "--csv", description = "Print kind,player_1,player_2,estimate,sd,low,high,rallies,verdict.")
    private boolean csv;

    @Override
    public Integer call() {
        EventFolder read = Folders.sound(folder);
        Event event = read.event();
        Evidence evidence = Evidence.of(event, read.earlier().under(assumed.stated()), Evidence.ageing(event, days()));
        Ratings ratings = Ratings.of(Prior.of(read.notes()), evidence, squads(event, evidence));
        print(ratings, event.conditions().scoring());
        Assumed.say(
                spec.commandLine().getErr(),
                ratings.strengths().assumptions(),
                event.conditions().scoring().kind());
        if (!csv) {
            say(ratings, event.conditions().scoring());
        }
        return 0;
    }

    private OptionalInt days() {
        if (halfLife.isEmpty()) {
            return OptionalInt.empty();
        }
        if (halfLife.matches("[0-9]{1,6}") && Ageing.isHalfLife(Integer.parseInt(halfLife))) {
            return OptionalInt.of(Integer.parseInt(halfLife));
        }
        throw new BadInput(
                "--half-life is a number of days from 1 to " + Ageing.MOST_DAYS + ", not \"" + halfLife + "\".");
    }

    /** Clubs in the order of the file, then everybody else who has played. */
    private static List<List<PlayerId>> squads(Event event, Evidence evidence) {
        Map<Object, List<PlayerId>> squads = new LinkedHashMap<>();
        event.players()
                .values()
                .forEach(player -> squads.computeIfAbsent(player.club(), club -> new ArrayList<>())
                        .add(player.id()));
        Set<PlayerId> others = new TreeSet<>();
        Stream.concat(
                        evidence.games().stream().flatMap(game -> Stream.of(game.home(), game.away())),
                        evidence.films().stream().flatMap(film -> Stream.of(film.one(), film.two())))
                .flatMap(pair -> pair.players().stream())
                .filter(player -> event.player(player).isEmpty())
                .forEach(others::add);
        List<List<PlayerId>> all = new ArrayList<>(squads.values());
        all.add(List.copyOf(others));
        return all;
    }

    private void print(Ratings ratings, Format format) {
        Printed printed =
                new Printed("kind", "player_1", "player_2", "estimate", "sd", "low", "high", "rallies", "verdict");
        RatingWords words = RatingWords.ofCodes(format);
        for (Ratings.Line line : ratings.lines()) {
            printed.row(
                    line.kind().code(),
                    line.players().get(0),
                    line.players().size() > 1 ? line.players().get(1) : "",
                    figure(line.estimate().mean()),
                    csv
                            ? line.estimate().sd()
                            : RatingWords.figure(line.estimate().sd()).substring(1),
                    figure(line.estimate().low()),
                    figure(line.estimate().high()),
                    line.seen().rallies(),
                    csv ? line.verdict().code() : words.brief(line.verdict()));
        }
        printed.to(spec.commandLine().getOut(), csv);
    }

    private Object figure(double value) {
        return csv ? value : RatingWords.figure(value);
    }

    /** What stands behind the numbers; on standard error, for the rows alone are the result. */
    private void say(Ratings ratings, Format format) {
        PrintWriter err = spec.commandLine().getErr();
        RatingWords words = RatingWords.ofCodes(format);
        ratings.lines().stream()
                .filter(line -> line.verdict() != Verdict.NOT_ENOUGH_FILM)
                .forEach(line -> err.println(String.join(" ", words.sentences(ratings, line))));
        words.tooLittle(ratings).ifPresent(err::println);
        words.notes(ratings).forEach(err::println);
    }
}
