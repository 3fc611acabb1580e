package tiewright.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tiewright.conditions.Plays;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Directory;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.Role;
import tiewright.event.SetUpFact;
import tiewright.event.TieId;

/** Clubs, squads and courts. */
class EntriesTest {
    private final Days day = Days.aDay().by(Days.organiser());

    private static EnterClub club(String code, String name, int seed) {
        return new EnterClub(
                ClubId.of(code), name, Optional.empty(), seed == 0 ? OptionalInt.empty() : OptionalInt.of(seed));
    }

    private static EnterPlayer player(String code, String club, String name, int rank) {
        return new EnterPlayer(
                PlayerId.of(code),
                ClubId.of(club),
                new Directory.Person(name, OptionalInt.empty()),
                rank == 0 ? OptionalInt.empty() : OptionalInt.of(rank),
                Optional.empty(),
                Optional.empty(),
                false);
    }

    private static EnterPlayer here(String from, String until, int born) {
        return new EnterPlayer(
                PlayerId.of("N9"),
                ClubId.of("N"),
                new Directory.Person("Noor Dahl", OptionalInt.of(born)),
                OptionalInt.empty(),
                Optional.of(LocalTime.parse(from)),
                Optional.of(LocalTime.parse(until)),
                false);
    }

    @Test
    void refuses_a_second_club_of_the_same_name_code_or_seed() {
        day.does(club("OWL", "Owls Brück", 1));
        assertThat(Said.codes(day, club("ELM", "OWLS BRUCK", 0))).containsExactly("setup.club-name-taken");
        assertThat(Said.codes(day, club("owl", "Elms", 0))).containsExactly("setup.code-taken");
        assertThat(Said.codes(day, club("ELM", "Elms", 1))).containsExactly("setup.seed-taken");
        assertThat(Said.codes(day, club("ELM", "Elms", 0 - 3))).containsExactly("setup.not-a-seed");
        assertThat(Said.codes(day, club("ELM", "Owls Brück 2", 2))).isEmpty();
    }

    /** What stands in an address and in the name of a file: letters and digits of any script, hyphens between them. */
    @ParameterizedTest
    @ValueSource(strings = {"A wet court.", "-A", "A/B", "A.B", "A_B", "A?", "50%", "A&B", "A\"B", "\u0301A"})
    void refuses_a_code_that_cannot_stand_in_an_address(String code) {
        assertThat(Said.codes(day, club(code, "Owls", 0))).containsExactly("setup.not-a-club-code");
    }

    @ParameterizedTest
    @ValueSource(strings = {"OWL", "owl-2", "7", "林", "कि", "E\u0301", "Å", "0123456789012345678901234567890123456789"})
    void takes_letters_digits_and_hyphens_of_any_script(String code) {
        assertThat(Said.codes(day, club(code, "Owls", 0))).isEmpty();
    }

    /** Codes were freer once: such a club is altered like any other. */
    @Test
    void alters_a_club_whose_code_is_older_than_the_rule() {
        ClubId old = ClubId.of("A wet court.");
        day.fact(new SetUpFact.ClubEntered(old, "Owls", Optional.empty(), OptionalInt.empty()));
        day.does(club(old.code(), "Owls of the Mill", 1));
        assertThat(day.event().club(old).orElseThrow().name()).isEqualTo("Owls of the Mill");
    }

    @Test
    void alters_a_club_that_is_there() {
        day.does(club("OWL", "Owls", 1)).does(club("OWL", "Owls of the Mill", 1));
        assertThat(day.event().clubs()).hasSize(1);
        assertThat(day.event().club(ClubId.of("OWL")).orElseThrow().name()).isEqualTo("Owls of the Mill");
    }

    @Test
    void after_the_first_sealed_sheet_no_club_comes_and_a_name_changes_by_notice() {
        Days sealed = Days.oneTie().opened("A1").by(Days.organiser());
        assertThat(Said.codes(sealed, club("X", "Late Club", 0))).containsExactly("setup.entries-closed");
        sealed.does(club("N", "Northern Lights", 0));
        assertThat(sealed.event().notices())
                .singleElement()
                .satisfies(posted ->
                        assertThat(posted.notice().before().map(Days::said)).contains("Club N"));
    }

    @Test
    void a_removed_club_takes_its_squad_and_links_with_it() {
        day.club("N", 2)
                .fact(new SetUpFact.LinkIssued(
                        "L1", Role.CAPTAIN, Optional.of(ClubId.of("N")), Optional.empty(), "c", "0".repeat(64)))
                .does(new RemoveClub(ClubId.of("N")));
        assertThat(day.event().players()).isEmpty();
        assertThat(day.event().links().get("L1").revoked()).isTrue();
        assertThat(Said.codes(day, new RemoveClub(ClubId.of("N")))).containsExactly("setup.no-such-club");
        assertThat(Said.codes(Days.oneTie().by(Days.organiser()), new RemoveClub(ClubId.of("N"))))
                .containsExactly("setup.club-is-drawn");
    }

    @Test
    void a_player_goes_into_the_squad_and_the_name_beside_the_ledger() {
        day.club("N", 2).does(player("N9", "N", " Ngọc Ánh ", 3));
        assertThat(day.event().player(PlayerId.of("N9")).orElseThrow().rank()).hasValue(3);
        assertThat(day.notes())
                .containsExactly(new PrivateNote.PersonNamed(PlayerId.of("N9"), "Ngọc Ánh", OptionalInt.empty()));
        assertThat(day.facts().toString()).doesNotContain("Ngọc");
    }

