package tiewright.ledger;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import tiewright.TestClassPath;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Fact;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote.PersonNamed;
import tiewright.event.SetUpFact.ClubEntered;

/**
 * A process of its own that appends three facts and a name at a time and prints the last seq of each answer, until it is
 * killed; and the handle by which a test starts, reads and kills it.
 */
final class Appender {
    static final int FACTS = 3;

    private final Process process;
    private final BufferedReader answers;

    private Appender(Process process) {
        this.process = process;
        this.answers = process.inputReader();
    }

    static Appender start(Path folder, String keys) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return new Appender(new ProcessBuilder(
                        java,
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        TestClassPath.text(),
                        Appender.class.getName(),
                        folder.toString(),
                        keys)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start());
    }

    /** Waits for the next acknowledged seq. */
    long acknowledged() throws IOException {
        String line = answers.readLine();
        if (line == null) {
            throw new IOException("the appending process ended by itself");
        }
        return seq(line);
    }

    /** Kills the process at once, as {@code kill -9} does, and gives what it had acknowledged but was not yet read. */
    List<Long> kill() throws IOException, InterruptedException {
        // The handle's way of killing leaves what was said readable; the process's way closes it.
        process.toHandle().destroyForcibly();
        if (!process.waitFor(1, TimeUnit.MINUTES)) {
            throw new IOException("the process does not die");
        }
        List<Long> rest = new ArrayList<>();
        try (answers) {
            for (String line = answers.readLine(); line != null; line = answers.readLine()) {
                // Each line ends with a full stop: one without it was cut off and is no acknowledgement.
                if (line.endsWith(".")) {
                    rest.add(seq(line));
                }
            }
        }
        return rest;
    }

    private static long seq(String line) {
        return Long.parseLong(line.substring(0, line.length() - 1));
    }

    public static void main(String[] args) {
        try (Ledger ledger = Ledger.open(Path.of(args[0]), Clock.systemUTC())) {
            for (int i = 0; ; i++) {
                Answer.Done done = (Answer.Done) ledger.decide(
                        Asked.request(args[1] + "-" + i), step(ledger.event().seq()));
                System.out.println(done.facts().get(FACTS - 1).seq() + ".");
            }
        }
    }

    private static Decision step(long before) {
        List<Fact> facts = new ArrayList<>();
        for (long seq = before + 1; seq <= before + FACTS; seq++) {
            facts.add(new ClubEntered(ClubId.of("c" + seq), "Club", Optional.empty(), OptionalInt.empty()));
        }
        return (event, given) -> new Decision.Accepted(
                facts, List.of(new PersonNamed(PlayerId.of("p" + (before + FACTS)), "Name", OptionalInt.empty())));
    }
}
