package tiewright.cli;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tiewright.correction.Impact;
import tiewright.desk.Correction;
import tiewright.event.Actor;
import tiewright.event.Codes;
import tiewright.event.CorrectionChoice;
import tiewright.event.Decision;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.How;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.TieId;
import tiewright.plainfiles.PlainFile;
import tiewright.scoring.Score;
import tiewright.wording.Words;

@Command(
        name = "correct",
        description =
                "Everything that a corrected score would change, if play began again from there. Changes nothing.",
        mixinStandardHelpOptions = true)
final class CorrectCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FOLDER")
    private Path folder = Path.of("");

    @Option(names = "--tie", required = true, paramLabel = "T")
    private String tie = "";

    @Option(names = "--rubber", required = true, paramLabel = "R", description = "1, 2, ... or D for the decider.")
    private String rubber = "";

    @Option(
            names = "--home",
            required = true,
            paramLabel = "N",
            description = "Points of the home side; once for each game.")
    private List<Integer> home = List.of();

    @Option(
            names = "--away",
            required = true,
            paramLabel = "N",
            description = "Points of the away side; once for each game.")
    private List<Integer> away = List.of();

    @Option(
            names = "--how",
            paramLabel = "H",
            description = "How it ended, as in results.csv (default: ${DEFAULT-VALUE}).")
    private String how = "played";

    @Option(names = "--csv", description = "Print kind,subject,before,after,state.")
    private boolean csv;

    @Override
    public Integer call() {
        Event event = Folders.sound(folder, PlainFile.TIES).event();
        Correction correction = correction();
        List<Refusal> faults = correction.faults(event);
        if (!faults.isEmpty()) {
            Words words = Words.ofCodes(ZoneOffset.UTC);
            throw new BadInput(faults.stream().map(words::sentence).distinct().toList());
        }
        Decision.Given given =
                new Decision.Given(Instant.EPOCH, Actor.of(Role.ORGANISER, "correct"), Directory.EMPTY, Map.of());
        Printed printed = new Printed("kind", "subject", "before", "after", "state");
        for (Impact.Node node :
                correction.impact(event, given, CorrectionChoice.REPLAY).nodes()) {
            printed.row(
                    node.kind().code(),
                    node.subjectText(),
                    node.before().map(Object::toString).orElse(""),
                    node.after().map(Object::toString).orElse(""),
                    node.state().code());
        }
        printed.to(spec.commandLine().getOut(), csv);
        return 0;
    }

    private Correction correction() {
        if (!Codes.isCode(tie)) {
            throw new BadInput("\"" + tie + "\" is not a tie's code.");
        }
        RubberNo number = RubberNo.parse(rubber)
                .orElseThrow(() ->
                        new BadInput("\"" + rubber + "\" is not a rubber: give its number, or D for the decider."));
        How ended = How.parse(how)
                .orElseThrow(() -> new BadInput("\"" + how + "\" does not say how a rubber ended: see results.csv."));
        return new Correction(TieId.of(tie), number, games(ended), ended);
    }

    private List<Score> games(How ended) {
        if (home.size() != away.size()) {
            throw new BadInput("Give --home and --away once for each game: there are " + home.size() + " and "
                    + away.size() + ".");
        }
        List<Score> games = new ArrayList<>();
        for (int game = 0; game < home.size(); game++) {
            if (home.get(game) < 0 || away.get(game) < 0) {
                throw new BadInput("Points cannot be below 0.");
            }
            games.add(Score.of(home.get(game), away.get(game)));
        }
        return ended.isWalkover() || ended == How.VOID ? List.of() : games;
    }
}
