package tiewright.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.conditions.Withdrawal;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.OfficialFact;
import tiewright.event.SetUpFact;
import tiewright.event.Stage;
import tiewright.event.Tie;
import tiewright.event.TieId;

class DrawDecisionsTest {
    private static final DrawPools DRAW = new DrawPools(3, "seven grey owls", "Ida Brandt");
    private static final LayOutKnockout KNOCKOUT = new LayOutKnockout(2, true, "nine red kites", "Ida Brandt");

    private static Days clubs(int number) {
        Days day = Days.aDay().by(Days.organiser());
        IntStream.rangeClosed(1, number)
                .forEach(i -> day.fact(new SetUpFact.ClubEntered(
                        ClubId.of("C" + i),
                        "Club " + i,
                        Optional.of(i <= 3 ? "Ashford" : "Town " + i),
                        i <= 2 ? OptionalInt.of(i) : OptionalInt.empty())));
        return day;
    }

    private static void seal(Days day, String tie) {
        day.fact(new ExchangeFact.SheetSealed(
                ExchangeId.sheets(TieId.of(tie)), day.tie(tie).home().club().orElseThrow(), "0".repeat(64), false));
    }

    private static List<Tie> knockout(Days day) {
        return day.event().ties().values().stream()
                .filter(tie -> tie.stage() == Stage.KNOCKOUT)
                .toList();
    }

    @Test
    void eleven_clubs_in_three_pools_meet_once_each_and_towns_are_apart() {
        Days day = clubs(11).does(DRAW);
        assertThat(day.event().pools().values()).extracting(Collection::size).containsExactly(4, 4, 3);
        assertThat(day.event().ties()).hasSize(6 + 6 + 3);
        day.event().pools().forEach((pool, clubs) -> {
            Set<Set<ClubId>> met = new HashSet<>();
            day.event()
                    .tiesOfPool(pool)
                    .forEach(tie -> met.add(Set.of(
                            tie.home().club().orElseThrow(), tie.away().club().orElseThrow())));
            assertThat(met).hasSize(clubs.size() * (clubs.size() - 1) / 2);
            assertThat(clubs.stream()
                            .filter(c -> Set.of("C1", "C2", "C3").contains(c.code()))
                            .count())
                    .as(pool)
                    .isEqualTo(1);
        });
        assertThat(day.event().tiesOfPool("A")).extracting(Tie::round).containsExactly(1, 1, 2, 2, 3, 3);
        assertThat(day.event().tiesOfPool("A"))
                .extracting(t -> t.id().code())
                .containsExactly("A1", "A2", "A3", "A4", "A5", "A6");
        assertThat(day.event().draw().orElseThrow().spokenSeed()).isEqualTo("seven grey owls");
    }

    @Test
    void the_same_words_give_the_same_draw() {
        assertThat(clubs(11).does(DRAW).event().pools())
                .isEqualTo(clubs(11).does(DRAW).event().pools());
        assertThat(IntStream.range(0, 10)
                        .mapToObj(i -> clubs(11)
                                .does(new DrawPools(3, "words " + i, "Ida"))
                                .event()
                                .pools())
                        .distinct()
                        .count())
                .isGreaterThan(5);
    }

    @Test
    void refuses_a_draw_without_words_witness_clubs_or_conditions() {
        assertThat(Said.codes(clubs(11), new DrawPools(3, " ", "")))
                .containsExactly("setup.missing.spokenSeed", "setup.missing.witness");
        assertThat(Said.codes(clubs(5), DRAW)).containsExactly("draw.pool-too-small");
        assertThat(Said.codes(clubs(5), new DrawPools(0, "w", "i"))).containsExactly("draw.no-pool");
        assertThat(Said.codes(clubs(5), new DrawPools(27, "w", "i"))).containsExactly("draw.too-many-pools");
        assertThat(Said.codes(clubs(17), new DrawPools(1, "w", "i"))).containsExactly("draw.pool-too-large");
        assertThat(Said.codes(Days.empty().by(Days.organiser()), DRAW))
                .containsExactly("setup.conditions-first", "draw.pool-too-small");
        assertThat(Said.codes(clubs(11).by(Days.desk()), DRAW)).containsExactly("setup.organiser-only");
    }

