package tiewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import tiewright.plainfiles.FolderFault;

/** Entry of the jar. */
@Command(
        name = "tiewright",
        mixinStandardHelpOptions = true,
        version = "tiewright 1.0",
        description = "Runs a doubles club team event; its calculations also work on a folder of plain files.")
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(run(out, err, args));
    }

    /** Runs one command. Returns the exit status; results go to {@code out}, everything else to {@code err}. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        String[] named = named(args);
        CommandLine line = new CommandLine(new Main());
        NamedCommands.wanted(named[0]).forEach(name -> line.addSubcommand(name, NamedCommands.of(name)));
        line.setOut(out).setErr(err).setExecutionExceptionHandler((failure, command, parsed) -> {
            if (failure instanceof BadInput bad) {
                bad.lines().forEach(err::println);
                return CommandLine.ExitCode.USAGE;
            }
            return unforeseen(failure, err);
        });
        line.setParameterExceptionHandler((wrong, given) -> refused(wrong, err));
        return line.execute(named);
    }

    /** What was typed is no command, or not what the command takes. Nothing is guessed: a guess may be a command that deletes. */
    private static int refused(CommandLine.ParameterException wrong, PrintWriter err) {
        CommandLine command = wrong.getCommandLine();
        if (command.getParent() == null && wrong instanceof CommandLine.UnmatchedArgumentException unmatched) {
            err.println("There is no command \""
                    + FolderFault.shortened(unmatched.getUnmatched().get(0)) + "\". The commands are "
                    + String.join(", ", command.getSubcommands().keySet()) + "; --help says what each does.");
        } else {
            String said = Objects.requireNonNullElse(wrong.getMessage(), "")
                    .replaceAll(" is not an? (int|long)$", " is not a whole number")
                    .replaceAll(" is not a double$", " is not a number");
            err.println(FolderFault.shortened(said) + ". What the command takes: "
                    + command.getCommandSpec().qualifiedName() + " --help");
        }
        return CommandLine.ExitCode.USAGE;
    }

    /** A file that cannot be read or written is the asker's to mend; anything else is ours, and is told in one sentence. */
    private static int unforeseen(Exception failure, PrintWriter err) {
        Throwable cause =
                failure instanceof UncheckedIOException && failure.getCause() != null ? failure.getCause() : failure;
        if (cause instanceof IOException) {
            String what = cause instanceof AccessDeniedException
                    ? "no permission for " + cause.getMessage()
                    : String.valueOf(cause.getMessage());
            err.println("A file or folder cannot be used: " + what
                    + ". Check that it is there, can be written to and has room.");
            return CommandLine.ExitCode.USAGE;
        }
        StackTraceElement[] where = failure.getStackTrace();
        err.println("Something is wrong in this program, so the command was not finished: " + failure
                + (where.length == 0 ? "" : " (" + where[0] + ")") + ". Please report this line with the command.");
        return CommandLine.ExitCode.SOFTWARE;
    }

    /** {@code serve} is meant where no command is named. */
    private static String[] named(String... args) {
        boolean asksForHelp =
                args.length > 0 && List.of("-h", "--help", "-V", "--version").contains(args[0]);
        if (asksForHelp || args.length > 0 && !args[0].startsWith("-")) {
            return args;
        }
        return Stream.concat(Stream.of("serve"), Stream.of(args)).toArray(String[]::new);
    }
}
