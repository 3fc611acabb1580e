package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The codes of slots: our own, no source. */
class SlotSourceTest {
    @Test
    void reads_each_kind() {
        assertThat(SlotSource.parse("A-1")).contains(SlotSource.place("A", 1));
        assertThat(SlotSource.parse("winner-SF1")).contains(SlotSource.winner(TieId.of("SF1")));
        assertThat(SlotSource.parse("loser-QF-4")).contains(SlotSource.loser(TieId.of("QF-4")));
    }

    @Test
    void the_last_hyphen_parts_the_pool_from_its_place() {
        assertThat(SlotSource.parse("North-East-12")).contains(SlotSource.place("North-East", 12));
        assertThat(SlotSource.parse("1-2-3")).contains(SlotSource.place("1-2", 3));
    }

    @Test
    void writes_what_it_reads() {
        for (String code : List.of("A-1", "A-999", "é-2", "winner-SF1", "loser-A-1", "winner--", "--1", "winners-1")) {
            assertThat(SlotSource.parse(code)).as(code).map(SlotSource::code).contains(code);
            assertThat(SlotSource.parse(code))
                    .as(code)
                    .map(SlotSource::toString)
                    .contains(code);
        }
    }

    @Test
    void anything_else_is_no_source() {
        for (String code : List.of(
                "", "A", "A-", "-1", "A-0", "A-01", "A-1000", "A-x", "A--", "A - 1", " A-1", "winner-", "loser-",
                "A,-1")) {
            assertThat(SlotSource.parse(code)).as(code).isEmpty();
        }
    }

    @Test
    void a_pool_cannot_be_mistaken_for_the_winner_of_a_tie() {
        assertThat(SlotSource.isPoolName("winner")).isFalse();
        assertThat(SlotSource.isPoolName("loser-x")).isFalse();
        assertThat(SlotSource.isPoolName("winners")).isTrue();
        assertThatThrownBy(() -> SlotSource.place("winner", 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void only_a_pool_has_places() {
        assertThatThrownBy(() -> new SlotSource(SlotSource.Kind.WINNER, "SF1", 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SlotSource.place("A", 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_tie_sends_on_who_won_or_lost_it_once_it_is_finished() {
        TieId tie = TieId.of("A1");
        Days day = Days.aDay().clubs("H", "W").poolTie("A1", "A", 1, "H", "W");
        int rubbers = day.event().conditions().rubbers();
        for (int rubber = 1; rubber < rubbers; rubber++) {
            day.card("A1", "" + rubber, "11-5");
        }
        assertThat(SlotSource.winner(tie).sent(day.event())).isEmpty();
        day.card("A1", "" + rubbers, "3-11");
        assertThat(SlotSource.winner(tie).sent(day.event())).contains(ClubId.of("H"));
        assertThat(SlotSource.loser(tie).sent(day.event())).contains(ClubId.of("W"));
        assertThat(SlotSource.place("A", 1).sent(day.event())).isEmpty();
        assertThat(SlotSource.winner(TieId.of("B1")).sent(day.event())).isEmpty();
    }
}
