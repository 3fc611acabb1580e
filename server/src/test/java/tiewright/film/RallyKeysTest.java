package tiewright.film;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.film.Played.A1;
import static tiewright.film.Played.A2;
import static tiewright.film.Played.B1;
import static tiewright.film.Played.B2;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tiewright.Seed;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.scoring.Format;

class RallyKeysTest {
    private static final Start START = Played.start(Format.sideOut(11));

    private static RallyKeys.Typed read(String text) {
        return RallyKeys.read(text, START);
    }

    private static RallyNote one(String line) {
        RallyKeys.Typed typed = read(line);
        assertThat(typed.faults()).isEmpty();
        assertThat(typed.rallies()).hasSize(1);
        return typed.rallies().get(0);
    }

    @Test
    void three_keys_say_how_a_rally_ended() {
        assertThat(read("j1\nk3\nl2\n0\n?\n"))
                .isEqualTo(new RallyKeys.Typed(
                        List.of(
                                RallyNote.of(1, Ending.EARNED, A1),
                                RallyNote.of(2, Ending.FORCED, B1),
                                RallyNote.of(3, Ending.GAVE, A2),
                                RallyNote.of(4, Ending.REPLAY),
                                RallyNote.of(5, Ending.UNSURE)),
                        List.of()));
    }

    @Test
    void everything_that_can_be_noted_has_a_key() {
        Detail all = new Detail(
                Optional.of("net"),
                Optional.of("deep"),
                Optional.of("short"),
                Optional.of("soft"),
                Optional.of(B2),
                Optional.of("switch"),
                Optional.of("out"),
                Optional.of(A2),
                Optional.of("withdrawn"),
                Optional.of("time-out"),
                Optional.of("1:05"));
        assertThat(one("@1:05 =2 . a w e4 k1 n c2 g m"))
                .isEqualTo(RallyNote.of(1, Ending.FORCED, A1).servedBy(A2).with(all));
    }

    @Test
    void order_blanks_and_capitals_do_not_matter_and_empty_lines_are_no_rallies() {
        assertThat(one("\n  N  J 1aQ \n\n")).isEqualTo(one("aqj1n"));
    }

    @ParameterizedTest
    @MethodSource("keys")
    void each_key_notes_its_own_thing_alone(RallyKey key) {
        String player = key.names() == RallyKey.Names.MUST ? "1" : "";
        String ending = key.note() == RallyKey.Note.ENDING ? "" : "0";
        RallyNote rally = one(ending + key.key() + player);
        Detail detail = rally.detail();
        List<String> noted = new ArrayList<>();
        List.of(
                        detail.where(),
                        detail.serve(),
                        detail.returned(),
                        detail.third(),
                        detail.signal(),
                        detail.call(),
                        detail.callEnd(),
                        detail.mark())
                .forEach(each -> each.ifPresent(noted::add));
        if (key.note() == RallyKey.Note.ENDING) {
            assertThat(rally.ending().code()).isEqualTo(key.value());
            assertThat(noted).isEmpty();
        } else {
            assertThat(noted).isEqualTo(key.note() == RallyKey.Note.SERVER ? List.of() : List.of(key.value()));
            assertThat(rally.server())
                    .isEqualTo(key.note() == RallyKey.Note.SERVER ? Optional.of(A1) : Optional.empty());
        }
    }

    static List<RallyKey> keys() {
        return List.of(RallyKey.values());
    }

    @ParameterizedTest
    @CsvSource({
        "j1 z, film.key-unknown", "j5, film.key-unknown film.key-without-player", "j, film.key-without-player",
                "1j, film.key-player-alone film.key-without-player",
        "j1 k2, film.key-twice film.key-player-alone", "n, film.keys-without-ending", "j12, film.key-player-alone",
                "j1 n 2, film.key-player-alone",
        "@ j1, film.key-film-time", "@0:01 @0:02 j1, film.key-film-time", "j1 =, film.key-without-player",
                "j1 a s, film.key-twice"
    })
    void what_cannot_be_read_is_named_with_its_rally(String line, String codes) {
        RallyKeys.Typed typed = read("j1\n" + line);
        assertThat(typed.faults().stream().map(Refusal::code).collect(Collectors.joining(" ")))
                .isEqualTo(codes);
        assertThat(typed.faults()).allSatisfy(fault -> assertThat(fault.data()).containsEntry("rally", 2));
    }

    @Test
    void what_is_noted_comes_back_from_the_keys_that_it_is_written_with() {
        for (int round = 0; round < 500; round++) {
            Random random = Seed.random(round);
            List<RallyNote> rallies = new ArrayList<>();
            int many = 1 + random.nextInt(30);
            for (int number = 1; number <= many; number++) {
                rallies.add(anyRally(random, number));
            }
            String text = RallyKeys.write(rallies, START).orElseThrow();
            assertThat(read(text))
                    .as(Seed.rerun(round) + "\n" + text)
                    .isEqualTo(new RallyKeys.Typed(rallies, List.of()));
        }
    }

    private static RallyNote anyRally(Random random, int number) {
        Ending ending = Ending.values()[random.nextInt(Ending.values().length)];
        Optional<PlayerId> player =
                ending.namesPlayer() || random.nextBoolean() ? Optional.of(anybody(random)) : Optional.empty();
        Optional<String> third = any(random, RallyKey.Note.THIRD);
        Optional<String> call = any(random, RallyKey.Note.CALL);
        Detail detail = new Detail(
                any(random, RallyKey.Note.WHERE),
                any(random, RallyKey.Note.SERVE),
                any(random, RallyKey.Note.RETURN),
                third,
                third.filter(how -> !how.equals("none")).map(any -> anybody(random)),
                any(random, RallyKey.Note.SIGNAL),
                call,
                call.map(any -> anybody(random)),
                any(random, RallyKey.Note.CALL_END),
                any(random, RallyKey.Note.MARK),
                random.nextBoolean()
                        ? Optional.of(random.nextInt(20) + ":" + (10 + random.nextInt(50)))
                        : Optional.empty());
        return new RallyNote(
                number,
                ending,
                player,
                random.nextInt(5) == 0 ? Optional.of(anybody(random)) : Optional.empty(),
                detail);
    }

    private static Optional<String> any(Random random, RallyKey.Note note) {
        List<String> values = Arrays.stream(RallyKey.values())
                .filter(key -> key.note() == note)
                .map(RallyKey::value)
                .toList();
        return random.nextBoolean() ? Optional.empty() : Optional.of(values.get(random.nextInt(values.size())));
    }

    private static PlayerId anybody(Random random) {
        return List.of(A1, A2, B1, B2).get(random.nextInt(4));
    }

    @Test
    void a_word_without_a_key_is_not_written_away() {
        Detail body = new Detail(
                Optional.of("body"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        Detail time = new Detail(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of("second half"));
        assertThat(RallyKeys.write(List.of(RallyNote.of(1, Ending.GAVE, A1).with(body)), START))
                .isEmpty();
        assertThat(RallyKeys.write(List.of(RallyNote.of(1, Ending.GAVE, A1).with(time)), START))
                .isEmpty();
    }
}
