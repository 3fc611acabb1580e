package tiewright.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Entry of the jar. */
@Command(
    name = "tiewright",
    mixinStandardHelpOptions = true,
    version = "tiewright 1.0",
    description = "Calculations for a doubles club team event, on a folder of plain files.",
    subcommands = {
      ServeCommand.class,
      BackupCommand.class,
      RestoreCommand.class,
      CheckCommand.class,
      ImportCommand.class,
      ExportCommand.class,
      StandingsCommand.class,
      NeedsCommand.class,
      SheetsCountCommand.class,
      ReceiptCommand.class,
      RubberChanceCommand.class,
      GameCommand.class,
      OrderGameCommand.class,
      LineupCommand.class,
      DeciderCommand.class
    })
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    System.exit(run(out, err, args));
  }

  /** Runs one command. Returns the exit status; results go to {@code out}, everything else to {@code err}. */
  static int run(PrintWriter out, PrintWriter err, String... args) {
    CommandLine line = new CommandLine(new Main()).setOut(out).setErr(err);
    line.setExecutionExceptionHandler((failure, command, parsed) -> {
      if (failure instanceof BadInput bad) {
        bad.lines().forEach(err::println);
        return CommandLine.ExitCode.USAGE;
      }
      throw failure;
    });
    if (args.length == 0) {
      line.usage(err);
      return CommandLine.ExitCode.USAGE;
    }
    return line.execute(args);
  }
}
