package tiewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Pair;
import tiewright.event.Sheet;
import tiewright.event.TieId;

class ReceiptTest {
    private static final TieId TIE = TieId.of("A1");

    private static String sha256(String text) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** NIST, Examples with Intermediate Values for FIPS 180-4, SHA-256: the one-block message "abc". */
    @Test
    void the_digest_of_abc_is_that_of_fips_180_4() {
        assertThat(sha256("abc")).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void is_the_digest_of_secret_tie_club_and_each_rubber_on_a_line() {
        Sheet sheet = Asked.sheet("N", "21 34 56 -");
        assertThat(Receipt.of(Asked.SECRET, TIE, Asked.N, sheet))
                .isEqualTo(sha256(Asked.SECRET + "\nA1\nN\n1,N1,N2\n2,N3,N4\n3,N5,N6\n4,,\n"));
        assertThat(Receipt.of(Asked.SECRET, TIE, Asked.N, Sheet.decider(Pair.of("N8", "N2"))))
                .isEqualTo(sha256(Asked.SECRET + "\nA1\nN\nD,N2,N8\n"));
    }

    @Test
    void everything_in_it_counts() {
        Sheet sheet = Asked.straight("N");
        assertThat(Set.of(
                        Receipt.of(Asked.SECRET, TIE, Asked.N, sheet),
                        Receipt.of(Asked.OTHER_SECRET, TIE, Asked.N, sheet),
                        Receipt.of(Asked.SECRET, TieId.of("A2"), Asked.N, sheet),
                        Receipt.of(Asked.SECRET, TIE, Asked.S, sheet),
                        Receipt.of(Asked.SECRET, TIE, Asked.N, Asked.sheet("N", "34 12 56 78"))))
                .hasSize(5);
    }

    @Test
    void refuses_to_be_made_without_a_secret() {
        for (String secret :
                List.of("", "0".repeat(63), "0".repeat(65), "G".repeat(64), "A".repeat(64), "0".repeat(64) + "\n")) {
            assertThatThrownBy(() -> Receipt.of(secret, TIE, Asked.N, Asked.straight("N")))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    /** 8!/2^4 = 2,520 ways to name four ordered pairs of eight: few enough to try them all, and it does not help. */
    @Test
    void all_2520_guesses_without_the_secret_find_nothing() {
        List<Sheet> guesses = Sheets.disjoint("N", 8, 4);
        Sheet sealed = guesses.get(1234);
        String receipt = Receipt.of("7d".repeat(32), TIE, Asked.N, sealed);
        assertThat(found(guesses, receipt, sheet -> sheet)).as("bare").isZero();
        for (String rest : List.of("A1\nN\n", "\nA1\nN\n")) {
            assertThat(found(guesses, receipt, sheet -> rest + sheet))
                    .as("without the secret")
                    .isZero();
        }
        for (String secret : List.of("0".repeat(64), Asked.SECRET, Asked.OTHER_SECRET, "7d".repeat(31) + "7c")) {
            assertThat(found(guesses, receipt, sheet -> secret + "\nA1\nN\n" + sheet))
                    .as("wrong secret")
                    .isZero();
        }
        assertThat(found(guesses, receipt, sheet -> "7d".repeat(32) + "\nA1\nN\n" + sheet))
                .as("the right one")
                .isEqualTo(1);
        assertThat(new TreeSet<>(guesses.stream().map(Sheet::canonical).toList()))
                .hasSize(2520);
    }

    private static long found(List<Sheet> guesses, String receipt, UnaryOperator<String> text) {
        return guesses.stream()
                .filter(sheet -> sha256(text.apply(sheet.canonical())).equals(receipt))
                .count();
    }

    private static final Path PAGE = Path.of("..", "docs", "receipts.md");

    private static String block(String language) throws IOException {
        Matcher block = Pattern.compile("```" + language + "\n(.*?)\n```", Pattern.DOTALL)
                .matcher(Files.readString(PAGE));
        assertThat(block.find()).as(language).isTrue();
        return block.group(1);
    }

    /** The documented text is what Tiewright takes the digest of. */
    @Test
    void the_documented_lines_give_the_documented_receipt() throws IOException {
        List<String> lines = Pattern.compile("'([^']*)'")
                .matcher(block("sh"))
                .results()
                .skip(1)
                .map(m -> m.group(1))
                .toList();
        assertThat(sha256(String.join("\n", lines) + "\n")).isEqualTo(block("text"));
        Sheet sheet = Sheet.of(lines.stream()
                .skip(3)
                .map(line -> line.split(",", -1))
                .map(cells -> cells[1].isEmpty()
                        ? java.util.Optional.<Pair>empty()
                        : java.util.Optional.of(Pair.of(cells[1], cells[2])))
                .toList());
        assertThat(Receipt.of(lines.get(0), TieId.of(lines.get(1)), ClubId.of(lines.get(2)), sheet))
                .isEqualTo(block("text"));
    }

    /** The documented command, run as it is written, where the machine has the tool. */
    @Test
    void the_documented_command_gives_the_documented_receipt() throws IOException, InterruptedException {
        assumeTrue(hasSha256sum(), "this machine has no sha256sum in /usr/bin or /bin");
        Process shell = new ProcessBuilder("sh", "-c", block("sh"))
                .redirectErrorStream(true)
                .start();
        shell.getOutputStream().close();
        String said = new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(shell.waitFor(20, TimeUnit.SECONDS)).isTrue();
        assertThat(said).startsWith(block("text") + " ");
    }

    private static boolean hasSha256sum() {
        return List.of("/usr/bin/sha256sum", "/bin/sha256sum").stream()
                .anyMatch(tool -> Files.isExecutable(Path.of(tool)));
    }
}
