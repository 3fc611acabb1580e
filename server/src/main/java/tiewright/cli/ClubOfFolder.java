package tiewright.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What every command asks that answers a club from a folder. */
final class ClubOfFolder {
    @Parameters(paramLabel = "FOLDER")
    Path folder = Path.of("");

    @Option(names = "--club", required = true, paramLabel = "C")
    String club = "";
}
