package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.Seed;

/**
 * Which names may mean the same person or club. Letters and marks by Unicode normalisation form KD (UAX 15); edits against
 * the textbook table of Levenshtein (1966); what counts as shortened is our own, no source.
 */
class SameNameTest {
    private static final int ROUNDS = 3_000;

    private static SameName name(String name) {
        return SameName.of(name);
    }

    private static boolean isSame(String one, String other) {
        assertThat(name(one).is(name(other))).isEqualTo(name(other).is(name(one)));
        return name(one).is(name(other));
    }

    private static boolean isShortened(String one, String other) {
        assertThat(name(one).isShortened(name(other))).isEqualTo(name(other).isShortened(name(one)));
        return name(one).isShortened(name(other));
    }

    private static boolean isLike(String one, String other) {
        assertThat(name(one).isLike(name(other))).isEqualTo(name(other).isLike(name(one)));
        return name(one).isLike(name(other));
    }

    @ParameterizedTest
    @CsvSource({
        "Ida Brandt, IDA BRANDT",
        "Ida Brandt, 'Brandt, Ida'",
        "Ida Brandt, ' ida-brandt. '",
        "Zoë Núñez, Zoe Nunez",
        "Jörg Groß, Jorg Gross",
        "Øyvind Æsøy, Oyvind Aesoy",
        "Łukasz Đurić, Lukasz Duric",
        "Þór Œuvre, Thor Oeuvre",
        "Ŧħð, thd",
        "ﬁona, Fiona",
        "２００２, 2002"
    })
    void letters_that_are_written_in_two_ways_are_the_same(String one, String other) {
        assertThat(isSame(one, other)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "Ida Brandt, Ida Brand",
        "Ida Brandt, Ida",
        "किरण, करण",
        "Ida Brandt, Ida Ida Brandt",
        "'', ''",
        "'-', '.'"
    })
    void other_words_no_words_and_other_vowel_signs_are_not(String one, String other) {
        assertThat(isSame(one, other)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "I. Brandt, Ida Brandt",
        "'Brandt, I.', Ida Brandt",
        "I. Brandt, 'Brandt, Ida'",
        "'Brandt, I.', 'Brandt, Ida'",
        "É. Brandt, Emma Brandt",
        "𠮷 山田, 𠮷野 山田"
    })
    void a_first_name_may_be_written_as_its_initial(String one, String other) {
        assertThat(isShortened(one, other)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "I. Brandt, I. Brandt",
        "Ida Brandt, Ida Brandt",
        "I. Brandt, Eva Brandt",
        "Id. Brandt, Ida Brandt",
        "I. Brandt, Ida Brand",
        "Ida B., Ida C.",
        "I. B., Ida B.",
        "I, Ida Brandt",
        "Ida, I. Brandt",
        "Ida, I. Ida",
        "Brandt, I. Brandt"
    })
    void anything_else_is_not_shortened(String one, String other) {
        assertThat(isShortened(one, other)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "Owls Nord, Owls Mord",
        "Ida Brandt, Ida Brand",
        "Ida Brandt, Ida Brundt",
        "Kites, Kite",
        "Kitess, Kites",
        "Brandt, Ida Brandt",
        "Owls 1 Nord, Owls 1 Mord"
    })
    void one_letter_apart_in_five_or_more_is_like(String one, String other) {
        boolean longEnough = Math.min(one.length(), other.length()) >= 5;
        boolean oneWord = one.split(" ").length == other.split(" ").length;
        assertThat(isLike(one, other)).isEqualTo(longEnough && oneWord);
    }

    @ParameterizedTest
    @CsvSource({
        "Owls 1, Owls 2",
        "Owls One, Owls One",
        "Team A, Team B",
        "Owls 12, Owls 13",
        "Owls 1, Owls 12",
        "Ida Brandt, Ida Brantd",
        "Brandts, Brand"
    })
    void a_number_an_initial_or_two_letters_part_names(String one, String other) {
        assertThat(isLike(one, other)).isFalse();
    }

    @Test
    void four_letters_are_too_few_and_five_are_enough() {
        assertThat(isLike("kite", "kita")).isFalse();
        assertThat(isLike("kite", "kites")).isFalse();
        assertThat(isLike("kites", "kitas")).isTrue();
        assertThat(isLike("kites", "skites")).isTrue();
    }

    /** Names of one word of five letters or more: like each other where the table says that one edit parts them. */
    @Test
    void one_word_is_like_another_exactly_when_one_edit_parts_them() {
        for (int round = 0; round < ROUNDS; round++) {
            Random random = Seed.random(round);
            String one = word(random);
            String other = random.nextBoolean() ? word(random) : edited(one, random);
            if (Math.min(one.length(), other.length()) >= 5) {
                assertThat(isLike(one, other))
                        .as(one + " and " + other + ", " + Seed.rerun(round))
                        .isEqualTo(edits(one, other) == 1);
            }
        }
    }

    private static String word(Random random) {
        StringBuilder word = new StringBuilder();
        for (int i = 5 + random.nextInt(3); i > 0; i--) {
            word.append("ab".charAt(random.nextInt(2)));
        }
        return word.toString();
    }

    private static String edited(String word, Random random) {
        StringBuilder edited = new StringBuilder(word);
        for (int i = random.nextInt(3); i > 0; i--) {
            int at = random.nextInt(edited.length());
            switch (random.nextInt(3)) {
                case 0 -> edited.setCharAt(at, 'c');
                case 1 -> edited.insert(at, 'c');
                default -> edited.deleteCharAt(at);
            }
        }
        return edited.toString();
    }

    private static int edits(String one, String other) {
        int[] row = new int[other.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                int change = diagonal + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[other.length()];
    }
}
