package tiewright.lineup.club;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import tiewright.event.Days;
import tiewright.event.Event;
import tiewright.event.How;
import tiewright.event.PlayerId;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.lineup.Freshness;

/** What players have behind them, from cards and times of the event. */
class DayLoadsTest {
    private static Freshness freshness(Event event, String now) {
        Tie tie = event.tie(TieId.of("A1")).orElseThrow();
        return DayLoads.of(event, tie, Optional.of(Days.moment(now)), Freshness.Cost.USUAL);
    }

    private static Freshness.Load load(Event event, String now, String player) {
        return freshness(event, now).load(PlayerId.of(player));
    }

    @Test
    void nobody_has_anything_behind_before_the_first_tie() {
        assertThat(load(Days.oneTie().event(), "09:30", "N1")).isEqualTo(new Freshness.Load(0, OptionalInt.empty()));
    }

    @Test
    void a_rubber_counts_for_both_sides_and_wears_off() {
        Event event = Days.oneTie().opened("A1").cards("A1", "11-2", "11-3").event();
        assertThat(load(event, "10:16", "N1").rubbers()).isEqualTo(1);
        assertThat(load(event, "10:16", "S3").rubbers()).isEqualTo(1);
        assertThat(load(event, "10:16", "N5").rubbers()).isZero();
        int soon = load(event, "10:20", "N1").minutes().orElseThrow();
        assertThat(load(event, "10:32", "N1").minutes().orElseThrow()).isEqualTo(soon + 12);
        assertThat(freshness(event, "11:30").loss(PlayerId.of("N1"))).isZero();
    }

    @Test
    void a_retired_rubber_was_played_and_a_walkover_was_not() {
        Event event = Days.oneTie()
                .opened("A1")
                .card("A1", "1", "5-9", How.RETIRED_HOME)
                .card("A1", "2", "11-0", How.WALKOVER_AWAY)
                .event();
        assertThat(load(event, "10:20", "N1").rubbers()).isEqualTo(1);
        assertThat(load(event, "10:20", "N3").rubbers()).isZero();
    }
}
