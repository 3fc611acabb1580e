package tiewright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tiewright.conditions.Conditions;
import tiewright.conditions.ConditionsLines;
import tiewright.wording.ConditionsWords;

@Command(
        name = "rules",
        description = "The conditions of play, each setting with its value; with --csv a file that can be given back.",
        mixinStandardHelpOptions = true)
final class RulesCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FOLDER")
    private Path folder = Path.of("");

    @Option(names = "--csv", description = "Print heading,setting,value,default,words.")
    private boolean csv;

    @Override
    public Integer call() {
        Conditions conditions = Folders.sound(folder).event().conditions();
        ConditionsWords words = ConditionsWords.ofDocuments();
        Printed printed = new Printed("heading", "setting", "value", "default", "words");
        ConditionsLines.of(conditions)
                .forEach(line -> printed.row(
                        line.setting().heading().number(),
                        line.setting().code(),
                        line.value(),
                        line.preset(),
                        words.sentence(line.setting(), conditions.value(line.setting()))));
        printed.to(spec.commandLine().getOut(), csv);
        return 0;
    }
}
