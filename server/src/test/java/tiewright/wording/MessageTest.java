package tiewright.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.text.PluralRules;
import com.ibm.icu.util.ULocale;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tiewright.Seed;

/** Compared with ICU4J, the Unicode Consortium's own library, in its syntax for messages and its plural rules. */
class MessageTest {
    private static final List<String> WORDS = List.of(
            "a ",
            "tie ",
            "it's ",
            "Zoë ",
            "''",
            "'{'",
            "'{x}' ",
            "# ",
            "\"b\" ",
            "{club}",
            "{ club } ",
            "o'{'clock'}' ");

    @Test
    void says_random_messages_like_icu() {
        for (int round = 0; round < 2_000; round++) {
            Random random = Seed.random(round);
            String pattern = pattern(random, 2);
            Map<String, Object> facts =
                    Map.of("club", "O'{N}", "ties", random.nextInt(4), "state", random.nextBoolean() ? "over" : "on");
            String icu = new MessageFormat(pattern, ULocale.ENGLISH).format(facts);
            assertThat(say(pattern, facts))
                    .as(Seed.rerun(round) + ": " + pattern)
                    .isEqualTo(icu);
        }
    }

    private static String pattern(Random random, int depth) {
        StringBuilder pattern = new StringBuilder();
        for (int parts = 1 + random.nextInt(4); parts > 0; parts--) {
            int kind = depth == 0 ? 0 : random.nextInt(4);
            pattern.append(
                    switch (kind) {
                        case 1 ->
                            "{ties, plural, =0 {" + pattern(random, depth - 1) + "} one{" + pattern(random, depth - 1)
                                    + "} other {" + pattern(random, depth - 1) + "}}";
                        case 2 ->
                            "{state,select,over{" + pattern(random, depth - 1) + "}other{" + pattern(random, depth - 1)
                                    + "}} ";
                        default -> WORDS.get(random.nextInt(WORDS.size()));
                    });
        }
        return pattern.toString();
    }

    static Stream<ULocale> languages() {
        return Stream.of(PluralRules.getAvailableULocales());
    }

    @ParameterizedTest
    @MethodSource("languages")
    void reads_the_plural_rules_of_every_language_like_icu(ULocale language) {
        PluralRules rules = PluralRules.forLocale(language);
        LongStream.concat(LongStream.rangeClosed(0, 1_200), LongStream.of(10_000, 1_000_000, 1_000_001))
                .forEach(count -> {
                    String form = PluralRule.FORMS.stream()
                            .filter(rules.getKeywords()::contains)
                            .filter(one -> PluralRule.holds(withoutSamples(rules, one), count))
                            .findFirst()
                            .orElse(PluralRule.OTHER);
                    assertThat(form).as(language + " " + count).isEqualTo(rules.select(count));
                });
    }

    @SuppressWarnings("deprecation") // for the inside of ICU only, and the only way to see its rules in words
    private static String withoutSamples(PluralRules rules, String keyword) {
        return rules.getRules(keyword).replaceAll("@.*", "").strip();
    }

    @Test
    void english_counts_as_the_unicode_consortium_says() {
        PluralRules rules = PluralRules.forLocale(ULocale.ENGLISH);
        LongStream.rangeClosed(0, 200)
                .forEach(count -> assertThat(Language.ENGLISH.plural(count)).isEqualTo(rules.select(count)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"''|''", "A|A", "A,B|A and B", "A,B,C|A, B and C"})
    void lists_several(String clubs, String said) {
        List<String> parts = clubs.isEmpty() ? List.of() : List.of(clubs.split(","));
        assertThat(say("{clubs, list, and}", Map.of("clubs", parts))).isEqualTo(said);
        assertThat(say("{clubs, list, or}", Map.of("clubs", parts))).isEqualTo(said.replace("and", "or"));
    }

    @Test
    void puts_a_fact_in_as_it_is() {
        assertThat(say("{a} {b}", Map.of("a", "{b}", "b", "it''s #{ties, plural, other {#}}")))
                .isEqualTo("{b} it''s #{ties, plural, other {#}}");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{|a name is missing at 1",
                "{club|a comma or a closing brace is missing at 5",
                "a}|a closing brace too many at 1",
                "{n, plural, one {x}}|the choice \"other\"",
                "{n, plural}|\"plural\" needs its choices",
                "{n, colour, red}|is none of list, plural, select",
                "{n, select, other x}|an opening brace is missing",
                "{n, plural, other {x}|the choice \"other\" or a closing brace is missing",
                "{n, list, and, or}|a closing brace is missing"
            })
    void says_where_a_pattern_is_wrong(String pattern, String fault) {
        assertThatThrownBy(() -> Message.of(pattern, Language.ENGLISH))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(fault);
    }

    @Test
    void a_fact_that_is_missing_is_a_bug() {
        assertThatThrownBy(() -> say("{club}", Map.of())).hasMessage("the words of key need club");
        assertThatThrownBy(() -> Language.ENGLISH.say("no.such-key", Map.of(), String::valueOf))
                .hasMessage("no words for no.such-key");
    }

    static Stream<String> files() throws IOException {
        try (Stream<Path> all = Files.list(Path.of("src/main/resources/tiewright/wording"))) {
            return all.map(file -> file.getFileName().toString().replace(".properties", "")).toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void every_sentence_is_well_formed_and_stands_in_the_file_of_its_room(String room) throws IOException {
        Properties sentences = new Properties();
        try (Reader text =
                Files.newBufferedReader(Path.of("src/main/resources/tiewright/wording", room + ".properties"))) {
            sentences.load(text);
        }
        assertThat(sentences).isNotEmpty();
        sentences.forEach((key, text) -> {
            Message.of((String) text, Language.ENGLISH);
            assertThat((String) key).startsWith(room + ".");
            assertThat(Language.ENGLISH.has((String) key)).isTrue();
        });
    }

    private static String say(String pattern, Map<String, ?> facts) {
        return Message.of(pattern, Language.ENGLISH).say("key", facts, String::valueOf);
    }
}
