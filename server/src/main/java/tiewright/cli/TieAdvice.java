package tiewright.cli;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tiewright.conditions.OrderOfStrength;
import tiewright.event.ClubId;
import tiewright.event.Codes;
import tiewright.event.Event;
import tiewright.event.PrivateNote;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.lineup.LineupInputs;
import tiewright.lineup.LineupProblem;
import tiewright.plainfiles.EventFolder;
import tiewright.plainfiles.FolderFault;
import tiewright.plainfiles.PlainFile;

/** What the commands for a captain are asked about: a folder, a tie in it, and a club of that tie. */
final class TieAdvice {
  @Parameters(paramLabel = "FOLDER")
  private Path folder = Path.of("");

  @Option(names = "--tie", required = true, paramLabel = "T")
  private String tie = "";

  @Option(names = "--club", required = true, paramLabel = "C")
  private String club = "";

  LineupInputs inputs(LineupProblem.Against against, long seed) {
    EventFolder read = Folders.sound(folder);
    List<FolderFault> missing = read.missing(PlainFile.PLAYERS, PlainFile.TIES);
    if (!missing.isEmpty()) {
      throw new BadInput(missing.stream().map(FolderFault::toString).toList());
    }
    Event event = read.event();
    Tie asked = tie(event, tie);
    ClubId id = club(asked, club);
    boolean ranked = event.squad(id).stream().allMatch(player -> player.rank().isPresent());
    if (event.conditions().orderOfStrength() != OrderOfStrength.NONE && !ranked) {
      throw new BadInput("The conditions ask for an order of strength: give every player of " + club + " a rank.");
    }
    return LineupInputs.of(event, asked.id(), id, read.notes(), read.notes(PrivateNote.PastGame.class), against, seed);
  }

  private static Tie tie(Event event, String code) {
    return event.ties().values().stream()
        .filter(tie -> tie.id().code().equals(code))
        .findFirst()
        .orElseThrow(() -> new BadInput("There is no tie " + code + " in ties.csv; the ties are "
            + String.join(", ", event.ties().keySet().stream().map(TieId::code).toList()) + "."));
  }

  private static ClubId club(Tie tie, String code) {
    if (!Codes.isCode(code) || !tie.has(ClubId.of(code))) {
      throw new BadInput("The club " + code + " does not play in tie " + tie.id() + ".");
    }
    return ClubId.of(code);
  }
}
