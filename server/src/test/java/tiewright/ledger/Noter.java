package tiewright.ledger;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import tiewright.TestClassPath;
import tiewright.event.ClubId;
import tiewright.event.PrivateNote;
import tiewright.event.PrivateNote.FilmKept;

/** A process of its own that keeps a set of three filmed games at a time and prints the number of each set, until it is killed. */
final class Noter {
    static final int SET = 3;
    static final ClubId CLUB = ClubId.of("N");

    private final Process process;
    private final BufferedReader answers;

    private Noter(Process process) {
        this.process = process;
        this.answers = process.inputReader();
    }

    static Noter start(Path folder, long from) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return new Noter(new ProcessBuilder(
                        java,
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        TestClassPath.text(),
                        Noter.class.getName(),
                        folder.toString(),
                        Long.toString(from))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start());
    }

    /** Waits until so many sets are acknowledged and kills the process at once; the last number that was acknowledged. */
    long killAfter(int sets) throws IOException, InterruptedException {
        long last = 0;
        for (int i = 0; i < sets; i++) {
            last = number(answers.readLine());
        }
        process.toHandle().destroyForcibly();
        if (!process.waitFor(1, TimeUnit.MINUTES)) {
            throw new IOException("the process does not die");
        }
        try (answers) {
            for (String line = answers.readLine(); line != null; line = answers.readLine()) {
                // A line without its full stop was cut off and is no acknowledgement.
                last = line.endsWith(".") ? number(line) : last;
            }
        }
        return last;
    }

    private static long number(String line) {
        return Long.parseLong(line.substring(0, line.length() - 1));
    }

    static PrivateRequest request(long number) {
        return Asked.forClub(CLUB, "set-" + number);
    }

    /** Each set says its number in every game, so that a half one shows. */
    static PrivateNote[] set(long number) {
        return IntStream.range(0, SET)
                .mapToObj(game -> new FilmKept(CLUB, "g" + game, "set " + number, "rallies of set " + number))
                .toArray(PrivateNote[]::new);
    }

    static List<String> kept(Ledger ledger) {
        return ledger.filmsOf(CLUB).stream().map(FilmKept::about).distinct().toList();
    }

    public static void main(String[] args) {
        try (Ledger ledger = Ledger.open(Path.of(args[0]), Clock.systemUTC())) {
            for (long number = Long.parseLong(args[1]); ; number++) {
                if (ledger.decide(request(number), Asked.kept(set(number))) instanceof PrivateAnswer.Done) {
                    System.out.println(number + ".");
                }
            }
        }
    }
}
