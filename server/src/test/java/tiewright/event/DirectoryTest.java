package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.conditions.Plays;

/** Names, and who of them is shortened: whoever turns 18 in the year of the event still is, for the day is not known. */
class DirectoryTest {
    private static final PlayerId ANA = PlayerId.of("N1");
    private static final int YEAR = 2026;

    private static Directory of(String name, OptionalInt bornYear) {
        return new Directory(Map.of(ANA, new Directory.Person(name, bornYear)));
    }

    private static Directory born(int year) {
        return of("Ana Maria Vidal", OptionalInt.of(year));
    }

    @ParameterizedTest
    @CsvSource({"2007, false", "2008, true", "2009, true", "2026, true", "1980, false"})
    void a_minor_turns_eighteen_this_year_or_later(int bornYear, boolean minor) {
        assertThat(born(bornYear).isMinor(ANA, YEAR)).isEqualTo(minor);
        assertThat(born(bornYear).publicName(ANA, YEAR)).isEqualTo(minor ? "Ana Maria V." : "Ana Maria Vidal");
        assertThat(born(bornYear).name(ANA)).isEqualTo("Ana Maria Vidal");
    }

    @Test
    void without_a_birth_year_or_a_name_nobody_is_taken_for_a_minor() {
        assertThat(of("Ana Vidal", OptionalInt.empty()).isMinor(ANA, YEAR)).isFalse();
        assertThat(Directory.EMPTY.isMinor(ANA, YEAR)).isFalse();
        assertThat(of("Ana Vidal", OptionalInt.empty()).publicName(ANA, YEAR)).isEqualTo("Ana Vidal");
    }

    @Test
    void a_name_that_is_not_known_is_the_code() {
        assertThat(Directory.EMPTY.name(ANA)).isEqualTo("N1");
        assertThat(Directory.EMPTY.publicName(ANA, YEAR)).isEqualTo("N1");
        assertThat(Directory.EMPTY.person(ANA)).isEmpty();
    }

    /** A letter outside the basic plane is two chars: the initial is the letter and no half of it. */
    @Test
    void an_initial_is_a_whole_letter_in_any_script() {
        assertThat(of("李 𠮷田", OptionalInt.of(2010)).publicName(ANA, YEAR)).isEqualTo("李 𠮷.");
        assertThat(of("Ana Ö", OptionalInt.of(2010)).publicName(ANA, YEAR)).isEqualTo("Ana Ö.");
    }

    @Test
    void one_word_cannot_be_shortened() {
        assertThat(of("Ana", OptionalInt.of(2010)).publicName(ANA, YEAR)).isEqualTo("Ana");
    }

    @Test
    void what_is_stated_is_known_of_those_who_state_it_and_goes_with_the_deletion() {
        PlayerId bo = PlayerId.of("N2");
        Directory both = new Directory(Map.of(
                ANA, new Directory.Person("Ana Vidal", OptionalInt.empty(), Optional.of(Plays.WOMEN)),
                bo, new Directory.Person("Bo Lind", OptionalInt.empty())));
        assertThat(both.plays(ANA)).contains(Plays.WOMEN);
        assertThat(both.plays(bo)).isEmpty();
        assertThat(both.stated()).isEqualTo(Map.of(ANA, Plays.WOMEN));
        assertThat(both.erased(NamesKept.INITIALS, YEAR).stated()).isEmpty();
    }

    @Test
    void deleting_leaves_codes_or_first_names_with_an_initial_and_nothing_of_a_minor() {
        assertThat(born(1980).erased(NamesKept.CODES, YEAR).people()).isEmpty();
        assertThat(born(1980).erased(NamesKept.INITIALS, YEAR).people())
                .isEqualTo(Map.of(ANA, new Directory.Person("Ana Maria V.", OptionalInt.empty())));
        assertThat(born(2008).erased(NamesKept.INITIALS, YEAR).people()).isEmpty();
        assertThat(born(2007).erased(NamesKept.INITIALS, YEAR).people()).hasSize(1);
        assertThat(of(" Ana ", OptionalInt.of(1980))
                        .erased(NamesKept.INITIALS, YEAR)
                        .people())
                .isEmpty();
        assertThat(of(" A B ", OptionalInt.of(1980))
                        .erased(NamesKept.INITIALS, YEAR)
                        .name(ANA))
                .isEqualTo("A B.");
    }

    @Test
    void private_data_go_four_weeks_after_the_event_or_after_today() {
        LocalDate day = LocalDate.of(2026, 6, 20);
        assertThat(Deletion.usual(day, day.minusDays(1))).isEqualTo(LocalDate.of(2026, 7, 18));
        assertThat(Deletion.usual(day, day)).isEqualTo(LocalDate.of(2026, 7, 18));
        assertThat(Deletion.usual(day, day.plusDays(1))).isEqualTo(LocalDate.of(2026, 7, 19));
    }
}
