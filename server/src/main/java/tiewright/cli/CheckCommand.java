package tiewright.cli;

import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tiewright.plainfiles.FolderFault;
import tiewright.wording.Words;

@Command(
        name = "check",
        description = "Validates the whole folder; every fault at once.",
        mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FOLDER")
    private Path folder = Path.of("");

    @Option(names = "--csv", description = "Print file,line,column,reason.")
    private boolean csv;

    @Override
    public Integer call() {
        List<FolderFault> faults = Folders.any(folder).faults();
        if (csv) {
            Words english = Words.ofCodes(ZoneOffset.UTC);
            Printed printed = new Printed("file", "line", "column", "reason");
            faults.forEach(fault -> printed.row(fault.file(), fault.line(), fault.column(), fault.why(english)));
            printed.to(spec.commandLine().getOut(), true);
        } else if (faults.isEmpty()) {
            spec.commandLine().getOut().println("No fault found.");
        } else {
            faults.forEach(fault -> spec.commandLine().getErr().println(fault));
        }
        return faults.isEmpty() ? 0 : 2;
    }
}
