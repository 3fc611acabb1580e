package tiewright.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Directory;
import tiewright.event.PlayerId;
import tiewright.event.SetUpFact;
import tiewright.wording.Language;
import tiewright.wording.Words;

/** Names are invented. */
class EntryWarningsTest {
    private final Locale before = Locale.getDefault();
    private final Days day = Days.aDay();
    private final Map<PlayerId, Directory.Person> people = new LinkedHashMap<>();

    @AfterEach
    void giveTheLocaleBack() {
        Locale.setDefault(before);
    }

    private void enter(String code, String club, String name, int rank) {
        people.put(PlayerId.of(code), new Directory.Person(name, OptionalInt.empty()));
        day.fact(new SetUpFact.PlayerEntered(
                PlayerId.of(code),
                ClubId.of(club),
                rank == 0 ? OptionalInt.empty() : OptionalInt.of(rank),
                Optional.empty(),
                Optional.empty(),
                false));
    }

    private void club(String code, String name) {
        day.fact(new SetUpFact.ClubEntered(ClubId.of(code), name, Optional.empty(), OptionalInt.empty()));
    }

    private List<EntryWarning> warnings() {
        Directory directory = new Directory(people);
        List<EntryWarning> warnings = EntryWarnings.of(day.event(), directory);
        Words words = new Words(Language.ENGLISH, directory::name, ClubId::code, ZoneOffset.UTC);
        warnings.forEach(w -> assertThat(words.sentence(w.kind().code(), w.data()))
                .endsWith(".")
                .doesNotContain("{"));
        return warnings;
    }

