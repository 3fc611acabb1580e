package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tiewright.Seed;

/** What may be a code, and the order of codes: that of their bytes in UTF-8 (RFC 3629), asked of the JDK. */
class CodesTest {
    private static final int ROUNDS = 3_000;

    /** From one, two, three and four bytes; two of them begin with the same half of a pair of chars. */
    private static final String[] LETTERS = {"a", "b", "é", "ß", "李", "\uFFFD", "𠮷", "𠮸", "😀"};

    @ParameterizedTest
    @ValueSource(strings = {"A", "A1", "a b", "é", "李", "𠮷", "A-1", "0123456789012345678901234567890123456789"})
    void a_code_is_what_a_person_types_on_one_line(String code) {
        assertThat(Codes.isCode(code)).isTrue();
        assertThat(ClubId.of(code).code()).isEqualTo(code);
        assertThat(PlayerId.of(code).toString()).isEqualTo(code);
        assertThat(TieId.of(code).toString()).isEqualTo(code);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                " A",
                "A ",
                "A,B",
                ",",
                "A\tB",
                "A\nB",
                "\u007F",
                "01234567890123456789012345678901234567890"
            })
    void nothing_else_is_one(String code) {
        assertThat(Codes.isCode(code)).isFalse();
        assertThatThrownBy(() -> ClubId.of(code)).hasMessage("not a club code: \"" + code + "\"");
        assertThatThrownBy(() -> PlayerId.of(code)).hasMessage("not a player code: \"" + code + "\"");
        assertThatThrownBy(() -> TieId.of(code)).hasMessage("not a tie code: \"" + code + "\"");
    }

    @Test
    void codes_sort_as_their_bytes_do() {
        for (int round = 0; round < ROUNDS; round++) {
            Random random = Seed.random(round);
            String one = code(random);
            String other = code(random);
            int bytes = Integer.signum(Arrays.compareUnsigned(utf8(one), utf8(other)));
            String as = one + " and " + other + ", " + Seed.rerun(round);
            assertThat(Integer.signum(ClubId.of(one).compareTo(ClubId.of(other))))
                    .as(as)
                    .isEqualTo(bytes);
            assertThat(Integer.signum(PlayerId.of(one).compareTo(PlayerId.of(other))))
                    .as(as)
                    .isEqualTo(bytes);
            assertThat(Integer.signum(TieId.of(one).compareTo(TieId.of(other))))
                    .as(as)
                    .isEqualTo(bytes);
        }
    }

    private static String code(Random random) {
        StringBuilder code = new StringBuilder();
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            code.append(LETTERS[random.nextInt(LETTERS.length)]);
        }
        return code.toString();
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
