package tiewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Runs a command as the jar does, on files written for the test. */
public final class Commands {
    private Commands() {}

    /** What a command left behind. */
    public record Ran(int status, String out, String err) {
        /** Standard output as CSV, the header first. */
        List<List<String>> csv() {
            try (StringReader in = new StringReader(out)) {
                return CSVFormat.RFC4180.parse(in).stream()
                        .map(CSVRecord::toList)
                        .toList();
            } catch (IOException impossible) {
                throw new UncheckedIOException(impossible);
            }
        }

        public List<List<String>> rows() {
            return csv().subList(1, csv().size());
        }

        List<String> errLines() {
            return err.lines().toList();
        }
    }

    public static Ran run(Object... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] words = java.util.Arrays.stream(args).map(String::valueOf).toArray(String[]::new);
        int status = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), words);
        return new Ran(status, out.toString(), err.toString());
    }

    static Path write(Path folder, String name, String... lines) {
        try {
            return Files.writeString(folder.resolve(name), String.join("\n", lines) + "\n", StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** event.csv and conditions.csv: Club day with these settings changed, each as {@code name,value}. */
    static Path event(Path folder, String... settings) {
        write(
                folder,
                "event.csv",
                "key,value",
                "name,Autumn Pairs",
                "date,2026-10-03",
                "venue,Pier Hall",
                "time_zone,Europe/Lisbon",
                "starts,09:30");
        String[] lines = new String[settings.length + 2];
        lines[0] = "setting,value";
        lines[1] = "preset,Club day";
        System.arraycopy(settings, 0, lines, 2, settings.length);
        write(folder, "conditions.csv", lines);
        return folder;
    }
}