    @Test
    void can_be_drawn_again_by_notice_until_a_sheet_is_sealed() {
        Days day = clubs(11).does(DRAW).does(new DrawPools(2, "other words", "Ida Brandt"));
        assertThat(day.event().pools()).containsOnlyKeys("A", "B");
        assertThat(day.event().ties()).hasSize(15 + 10);
        assertThat(day.event().notices())
                .singleElement()
                .satisfies(
                        posted -> assertThat(Days.said(posted.notice().text())).contains("drawn again"));
        seal(day, "A1");
        assertThat(Said.codes(day, DRAW)).containsExactly("setup.pools-have-begun");
    }

    @Test
    void a_club_that_withdrew_is_left_out_of_a_new_draw() {
        Days day = clubs(11)
                .fact(new OfficialFact.ClubWithdrawn(ClubId.of("C5"), Optional.empty(), Withdrawal.ANNUL, 1))
                .does(DRAW);
        assertThat(day.event().pools().values().stream().flatMap(List::stream).collect(Collectors.toSet()))
                .hasSize(10)
                .doesNotContain(ClubId.of("C5"));
    }

    @Test
    void the_knockout_stands_before_the_pools_are_played_and_fills_when_tables_are_signed() {
        Days day = clubs(11).does(DRAW).does(KNOCKOUT);
        assertThat(knockout(day)).extracting(t -> t.id().code()).containsExactly("QF2", "QF3", "SF1", "SF2", "P3", "F");
        assertThat(knockout(day)).allSatisfy(tie -> assertThat(tie.isReady()).isFalse());
        Days late = clubs(11).does(DRAW);
        late.event().pools().forEach((pool, clubs) -> late.fact(new OfficialFact.TableSigned(pool, clubs, "Ida")));
        late.does(KNOCKOUT);
        assertThat(knockout(late).stream().filter(tie -> tie.id().code().startsWith("QF")))
                .allSatisfy(tie -> assertThat(tie.isReady()).isTrue());
    }

    @Test
    void refuses_a_knockout_that_cannot_be() {
        assertThat(Said.codes(clubs(11), KNOCKOUT)).containsExactly("setup.no-pools-yet");
        Days day = clubs(11).does(DRAW);
        assertThat(Said.codes(day, new LayOutKnockout(0, false, "w", "i"))).containsExactly("draw.no-qualifier");
        assertThat(Said.codes(day, new LayOutKnockout(4, false, "w", "i"))).containsExactly("setup.pool-has-too-few");
        assertThat(Said.codes(day, new LayOutKnockout(5, false, "w", "i"))).contains("draw.too-many-from-a-pool");
        assertThat(Said.codes(day, new LayOutKnockout(2, false, "", "")))
                .containsExactly("setup.missing.spokenSeed", "setup.missing.witness");
        Days one = clubs(4).does(new DrawPools(1, "w", "i"));
        assertThat(Said.codes(one, new LayOutKnockout(1, false, "w", "i"))).containsExactly("draw.too-few-qualifiers");
        assertThat(Said.codes(day.with(Setting.DECIDER, "none"), KNOCKOUT))
                .containsExactly("setup.knockout-could-end-level");
        assertThat(Said.codes(Days.oneTie().poolTie("F", "B", 1, "N", "S").by(Days.organiser()), KNOCKOUT))
                .containsExactly("setup.tie-code-taken");
    }

    @Test
    void the_knockout_is_drawn_again_by_notice_until_one_of_its_sheets_is_sealed() {
        Days day = clubs(11).does(DRAW).does(KNOCKOUT).does(new LayOutKnockout(1, false, "once more", "Ida"));
        assertThat(knockout(day)).hasSize(2);
        assertThat(day.event().notices()).hasSize(1);
        day.event().pools().forEach((pool, clubs) -> day.fact(new OfficialFact.TableSigned(pool, clubs, "Ida")));
        day.does(new LayOutKnockout(1, false, "and again", "Ida"));
        Tie ready = knockout(day).stream().filter(Tie::isReady).findFirst().orElseThrow();
        seal(day, ready.id().code());
        assertThat(Said.codes(day, KNOCKOUT)).containsExactly("setup.knockout-has-begun");
    }

    @Test
    void pools_drawn_again_take_the_knockout_with_them() {
        Days day = clubs(11).does(DRAW).does(KNOCKOUT).does(new DrawPools(2, "other words", "Ida Brandt"));
        assertThat(knockout(day)).extracting(t -> t.id().code()).containsExactly("SF1", "SF2", "P3", "F");
        assertThat(knockout(day).get(0).home().from().orElseThrow()).hasToString("A-1");
        assertThat(day.event().knockoutDraw().orElseThrow().spokenSeed()).isEqualTo("other words");
    }
}