    private List<EntryWarning.Kind> ofTwo(String name, String otherName) {
        club("N", "Northern Lights");
        club("S", "Southern Cross");
        enter("N1", "N", name, 1);
        enter("S1", "S", otherName, 1);
        return warnings().stream()
                .filter(w -> w.players().size() == 2)
                .map(EntryWarning::kind)
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "Ida Brandt,IDA BRANDT,SAME_PERSON",
        "Ida Brandt,'Brandt, Ida',SAME_PERSON",
        "José Núñez,Jose Nunez,SAME_PERSON",
        "Søren Kjær,Soren Kjaer,SAME_PERSON",
        "Łucja Wójcik,Lucja Wojcik,SAME_PERSON",
        "Jörg Weiß,Jorg Weiss,SAME_PERSON",
        "Ι. Παπάς,ι παπας,SAME_PERSON",
        "Ида Брандт,ИДА БРАНДТ,SAME_PERSON",
        "山田 太郎,山田 太郎,SAME_PERSON",
        "IRMAK ÇINAR,ırmak çınar,SAME_PERSON",
        "İnci Işık,inci isik,SAME_PERSON",
        "I. Brandt,Ida Brandt,SHORTENED_PERSON",
        "Brandt I.,Ida Brandt,SHORTENED_PERSON",
        "Ida M. Brandt,I. Brandt,SHORTENED_PERSON",
        "И. Брандт,Ида Брандт,SHORTENED_PERSON",
        "Ida Brandt,Ida Brand,LIKE_PERSON",
        "Ida Brandt,Ida Brant,LIKE_PERSON",
        "Ida Brandt,Ida Brendt,LIKE_PERSON",
        "राम वर्मा,रोम वर्मा,LIKE_PERSON"
    })
    void finds_one_person_in_two_squads_under_any_locale(String name, String other, EntryWarning.Kind kind) {
        Locale.setDefault(Locale.forLanguageTag("tr-TR"));
        assertThat(ofTwo(name, other)).containsExactly(kind);
    }

    @ParameterizedTest
    @CsvSource({
        "Ida Brandt,Mia Brandt",
        "I. Brandt,Mia Brandt",
        "Ida Brandt,Ida Brunndt",
        "I. Brandt,J. Brandt",
        "Li,Lu",
        "Bill Stone,William Stone",
        "I. B.,Ida Berg",
        "山田 太郎,山本 次郎"
    })
    void lets_different_names_be(String name, String other) {
        assertThat(ofTwo(name, other)).isEmpty();
    }

    @Test
    void both_entries_are_named() {
        ofTwo("Ida Brandt", "ida brandt");
        assertThat(warnings())
                .contains(new EntryWarning(
                        EntryWarning.Kind.SAME_PERSON,
                        List.of(ClubId.of("N"), ClubId.of("S")),
                        List.of(PlayerId.of("N1"), PlayerId.of("S1"))));
    }

    @Test
    void a_name_twice_in_one_squad_is_another_warning() {
        club("N", "Northern Lights");
        enter("N1", "N", "Ida Brandt", 1);
        enter("N2", "N", "Ida Brandt", 2);
        enter("N3", "N", "I. Brandt", 3);
        assertThat(warnings())
                .extracting(EntryWarning::kind)
                .containsExactly(EntryWarning.Kind.SHORT_SQUAD, EntryWarning.Kind.TWICE_IN_SQUAD);
    }

    @Test
    void clubs_that_look_alike() {
        club("N", "Northern Lights");
        club("M", "Nörthern Light");
        club("S", "Southern Cross");
        assertThat(warnings())
                .filteredOn(w -> w.kind() == EntryWarning.Kind.LIKE_CLUBS)
                .singleElement()
                .satisfies(w -> assertThat(w.clubs()).containsExactly(ClubId.of("N"), ClubId.of("M")));
    }

    @Test
    void clubs_told_apart_by_a_number_or_a_letter_are_left_alone() {
        for (String name : List.of("Owls 1", "Owls 2", "Owls 12", "Elms A", "Elms B")) {
            club(name.replace(" ", ""), name);
        }
        assertThat(warnings()).noneMatch(w -> w.kind() == EntryWarning.Kind.LIKE_CLUBS);
    }

    @Test
    void clubs_without_a_squad_or_with_too_small_a_one() {
        day.club("E", 7).club("F", 8).club("G", 0);
        assertThat(EntryWarnings.of(day.event(), Directory.EMPTY))
                .containsExactlyInAnyOrder(
                        new EntryWarning(EntryWarning.Kind.SHORT_SQUAD, List.of(ClubId.of("E")), List.of()),
                        new EntryWarning(EntryWarning.Kind.NO_SQUAD, List.of(ClubId.of("G")), List.of()));
    }

    @Test
    void a_squad_without_a_pair_for_a_kind_of_rubber() {
        day.club("E", 8).club("F", 8).with(Setting.RUBBER_KINDS, "women;men;mixed;open");
        day.stating("E", "wwmm----").stating("F", "wmmm----");
        assertThat(EntryWarnings.of(day.event(), day.directory()))
                .extracting(EntryWarning::kind, EntryWarning::clubs)
                .contains(org.assertj.core.groups.Tuple.tuple(
                        EntryWarning.Kind.NO_PAIR_FOR_A_KIND, List.of(ClubId.of("F"))))
                .doesNotContain(org.assertj.core.groups.Tuple.tuple(
                        EntryWarning.Kind.NO_PAIR_FOR_A_KIND, List.of(ClubId.of("E"))));
    }

    @Test
    void ranks_where_the_conditions_ask_for_an_order_of_strength() {
        club("N", "Northern Lights");
        for (int i = 1; i <= 8; i++) {
            enter("N" + i, "N", "Player " + "abcdefgh".charAt(i - 1) + "xyz" + i, i == 8 ? 0 : i == 7 ? 6 : i);
        }
        assertThat(warnings()).isEmpty();
        day.with(Setting.ORDER_OF_STRENGTH, "rank-sum");
        assertThat(warnings())
                .containsExactly(
                        new EntryWarning(
                                EntryWarning.Kind.SAME_RANK,
                                List.of(ClubId.of("N"), ClubId.of("N")),
                                List.of(PlayerId.of("N6"), PlayerId.of("N7"))),
                        new EntryWarning(
                                EntryWarning.Kind.NO_RANK, List.of(ClubId.of("N")), List.of(PlayerId.of("N8"))));
    }

    @Test
    void a_club_entered_after_the_draw() {
        day.clubs("E", "F")
                .by(Days.organiser())
                .does(new DrawPools(1, "w", "Ida"))
                .clubs("G");
        assertThat(EntryWarnings.of(day.event(), Directory.EMPTY))
                .containsExactly(new EntryWarning(EntryWarning.Kind.NOT_DRAWN, List.of(ClubId.of("G")), List.of()));
    }

    /** Seven hundred players are compared with each other while somebody waits for the page. */
    @Test
    void a_large_entry_is_compared_in_a_moment() {
        for (int c = 0; c < 60; c++) {
            club("C" + c, "Club " + Integer.toString(c * 977 + 5000, 36));
            for (int p = 0; p < 12; p++) {
                enter(
                        "C" + c + "-" + p,
                        "C" + c,
                        "Given" + Integer.toString(c * 7919 + p * 31, 36) + " Family"
                                + Integer.toString(p * 6007 + c * 13, 36),
                        0);
            }
        }
        long start = System.nanoTime();
        EntryWarnings.of(day.event(), new Directory(people));
        assertThat(System.nanoTime() - start).isLessThan(3_000_000_000L);
    }
}
