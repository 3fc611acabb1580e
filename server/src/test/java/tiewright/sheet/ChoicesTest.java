package tiewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.sheet.Asked.DECIDER;
import static tiewright.sheet.Asked.N;
import static tiewright.sheet.Asked.SHEETS;
import static tiewright.sheet.Asked.without;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.conditions.Setting;
import tiewright.event.Days;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;

class ChoicesTest {
    /** The reason at a seat, empty when the player is free there. */
    private static Optional<String> why(
            Days day, Map<RubberNo, List<PlayerId>> soFar, int rubber, int seat, String player) {
        return Choices.of(new SheetOf(day.event(), SHEETS, N, day.directory()), soFar)
                .rubbers()
                .get(rubber - 1)
                .seats()
                .get(seat - 1)
                .players()
                .stream()
                .filter(choice -> choice.player().code().equals(player))
                .findFirst()
                .orElseThrow()
                .whyNot()
                .map(Asked::code);
    }

    /** Such as {@code 1:12 2:3}: who sits in which rubber so far. */
    private static Map<RubberNo, List<PlayerId>> filled(String text) {
        Map<RubberNo, List<PlayerId>> filled = new HashMap<>();
        for (String part : text.split(" ")) {
            if (!part.isEmpty()) {
                filled.put(
                        RubberNo.of(part.charAt(0) - '0'),
                        part.substring(2)
                                .chars()
                                .mapToObj(c -> PlayerId.of("N" + (char) c))
                                .toList());
            }
        }
        return filled;
    }

    @Test
    void offers_the_whole_squad_at_every_seat_of_an_empty_sheet() {
        Choices choices = Choices.of(
                new SheetOf(Days.oneTie().event(), SHEETS, N, Days.oneTie().directory()), Map.of());
        assertThat(choices.rubbers())
                .hasSize(4)
                .allSatisfy(rubber -> assertThat(rubber.seats()).hasSize(2).allSatisfy(seat -> {
                    assertThat(seat.chosen()).isEmpty();
                    assertThat(seat.players()).hasSize(8).allMatch(Choices.Choice::isFree);
                }));
    }

    @Test
    void shows_who_sits_where_and_leaves_them_free_in_their_own_seat() {
        Choices choices = Choices.of(
                new SheetOf(Days.oneTie().event(), SHEETS, N, Days.oneTie().directory()), filled("1:12"));
        assertThat(choices.rubbers().get(0).seats())
                .extracting(Choices.Seat::chosen)
                .containsExactly(Optional.of(PlayerId.of("N1")), Optional.of(PlayerId.of("N2")));
        assertThat(why(Days.oneTie(), filled("1:12"), 1, 1, "N1")).isEmpty();
        assertThat(why(Days.oneTie(), filled("1:12"), 1, 2, "N1")).contains("own-partner");
    }

    @Test
    void says_the_rule_for_each_who_cannot_be_chosen() {
        assertThat(why(Days.oneTie(), filled("1:12"), 2, 1, "N1")).contains("player-twice");
        assertThat(why(without(Days.oneTie(), "N3"), filled(""), 1, 1, "N3")).contains("absent");
        Days order = Days.oneTie().with(Setting.ORDER_OF_STRENGTH, "rank-sum");
        assertThat(why(order, filled("2:36 1:1"), 1, 2, "N8")).isNotEqualTo(Optional.of("rank-sum"));
        assertThat(why(order, filled("2:35 1:1"), 1, 2, "N8")).contains("rank-sum");
        assertThat(why(order, filled("1:7"), 1, 2, "N8")).contains("dead-end");
        assertThat(why(order, filled("1:4"), 1, 2, "N5")).isEmpty();
        Days twice = Days.oneTie().with(Setting.MAX_RUBBERS_PER_PLAYER, "2");
        assertThat(why(twice, filled("1:12"), 2, 1, "N1")).isEmpty();
        assertThat(why(twice, filled("1:12 2:13"), 3, 1, "N1")).contains("too-often");
    }

    @Test
    void says_the_rule_of_the_decider_too() {
        Days day = Asked.level().with(Setting.DECIDER, "one-from-each");
        List<Choices.Choice> second = Choices.of(
                        new SheetOf(day.event(), DECIDER, N, day.directory()),
                        Map.of(RubberNo.DECIDER, List.of(PlayerId.of("N1"))))
                .rubbers()
                .get(0)
                .seats()
                .get(1)
                .players();
        assertThat(second.stream()
                        .filter(choice -> !choice.isFree())
                        .map(choice -> Asked.code(choice.whyNot().orElseThrow())))
                .containsExactly("own-partner", "same-rubber");
    }

    /** Whoever chooses only what is offered, in any order, ends with a legal sheet: nothing offered is a trap. */
    @Test
    void every_way_through_the_offered_choices_ends_legal() {
        for (int round = 0; round < 200; round++) {
            Random random = Seed.random(round);
            Days day = someDay(random);
            Map<RubberNo, List<PlayerId>> soFar = new HashMap<>();
            int possible = StrengthOrder.fullest(
                    day.event().squad(N).size(),
                    day.event().conditions().maxRubbersPerPlayer(),
                    day.event().conditions().rubbers());
            List<Integer> seats = new ArrayList<>();
            for (int rubber = 1; rubber <= possible; rubber++) {
                seats.addAll(List.of(rubber, rubber));
            }
            java.util.Collections.shuffle(seats, random);
            for (int rubber : seats) {
                choose(day, soFar, rubber, random, Seed.rerun(round));
            }
            assertThat(Asked.codes(
                            SheetRules.faults(new SheetOf(day.event(), SHEETS, N, day.directory()), sheet(day, soFar))))
                    .as(Seed.rerun(round))
                    .isEmpty();
        }
    }

    private static void choose(Days day, Map<RubberNo, List<PlayerId>> soFar, int rubber, Random random, String rerun) {
        List<PlayerId> pair = new ArrayList<>(soFar.getOrDefault(RubberNo.of(rubber), List.of()));
        List<PlayerId> free = Choices.of(new SheetOf(day.event(), SHEETS, N, day.directory()), soFar)
                .rubbers()
                .get(rubber - 1)
                .seats()
                .get(pair.size())
                .players()
                .stream()
                .filter(Choices.Choice::isFree)
                .map(Choices.Choice::player)
                .toList();
        assertThat(free).as(rerun).isNotEmpty();
        pair.add(free.get(random.nextInt(free.size())));
        soFar.put(RubberNo.of(rubber), pair);
    }

    private static Days someDay(Random random) {
        return Days.aDay()
                .club("N", 2 + random.nextInt(8))
                .club("S", 8)
                .poolTie("A1", "A", 1, "N", "S")
                .with(Setting.RUBBERS, Integer.toString(3 + random.nextInt(2)))
                .with(Setting.MAX_RUBBERS_PER_PLAYER, Integer.toString(1 + random.nextInt(2)))
                .with(
                        Setting.ORDER_OF_STRENGTH,
                        List.of("none", "rank-sum", "strongest-first").get(random.nextInt(3)));
    }

    private static Sheet sheet(Days day, Map<RubberNo, List<PlayerId>> soFar) {
        TreeMap<RubberNo, Optional<Pair>> pairs = new TreeMap<>();
        for (RubberNo rubber : SheetRules.rubbers(day.event(), SHEETS)) {
            pairs.put(rubber, Optional.ofNullable(soFar.get(rubber)).map(pair -> Pair.of(pair.get(0), pair.get(1))));
        }
        return new Sheet(pairs);
    }
}
