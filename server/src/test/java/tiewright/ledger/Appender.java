package tiewright.ledger;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import tiewright.TestClassPath;

/**
 * A process of its own that takes one step of the afternoon after the other and says after each answer what was acknowledged, until
 * it is killed or its input ends; and the handle by which a test starts, reads, ends and kills it.
 */
final class Appender {
    private final Process process;
    private final BufferedReader answers;

    /**
     * What was answered to a step.
     *
     * @param first the first seq of its facts
     * @param hash of what the facts say
     */
    record Acknowledged(int number, long first, long last, int hash) {
        static Acknowledged of(int number, Answer.Done done) {
            return new Acknowledged(
                    number,
                    done.facts().get(0).seq(),
                    done.facts().get(done.facts().size() - 1).seq(),
                    done.facts().toString().hashCode());
        }

        /** Each line ends with a full stop: one without it was cut off and is no acknowledgement. */
        private static Acknowledged parse(String line) {
            String[] parts = line.substring(0, line.length() - 1).split(" ");
            return new Acknowledged(
                    Integer.parseInt(parts[0]),
                    Long.parseLong(parts[1]),
                    Long.parseLong(parts[2]),
                    Integer.parseInt(parts[3]));
        }

        private String line() {
            return number + " " + first + " " + last + " " + hash + ".";
        }
    }

    private Appender(Process process) {
        this.process = process;
        this.answers = process.inputReader();
    }

    static Appender start(Path folder) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return new Appender(new ProcessBuilder(
                        java,
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-Xshare:auto",
                        "-cp",
                        TestClassPath.text(),
                        Appender.class.getName(),
                        folder.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start());
    }

    /** Waits for the next acknowledgement. */
    Acknowledged next() throws IOException {
        String line = answers.readLine();
        if (line == null) {
            throw new IOException("the appending process ended by itself");
        }
        return Acknowledged.parse(line);
    }

    /** Asks it to close the folder in peace; {@link #kill} may still come before it has. */
    void beginToEnd() throws IOException {
        process.getOutputStream().close();
    }

    /** Kills the process at once, as {@code kill -9} does, and gives what it had acknowledged but was not yet read. */
    List<Acknowledged> kill() throws IOException, InterruptedException {
        // The handle's way of killing leaves what was said readable; the process's way closes it.
        process.toHandle().destroyForcibly();
        if (!process.waitFor(1, TimeUnit.MINUTES)) {
            throw new IOException("the process does not die");
        }
        List<Acknowledged> rest = new ArrayList<>();
        try (answers) {
            for (String line = answers.readLine(); line != null; line = answers.readLine()) {
                if (line.endsWith(".")) {
                    rest.add(Acknowledged.parse(line));
                }
            }
        }
        return rest;
    }

    /** A clock that stands where the step wants it. */
    static final class Moment extends Clock {
        private Instant now = Steps.at(0);

        void at(int number) {
            now = Steps.at(number);
        }

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }

    public static void main(String[] args) {
        AtomicBoolean ended = new AtomicBoolean();
        Thread watching = new Thread(() -> waitForEnd(ended), "watching");
        watching.setDaemon(true);
        watching.start();
        Moment clock = new Moment();
        try (Ledger ledger = Ledger.open(Path.of(args[0]), clock)) {
            for (int number = Steps.in(ledger).size(); !ended.get(); number++) {
                clock.at(number);
                Answer answer = ledger.decide(Steps.request(number), Steps.step(number));
                System.out.println(Acknowledged.of(number, (Answer.Done) answer).line());
            }
        }
    }

    /** The input ends when it is asked to end, and when whoever started it is gone. */
    private static void waitForEnd(AtomicBoolean ended) {
        try {
            while (System.in.read() >= 0) {
                Thread.onSpinWait();
            }
        } catch (IOException gone) {
            ended.set(true);
        }
        ended.set(true);
    }
}
