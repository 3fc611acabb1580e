package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;

/** The pairs of a sheet, and the text that its receipt is made over: the form is our own and published, see docs. */
class SheetTest {
    private static final Pair AB = Pair.of("B", "A");

    @Test
    void a_pair_is_the_same_in_any_order_and_has_two_players() {
        assertThat(AB).isEqualTo(Pair.of(PlayerId.of("A"), PlayerId.of("B"))).hasToString("A+B");
        assertThat(AB.first()).isEqualTo(PlayerId.of("A"));
        assertThat(AB.partnerOf(PlayerId.of("A"))).isEqualTo(PlayerId.of("B"));
        assertThat(AB.partnerOf(PlayerId.of("B"))).isEqualTo(PlayerId.of("A"));
        assertThat(Stream.of("A", "B", "C").map(PlayerId::of).filter(AB::has).map(PlayerId::code))
                .containsExactly("A", "B");
        assertThatThrownBy(() -> Pair.of("A", "A")).hasMessage("a pair needs two players, got A twice");
    }

    @Test
    void pairs_sort_by_the_first_player_then_the_second() {
        assertThat(Stream.of(Pair.of("B", "C"), Pair.of("A", "D"), Pair.of("A", "C"))
                        .sorted())
                .containsExactly(Pair.of("A", "C"), Pair.of("A", "D"), Pair.of("B", "C"));
        assertThat(AB).isEqualByComparingTo(Pair.of("A", "B"));
    }

    @Test
    void the_canonical_text_names_each_rubber_with_codes_sorted_and_an_empty_one_by_commas() {
        Sheet sheet = Sheet.of(List.of(Optional.of(AB), Optional.empty(), Optional.of(Pair.of("C", "A"))));
        assertThat(sheet.canonical()).isEqualTo("1,A,B\n2,,\n3,A,C\n");
        assertThat(Sheet.decider(AB).canonical()).isEqualTo("D,A,B\n");
        assertThat(sheet.players()).containsExactly(PlayerId.of("A"), PlayerId.of("B"), PlayerId.of("C"));
        assertThat(Sheet.full(Pair.of("D", "C"), AB).players())
                .extracting(PlayerId::code)
                .containsExactly("A", "B", "C", "D");
        assertThat(sheet.pair(RubberNo.of(1))).contains(AB);
        assertThat(sheet.pair(RubberNo.of(2))).isEmpty();
        assertThat(sheet.pair(RubberNo.of(4))).isEmpty();
        assertThat(Sheet.full(AB, AB)).isEqualTo(Sheet.of(List.of(Optional.of(AB), Optional.of(AB))));
        assertThatThrownBy(() -> new Sheet(new TreeMap<>())).hasMessage("a sheet names at least one rubber");
    }

    @Test
    void a_sheet_in_the_clear_says_nothing_when_it_is_printed_by_mistake() {
        ExchangeId sheets = ExchangeId.sheets(TieId.of("A1"));
        assertThat(new Decision.Sealed(Sheet.full(AB), "secret")).hasToString("Sealed[]");
        assertThat(new PrivateNote.SheetKept(sheets, ClubId.of("N"), Sheet.full(AB), "secret").toString())
                .isEqualTo("SheetKept[exchange=" + sheets + ", club=N]");
        assertThat(new PrivateNote.FilmKept(ClubId.of("N"), "g1", "about", "rallies"))
                .hasToString("FilmKept[club=N]");
        assertThatThrownBy(() -> new PrivateNote.FilmKept(ClubId.of("N"), "", "about", "rallies"))
                .hasMessageContaining("not a game code");
    }

    @Test
    void an_exchange_is_of_the_rubbers_or_of_the_decider() {
        Event event = Days.oneTie().with(Setting.RUBBERS, "3").event();
        ExchangeId sheets = ExchangeId.sheets(TieId.of("A1"));
        ExchangeId decider = ExchangeId.decider(TieId.of("A1"));
        assertThat(sheets.rubbers(event.conditions())).isEqualTo(RubberNo.upTo(3));
        assertThat(decider.rubbers(event.conditions())).containsExactly(RubberNo.DECIDER);
        assertThat(Stream.of(ExchangeId.sheets(TieId.of("A2")), decider, sheets).sorted())
                .containsExactly(sheets, decider, ExchangeId.sheets(TieId.of("A2")));
    }

    @Test
    void a_decision_finds_the_sealed_sheet_of_its_club_and_no_other() {
        ExchangeId sheets = ExchangeId.sheets(TieId.of("A1"));
        Decision.Given given =
                Days.oneTie().sealed(sheets, "N", Sheet.full(AB), "s").given();
        assertThat(given.sealed(sheets, ClubId.of("N"))).contains(new Decision.Sealed(Sheet.full(AB), "s"));
        assertThat(given.sealed(sheets, ClubId.of("S"))).isEmpty();
        assertThat(given.sealed(ExchangeId.decider(TieId.of("A1")), ClubId.of("N")))
                .isEmpty();
    }

    @Test
    void a_decision_asks_for_no_sheet_and_is_never_stale_unless_it_says_so() {
        Decision plain = (event, given) -> Decision.Accepted.of();
        assertThat(plain.needs(Event.empty())).isEmpty();
        assertThat(plain.isStaledBy(new SetUpFact.LinkRevoked("L1"))).isFalse();
        PrivateDecision note = (event, noted, by) -> PrivateDecision.Kept.of();
        assertThat(note.isNeverStale()).isFalse();
        assertThat(Notes.kept(PrivateDecision.Kept.of(new PrivateNote.HurtMarked(PlayerId.of("A"), true))))
                .hasSize(1);
    }

    @Test
    void what_is_held_is_told_of_only_as_far_as_it_is_everybodys() {
        Held held = new Held(
                new TreeMap<>(Map.of("person", 3, "film", 2, "sheet", 0, "hurt", 1, "past_game", 4)),
                new TreeMap<>(Map.of(ClubId.of("N"), new TreeMap<>(Map.of("film", 2)))));
        assertThat(held.told()).isEqualTo(Map.of("person", 3, "sheet", 0, "hurt", 1, "past_game", 4));
        assertThat(held.ofClubs()).isEqualTo(Map.of(ClubId.of("N"), Map.of("film", 2)));
        assertThat(held.isNothing()).isFalse();
        assertThat(new Held(new TreeMap<>(Map.of("film", 0)), new TreeMap<>()).isNothing())
                .isTrue();
        assertThat(new Held(new TreeMap<>(Map.of("film", 0, "hurt", 1)), new TreeMap<>()).isNothing())
                .isFalse();
    }
}
