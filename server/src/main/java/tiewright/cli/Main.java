package tiewright.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Entry of the jar. */
@Command(
    name = "tiewright",
    mixinStandardHelpOptions = true,
    version = "tiewright 1.0",
    description = "Runs a doubles club team event; its calculations also work on a folder of plain files.",
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
    return line.execute(named(args));
  }

  /** {@code serve} is meant where no command is named. */
  private static String[] named(String... args) {
    boolean asksForHelp = args.length > 0 && List.of("-h", "--help", "-V", "--version").contains(args[0]);
    if (asksForHelp || args.length > 0 && !args[0].startsWith("-")) {
      return args;
    }
    return Stream.concat(Stream.of("serve"), Stream.of(args)).toArray(String[]::new);
  }
}
