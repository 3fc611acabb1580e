package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Sheet;
import tiewright.event.Slot;
import tiewright.event.SlotSource;
import tiewright.event.TieId;
import tiewright.scoring.Score;

/** Values of several parts in one column: as they stand there, read back, and refused where a part is missing. */
class TextsTest {
    @Test
    void exchanges_and_pairs_have_two_parts() {
        ExchangeId sheets = ExchangeId.sheets(TieId.of("A1"));
        assertThat(Texts.exchange(sheets)).isEqualTo("A1,rubbers");
        assertThat(Texts.exchange("A1,rubbers")).isEqualTo(sheets);
        assertThat(Texts.pair(Pair.of("b", "a"))).isEqualTo("a,b");
        assertThat(Texts.pair("a,b")).isEqualTo(Pair.of("a", "b"));
        for (String wrong : List.of("a", "a,b,c", "")) {
            assertThatThrownBy(() -> Texts.pair(wrong)).hasMessage("expected 2 parts in \"" + wrong + "\"");
            assertThatThrownBy(() -> Texts.exchange(wrong)).hasMessage("expected 2 parts in \"" + wrong + "\"");
        }
    }

    @Test
    void a_slot_has_a_club_or_a_source_or_both() {
        Slot club = Slot.of(ClubId.of("N"));
        Slot open = Slot.from(SlotSource.place("A", 1));
        Slot both = new Slot(Optional.of(ClubId.of("N")), open.from());
        assertThat(List.of(Texts.slot(club), Texts.slot(open), Texts.slot(both)))
                .containsExactly("N,", ",A-1", "N,A-1");
        for (Slot slot : List.of(club, open, both)) {
            assertThat(Texts.slot(Texts.slot(slot))).isEqualTo(slot);
        }
        assertThatThrownBy(() -> Texts.slot("N")).hasMessage("expected 2 parts in \"N\"");
    }

    @Test
    void a_sheet_has_a_line_for_each_rubber() {
        Sheet sheet = Sheet.of(List.of(Optional.of(Pair.of("a", "b")), Optional.empty()));
        assertThat(Texts.sheet(sheet.canonical())).isEqualTo(sheet);
        assertThatThrownBy(() -> Texts.sheet("1,a")).hasMessage("expected 3 parts in \"1,a\"");
    }

    @Test
    void lists_may_be_empty_or_have_one_or_more() {
        for (List<String> codes : List.of(List.<String>of(), List.of("N"), List.of("S", "N"))) {
            List<ClubId> clubs = codes.stream().map(ClubId::of).toList();
            List<PlayerId> players = codes.stream().map(PlayerId::of).toList();
            assertThat(Texts.clubs(clubs)).isEqualTo(String.join(",", codes));
            assertThat(Texts.clubs(Texts.clubs(clubs))).isEqualTo(clubs);
            assertThat(Texts.players(players)).isEqualTo(String.join(",", codes));
            assertThat(Texts.players(Texts.players(players))).isEqualTo(players);
        }
        List<Score> games = List.of(Score.of(21, 19), Score.of(0, 21));
        assertThat(Texts.scores(games)).isEqualTo("21-19,0-21");
        assertThat(Texts.scores("21-19,0-21")).isEqualTo(games);
        assertThat(Texts.scores("")).isEmpty();
    }

    @Test
    void pools_and_counts_stand_by_name() {
        TreeMap<String, List<ClubId>> pools = new TreeMap<>();
        pools.put("A", List.of(ClubId.of("N"), ClubId.of("S")));
        pools.put("B", List.of());
        assertThat(Texts.pools(pools)).isEqualTo("A,N,S\nB\n");
        assertThat(Texts.pools("A,N,S\nB\n")).isEqualTo(pools);
        pools.put("C,D", List.of());
        assertThatThrownBy(() -> Texts.pools(pools)).hasMessage("not a pool name: \"C,D\"");
        TreeMap<String, Integer> counts = new TreeMap<>();
        assertThat(Texts.counts(Texts.counts(counts))).isEqualTo(counts);
        counts.put("film", 3);
        counts.put("form", 18);
        assertThat(Texts.counts(counts)).isEqualTo("film=3,form=18");
        assertThat(Texts.counts("film=3,form=18")).isEqualTo(counts);
    }
}