    @Test
    void what_a_player_states_to_play_in_goes_beside_the_ledger_as_well() {
        Directory.Person ida = new Directory.Person("Ida", OptionalInt.empty(), Optional.of(Plays.WOMEN));
        day.club("N", 2)
                .does(new EnterPlayer(
                        PlayerId.of("N9"),
                        ClubId.of("N"),
                        ida,
                        OptionalInt.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        false));
        assertThat(day.notes())
                .extracting(note -> ((PrivateNote.PersonNamed) note).person())
                .containsExactly(ida);
        assertThat(day.facts().toString()).doesNotContain("WOMEN");
    }

    @Test
    void refuses_what_cannot_be_true_of_a_player() {
        day.clubs("N", "S");
        assertThat(Said.codes(day, player("S1", "N", "Ida", 0))).containsExactly("setup.player-of-other-club");
        assertThat(Said.codes(day, player("N9", "X", "", 100)))
                .containsExactly("setup.no-such-club", "setup.missing.name", "setup.not-a-rank");
        assertThat(Said.codes(day, here("12:00", "12:00", 1990))).containsExactly("setup.leaves-before-coming");
        assertThat(Said.codes(day, here("11:59", "12:00", 1990))).isEmpty();
        assertThat(Said.codes(day, here("11:00", "12:00", 2027))).containsExactly("setup.not-a-birth-year");
        assertThat(Said.codes(day, here("11:00", "12:00", 2026))).isEmpty();
        assertThat(Said.codes(day.club("L", 99), player("L100", "L", "One More", 0)))
                .containsExactly("setup.squad-full");
    }

    @Test
    void a_captain_alters_the_own_squad_until_the_first_sheet_is_sealed() {
        day.clubs("N", "S")
                .by(Days.captain("N"))
                .does(player("N9", "N", "Noor Dahl", 9))
                .does(new RemovePlayer(PlayerId.of("N9")));
        assertThat(Said.codes(day, player("S9", "S", "Noor Dahl", 9))).containsExactly("setup.not-your-squad");
        assertThat(Said.codes(day, new RemovePlayer(PlayerId.of("S1")))).containsExactly("setup.not-your-squad");
        assertThat(Said.codes(day.by(Days.desk()), player("N9", "N", "Noor Dahl", 9)))
                .containsExactly("setup.not-your-squad");
        Days sealed = Days.oneTie().opened("A1").by(Days.captain("N"));
        assertThat(Said.codes(sealed, player("N9", "N", "Noor Dahl", 9))).containsExactly("setup.squads-closed");
    }

    @Test
    void after_the_first_sealed_sheet_the_organiser_alters_squads_by_notice_without_a_name() {
        Days sealed = Days.oneTie()
                .with(Setting.ORDER_OF_STRENGTH, "rank-sum")
                .opened("A1")
                .by(Days.organiser())
                .does(player("N9", "N", "Noor Dahl", 9));
        assertThat(sealed.event().notices()).hasSize(1);
        assertThat(sealed.event().notices().toString()).contains("N9").doesNotContain("Noor");
        sealed.does(player("N9", "N", "Nora Dahl", 9));
        assertThat(sealed.event().notices()).as("a spelling is no notice").hasSize(1);
        sealed.does(player("N9", "N", "Nora Dahl", 1)).does(new RemovePlayer(PlayerId.of("N9")));
        assertThat(sealed.event().notices())
                .extracting(posted -> posted.notice().number())
                .containsExactly(1, 2, 3);
    }

    @Test
    void nobody_leaves_who_stands_on_an_opened_sheet_or_may_stand_on_a_sealed_one() {
        Days sealed = Days.oneTie().opened("A1").by(Days.organiser());
        assertThat(Said.codes(sealed, new RemovePlayer(PlayerId.of("N1")))).containsExactly("setup.player-on-a-sheet");
        sealed.club("E", 9)
                .poolTie("A2", "A", 2, "N", "E")
                .fact(new ExchangeFact.SheetSealed(
                        ExchangeId.sheets(TieId.of("A2")), ClubId.of("E"), "0".repeat(64), false));
        assertThat(Said.codes(sealed, new RemovePlayer(PlayerId.of("E9")))).containsExactly("setup.sheet-is-sealed");
        assertThat(Said.codes(sealed, new RemovePlayer(PlayerId.of("Q")))).containsExactly("setup.no-such-player");
    }

    @Test
    void courts_open_before_they_close() {
        SetCourt court = new SetCourt("3", Optional.of(LocalTime.of(9, 0)), Optional.of(LocalTime.of(9, 0)), true);
        assertThat(Said.codes(day, court)).containsExactly("setup.court-closes-first");
        assertThat(Said.codes(day, new SetCourt("a,b", Optional.empty(), Optional.empty(), true)))
                .containsExactly("setup.not-a-court");
        assertThat(Said.codes(day, new SetCourt("", Optional.empty(), Optional.empty(), true)))
                .containsExactly("setup.not-a-court");
        day.does(new SetCourt("Centre", Optional.empty(), Optional.empty(), true));
        assertThat(Said.codes(day, new SetCourt("centre", Optional.empty(), Optional.empty(), true)))
                .containsExactly("setup.court-is-there");
        assertThat(Said.codes(day, new SetCourt("Centre", Optional.empty(), Optional.empty(), true)))
                .containsExactly("setup.court-unchanged");
    }

    @Test
    void the_desk_takes_a_court_out_of_use_and_names_none() {
        day.courts("1").by(Days.desk()).does(new SetCourt("1", Optional.empty(), Optional.empty(), false));
        assertThat(day.event().courts().get("1").usable()).isFalse();
        assertThat(Said.codes(day, new SetCourt("2", Optional.empty(), Optional.empty(), true)))
                .containsExactly("setup.organiser-only");
        assertThat(Said.codes(day.by(Days.captain("N")), new SetCourt("1", Optional.empty(), Optional.empty(), true)))
                .isEqualTo(List.of("setup.officials-only"));
    }
}
