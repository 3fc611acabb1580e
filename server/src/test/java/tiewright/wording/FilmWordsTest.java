package tiewright.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tiewright.film.Agreement;
import tiewright.film.Measure;
import tiewright.film.RallyKey;

class FilmWordsTest {
    private final FilmWords words = new FilmWords(Words.ofCodes(ZoneOffset.UTC));

    @ParameterizedTest
    @EnumSource
    void every_key_says_what_it_notes(RallyKey key) {
        assertThat(words.key(key)).isNotBlank();
    }

    @ParameterizedTest
    @EnumSource
    void every_count_has_its_words(Measure measure) {
        assertThat(words.measure(measure)).isNotBlank();
    }

    @ParameterizedTest
    @EnumSource
    void everything_that_two_may_agree_on_has_its_words(Agreement.What what) {
        assertThat(words.what(what)).isNotBlank();
    }
}
