package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Withdrawal;

/** Who may come to a tie, and so has to know of its time. */
class MayPlayTest {
    /** Pools A (N, S) and B (E, W); semi-final, final and a tie for third place. */
    private static Days day() {
        return Days.aDay()
                .clubs("W", "N", "S", "E", "V")
                .poolTie("A1", "A", 1, "N", "S")
                .poolTie("B1", "B", 1, "W", "E")
                .knockoutTie("SF", 1, "A-1", "V")
                .knockoutTie("F", 2, "winner-SF", "B-1")
                .knockoutTie("P3", 2, "loser-SF", "C-1");
    }

    private static SortedSet<ClubId> of(Days day, String tie) {
        return MayPlay.of(day.event(), TieId.of(tie));
    }

    private static ClubId[] clubs(String codes) {
        return codes.chars()
                .mapToObj(code -> ClubId.of(Character.toString(code)))
                .toArray(ClubId[]::new);
    }

    @Test
    void the_clubs_that_are_known_are_those() {
        assertThat(of(day(), "B1")).containsExactly(clubs("EW"));
    }

    @Test
    void an_open_place_may_go_to_everybody_of_its_pool_or_of_the_tie_it_comes_from() {
        assertThat(of(day(), "SF")).containsExactly(clubs("NSV"));
        assertThat(of(day(), "F")).containsExactly(clubs("ENSVW"));
        assertThat(of(day(), "P3")).as("a pool that is not there has nobody").containsExactly(clubs("NSV"));
        assertThat(of(day(), "none")).isEmpty();
    }

    @Test
    void a_place_that_is_taken_is_its_clubs_alone() {
        Days day = day().fact(new DrawFact.SlotFilled(TieId.of("SF"), Side.HOME, ClubId.of("S")));
        assertThat(of(day, "F")).containsExactly(clubs("ESVW"));
    }

    @Test
    void a_club_that_withdrew_needs_to_know_nothing() {
        Days day = day().fact(new OfficialFact.ClubWithdrawn(ClubId.of("N"), Optional.empty(), Withdrawal.KEEP, 1));
        assertThat(of(day, "SF")).containsExactly(clubs("SV"));
    }

    @Test
    void several_ties_are_asked_together() {
        assertThat(MayPlay.of(day().event(), List.of(TieId.of("SF"), TieId.of("B1"))))
                .containsExactly(clubs("ENSVW"));
        assertThat(MayPlay.of(day().event(), List.of())).isEmpty();
    }

    /** A fold bears whatever lies in a ledger: two ties may wait for each other. */
    @Test
    void ties_that_wait_for_each_other_come_to_an_end() {
        Days day =
                Days.aDay().clubs("N", "S").knockoutTie("X", 1, "winner-Y", "N").knockoutTie("Y", 1, "loser-X", "S");
        assertThat(of(day, "X")).containsExactly(clubs("NS"));
    }

    /** What is known of a place can only take clubs away. */
    @Test
    void who_knows_more_of_the_places_gets_the_same_clubs_or_fewer() {
        Event event = day().event();
        ClubId n = ClubId.of("N");
        TieId last = TieId.of("F");
        assertThat(MayPlay.isAmong(event, last, n, (club, from) -> true)).isTrue();
        assertThat(MayPlay.isAmong(event, last, n, (club, from) -> !from.of().equals("A")))
                .as("not first of its pool")
                .isFalse();
        assertThat(MayPlay.isAmong(event, last, n, (club, from) -> !from.of().equals("SF")))
                .as("not the winner of the semi-final")
                .isFalse();
        assertThat(MayPlay.isAmong(event, last, n, (club, from) -> !from.of().equals("B")))
                .as("another way is open")
                .isTrue();
        assertThat(MayPlay.isAmong(event, TieId.of("B1"), n, (club, from) -> true))
                .as("its clubs are known")
                .isFalse();
    }
}
