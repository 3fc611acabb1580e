package tiewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A receipt is SHA-256 (FIPS 180-4) over a text that anybody can write down; here it is hashed by the JDK. */
class ReceiptCommandTest {
    private static final String SECRET = "00112233445566778899aabbccddeeff0123456789abcdef0123456789abcdef";

    @TempDir
    private Path folder;

    private Path sheet;

    @BeforeEach
    void write() {
        sheet = Commands.write(
                folder,
                "sheet.csv",
                "tie,club,rubber,player_1,player_2",
                "A-1-2,PIER,2,ines,marta",
                "A-1-2,PIER,1,rui,ana",
                "A-1-2,PIER,3,,",
                "A-1-2,PIER,4,,");
    }

    private static String sha256(String text) throws Exception {
        return HexFormat.of()
                .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
    }

    /** FIPS 180-4's example "abc" (from memory; RFC 6234 prints the same). */
    @Test
    void the_digest_used_to_check_is_the_published_one() throws Exception {
        assertThat(sha256("abc")).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void hashes_secret_tie_club_and_a_line_for_each_rubber() throws Exception {
        Commands.Ran ran = Commands.run("receipt", sheet, "--secret", SECRET, "--csv");
        assertThat(ran.status()).isZero();
        assertThat(ran.out())
                .isEqualTo("receipt\n" + sha256(SECRET + "\nA-1-2\nPIER\n1,ana,rui\n2,ines,marta\n3,,\n4,,\n") + "\n");
    }

    @Test
    void one_other_player_gives_another_receipt_and_another_order_of_rows_the_same() {
        String first =
                Commands.run("receipt", sheet, "--secret", SECRET, "--csv").out();
        Path turned = Commands.write(
                folder,
                "turned.csv",
                "club,player_2,player_1,rubber,tie",
                "PIER,,,4,A-1-2",
                "PIER,rui,ana,1,A-1-2",
                "PIER,,,3,A-1-2",
                "PIER,ines,marta,2,A-1-2");
        assertThat(Commands.run("receipt", turned, "--secret", SECRET, "--csv").out())
                .isEqualTo(first);
        Path other = Commands.write(
                folder,
                "other.csv",
                "tie,club,rubber,player_1,player_2",
                "A-1-2,PIER,1,rui,anna",
                "A-1-2,PIER,2,ines,marta",
                "A-1-2,PIER,3,,",
                "A-1-2,PIER,4,,");
        assertThat(Commands.run("receipt", other, "--secret", SECRET, "--csv").out())
                .isNotEqualTo(first);
    }

    /** By the numbers of the characters, as python's sorted() and LC_ALL=C sort: ﾌ (U+FF8C) before 𝄞 (U+1D11E), whose halves are smaller. */
    @Test
    void codes_are_sorted_by_the_unicode_numbers_of_their_characters_in_every_script() throws Exception {
        String[][] sorted = {
            {"Zoe", "anna"}, {"Z", "Žan"}, {"ž", "я"}, {"Ω", "я"}, {"я", "𝄞"}, {"ﾌ", "𝄞"}, {"𝄞a", "𝄞b"}, {"a", "ab"}
        };
        for (String[] pair : sorted) {
            for (String players : new String[] {pair[0] + "," + pair[1], pair[1] + "," + pair[0]}) {
                Path file =
                        Commands.write(folder, "one.csv", "tie,club,rubber,player_1,player_2", "A1,PIER,1," + players);
                assertThat(Commands.run("receipt", file, "--secret", SECRET, "--csv")
                                .out())
                        .isEqualTo("receipt\n" + sha256(SECRET + "\nA1\nPIER\n1," + pair[0] + "," + pair[1] + "\n")
                                + "\n");
            }
        }
    }

    @Test
    void refuses_a_secret_of_another_form_and_a_sheet_that_is_none() {
        for (String secret : new String[] {"", "abc", SECRET.toUpperCase(java.util.Locale.ROOT), SECRET + "0"}) {
            assertThat(Commands.run("receipt", sheet, "--secret", secret).status())
                    .as(secret)
                    .isEqualTo(2);
        }
        refused("tie,club,rubber,player_1,player_2", "A,PIER,1,ana,rui", "A,PIER,1,ines,marta");
        refused("tie,club,rubber,player_1,player_2", "A,PIER,1,ana,");
        refused("tie,club,rubber,player_1,player_2", "A,PIER,1,ana,ana");
        refused("tie,club,rubber,player_1,player_2", "A,PIER,1,ana,rui", "B,PIER,2,ines,marta");
        refused("tie,club,rubber,player_1,player_2", "A,PIER,first,ana,rui");
        refused("tie,club,rubber,player_1,player_2");
        refused("tie,rubber");
    }

    private void refused(String... lines) {
        Commands.Ran ran = Commands.run("receipt", Commands.write(folder, "bad.csv", lines), "--secret", SECRET);
        assertThat(ran.status()).as(String.join("|", lines)).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).startsWith("bad.csv:");
    }
}
