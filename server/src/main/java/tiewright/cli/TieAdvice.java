package tiewright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tiewright.conditions.OrderOfStrength;
import tiewright.event.ClubId;
import tiewright.event.Codes;
import tiewright.event.Event;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.lineup.Aim;
import tiewright.lineup.Freshness;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.club.ClubKnows;
import tiewright.lineup.club.LineupInputs;
import tiewright.lineup.club.WhoPlays;
import tiewright.plainfiles.EventFolder;
import tiewright.plainfiles.FolderFault;
import tiewright.plainfiles.PlainFile;
import tiewright.rating.Stated;
import tiewright.standings.ThroughChances;

/** What the commands for a captain are asked about: a folder, a tie in it, and a club of that tie. */
final class TieAdvice {
    @Parameters(paramLabel = "FOLDER")
    private Path folder = Path.of("");

    @Option(names = "--tie", required = true, paramLabel = "T")
    private String tie = "";

    @Option(names = "--club", required = true, paramLabel = "C")
    private String club = "";

    @Option(
            names = "--tired",
            paramLabel = "N",
            description =
                    "Rallies in 100 that a player loses straight off court; ${DEFAULT-VALUE} unless given, 0 = tiredness does not count.")
    private double tired = Freshness.Cost.USUAL.noRest();

    @Mixin
    private Assumed assumed = new Assumed();

    @Option(
            names = "--best-guess",
            description =
                    "Every chance as if all strengths were at their best guess, under the plainest assumptions; else the mean over what they could be.")
    private boolean bestGuess;

    /** The aim named on the command line, with what each end of the tie would be worth. */
    Aim aim(String named, long seed) {
        Aim.Kind kind = Aim.Kind.parse(named)
                .orElseThrow(() -> new BadInput("--aim is win, rubbers or qualify, not \"" + named + "\"."));
        return switch (kind) {
            case WIN -> Aim.WIN;
            case RUBBERS -> Aim.RUBBERS;
            case QUALIFY -> qualify(seed);
        };
    }

    private Aim qualify(long seed) {
        Event event = Folders.sound(folder).event();
        Map<Aim.Ended, Double> worths = new HashMap<>();
        ThroughChances.of(event, TieId.of(tie), ClubId.of(club), ThroughChances.USUAL_PLAYS, seed)
                .forEach((end, chance) -> worths.put(new Aim.Ended(end.own(), end.other(), end.lead()), chance));
        boolean knockout =
                event.tie(TieId.of(tie)).filter(one -> one.pool().isEmpty()).isPresent();
        if (worths.isEmpty() && !knockout) {
            throw new BadInput("Tie " + tie + " has been played: nothing in it can still decide who goes through.");
        }
        return worths.isEmpty() ? Aim.WIN : Aim.qualify(worths);
    }

    LineupInputs inputs(LineupProblem.Against against, long seed) {
        if (!(tired >= 0 && tired <= 50)) {
            throw new BadInput("--tired is a number of rallies in 100, 0 to 50.");
        }
        EventFolder read = Folders.sound(folder);
        List<FolderFault> missing = read.missing(PlainFile.PLAYERS, PlainFile.TIES);
        if (!missing.isEmpty()) {
            throw new BadInput(missing.stream().map(FolderFault::toString).toList());
        }
        Event event = read.event();
        Tie asked = tie(event, tie);
        ClubId id = club(asked, club);
        boolean ranked =
                event.squad(id).stream().allMatch(player -> player.rank().isPresent());
        if (event.conditions().orderOfStrength() != OrderOfStrength.NONE && !ranked) {
            throw new BadInput(
                    "The conditions ask for an order of strength: give every player of " + club + " a rank.");
        }
        ClubKnows knows = ClubKnows.of(id, read.notes(), read.earlier().under(stated()))
                .stating(WhoPlays.everybody(read.directory().stated()));
        return LineupInputs.of(event, asked.id(), knows, against, seed)
                .asking(problem ->
                        problem.after(new Freshness(problem.freshness().loads(), cost())))
                .asking(problem -> bestGuess ? problem.atBestGuess() : problem);
    }

    private Stated stated() {
        return bestGuess ? Stated.plain() : assumed.stated();
    }

    /** What the answer rests on beside games and judgements. */
    static void say(PrintWriter err, LineupInputs inputs) {
        Assumed.say(
                err,
                inputs.problem().strengths().assumptions(),
                inputs.problem().rules().scoring().kind());
    }

    private Freshness.Cost cost() {
        Freshness.Cost usual = Freshness.Cost.USUAL;
        return tired == 0
                ? Freshness.Cost.NONE
                : new Freshness.Cost(tired, usual.restMinutes(), usual.perRubber(), usual.freeRubbers());
    }

    private static Tie tie(Event event, String code) {
        return event.ties().values().stream()
                .filter(tie -> tie.id().code().equals(code))
                .findFirst()
                .orElseThrow(() -> new BadInput("There is no tie " + code + " in ties.csv; the ties are "
                        + String.join(
                                ", ",
                                event.ties().keySet().stream().map(TieId::code).toList()) + "."));
    }

    private static ClubId club(Tie tie, String code) {
        if (!Codes.isCode(code) || !tie.has(ClubId.of(code))) {
            throw new BadInput("The club " + code + " does not play in tie " + tie.id() + ".");
        }
        return ClubId.of(code);
    }
}
