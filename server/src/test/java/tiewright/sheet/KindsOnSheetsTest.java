package tiewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.sheet.Asked.DECIDER;
import static tiewright.sheet.Asked.N;
import static tiewright.sheet.Asked.SHEETS;
import static tiewright.sheet.Asked.sheet;
import static tiewright.sheet.Asked.why;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.Seed;
import tiewright.conditions.Plays;
import tiewright.conditions.RubberKind;
import tiewright.conditions.Setting;
import tiewright.event.Days;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.Side;
import tiewright.event.TieId;

/**
 * Rubbers that not everybody may stand in, in the sheets of a day. That rubbers are for men, for women and mixed is published
 * (Hampshire inter-district knock-out, rules 6-7); what else is held here is plain counting.
 */
class KindsOnSheetsTest {
    private static final String EACH = "women;men;mixed;open";

    /** Four who play in women's rubbers, then four who play in men's, on both sides. */
    private static Days day(String kinds) {
        return Days.oneTie()
                .with(Setting.RUBBERS, Integer.toString(kinds.split(";").length))
                .with(Setting.RUBBER_KINDS, kinds)
                .stating("N", "wwwwmmmm")
                .stating("S", "wwwwmmmm");
    }

    private static SheetOf whose(Days day) {
        return new SheetOf(day.event(), SHEETS, N, day.directory());
    }

    private static List<Refusal> faults(Days day, String pairs) {
        return SheetRules.faults(whose(day), sheet("N", pairs));
    }

    private static List<String> codes(Days day, String pairs) {
        return Asked.codes(faults(day, pairs));
    }

    @Test
    void each_kind_takes_those_who_state_it_in_either_column() {
        assertThat(codes(day(EACH), "12 56 37 48")).isEmpty();
        assertThat(codes(day(EACH), "12 56 73 84")).isEmpty();
        assertThat(codes(day(EACH), "12 56 37 48".replace("48", "84"))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "15 67 38 24, sheet-1, N5, women",
        "12 35 47 68, sheet-2, N3, men",
    })
    void who_states_otherwise_is_named_with_the_rubber(String pairs, String field, String player, String kind) {
        List<Refusal> faults = faults(day(EACH), pairs);
        assertThat(Asked.codes(faults)).containsExactly("not-of-kind");
        assertThat(faults.get(0).field()).isEqualTo(field);
        assertThat(faults.get(0).data())
                .containsEntry("player", PlayerId.of(player))
                .containsEntry("kind", kind);
    }

    /** A refusal never tells apart who states the other kind and who states nothing. */
    @Test
    void what_somebody_states_instead_is_in_no_refusal() {
        Days nothing = day(EACH).stating("N", "wwww-mmm");
        List<Refusal> other = faults(day(EACH), "15 67 38 24");
        assertThat(faults(nothing, "15 67 38 24")).isEqualTo(other);
        assertThat(faults(nothing, "12 67 35 48")).extracting(Refusal::code).containsExactly("sheet.not-of-kind");
    }

    @Test
    void a_mixed_rubber_needs_one_of_each() {
        assertThat(codes(day(EACH), "12 56 34 78")).containsExactly("not-mixed");
        assertThat(codes(day(EACH), "12 56 78 34")).containsExactly("not-mixed");
        assertThat(codes(day(EACH).stating("N", "wwwwmmm-"), "12 56 38 47")).containsExactly("not-of-kind");
    }

    @Test
    void the_order_of_strength_is_compared_within_one_kind() {
        Days ranked = day("men;women;men;women").with(Setting.ORDER_OF_STRENGTH, "rank-sum");
        assertThat(codes(ranked, "56 12 78 34")).isEmpty();
        assertThat(codes(ranked, "78 12 56 34")).containsExactly("rank-sum");
        assertThat(faults(ranked, "78 34 56 12")).extracting(Refusal::field).containsExactly("sheet-3", "sheet-4");
        Days strongest = ranked.with(Setting.ORDER_OF_STRENGTH, "strongest-first");
        assertThat(codes(strongest, "56 12 78 34")).isEmpty();
        assertThat(codes(strongest, "56 34 78 12")).containsExactly("strongest-first");
    }

    @Test
    void a_rubber_that_nobody_here_may_fill_stays_empty_without_fault() {
        Days noWomen = day(EACH).stating("N", "mmmmmmmm");
        assertThat(codes(noWomen, "- 12 - 34")).isEmpty();
        assertThat(codes(noWomen, "- 12 - -")).containsExactly("not-full");
        assertThat(codes(noWomen, "- - - 34")).containsExactly("not-full");
    }

    @Test
    void a_short_squad_fills_the_most_rubbers_and_of_a_kind_those_from_the_top() {
        Days short4 = Asked.without(day("mixed;women;mixed"), "N3", "N4", "N7", "N8");
        assertThat(codes(short4, "15 - 26")).isEmpty();
        assertThat(codes(short4, "- 12 -")).containsExactly("not-full", "not-full");
        Days three = Asked.without(day("women;men;women"), "N3", "N4");
        assertThat(codes(three, "12 56 -")).isEmpty();
        assertThat(codes(three, "- 56 12")).containsExactly("gap");
    }

    @Test
    void the_decider_is_open() {
        Days level = Days.oneTie()
                .stating("N", "wwwwmmmm")
                .stating("S", "wwwwmmmm")
                .with(Setting.RUBBER_KINDS, "women;women;men;men")
                .opened("A1")
                .cards("A1", "11-5", "11-5", "5-11", "5-11");
        SheetOf decider = new SheetOf(level.event(), DECIDER, N, level.directory());
        assertThat(SheetRules.faults(decider, Sheet.decider(Pair.of("N1", "N5"))))
                .isEmpty();
        assertThat(Choices.of(decider, Map.of()).rubbers().get(0).seats().get(0).players())
                .allMatch(Choices.Choice::isFree);
    }

    @Test
    void a_captain_is_refused_and_so_is_a_ruling_that_supplies_the_sheet() {
        Days day = day(EACH).by(Days.captain("N"));
        assertThat(why(day, Asked.seal("N"))).containsExactly("not-of-kind", "not-of-kind", "not-mixed");
        assertThat(why(day, Asked.seal("N", sheet("N", "12 56 37 48")))).isEmpty();
        day.by(Days.referee()).at("09:51");
        assertThat(why(day, new SupplySide(SHEETS, N, Asked.straight("N"), "from paper", "R. Jansen")))
                .containsExactly("not-of-kind", "not-of-kind", "not-mixed");
    }

    @Test
    void a_replaced_pair_keeps_the_kind_of_its_rubber() {
        Days day = day(EACH);
        day.opened(SHEETS, sheet("N", "12 56 37 48"), sheet("S", "12 56 37 48")).by(Days.desk());
        assertThat(why(day, replace(1, "15"))).containsExactly("not-of-kind", "player-twice");
        assertThat(why(day, replace(3, "38"))).containsExactly("player-twice");
        Days free = day.with(Setting.MAX_RUBBERS_PER_PLAYER, "2");
        assertThat(why(free, replace(3, "34"))).containsExactly("not-mixed");
        assertThat(why(free, replace(3, "38"))).isEmpty();
        assertThat(why(free, replace(4, "15"))).isEmpty();
    }

    private static ReplacePair replace(int rubber, String pair) {
        Optional<Pair> named =
                pair.equals("-") ? Optional.empty() : Optional.of(Pair.of("N" + pair.charAt(0), "N" + pair.charAt(1)));
        return new ReplacePair(SHEETS, N, RubberNo.of(rubber), named, "no-show", "R. Jansen");
    }

    @Test
    void pairs_move_up_within_their_kind_only() {
        Days day = day("men;women;men;women").with(Setting.SHORT_SQUAD, "move-up");
        day.opened(SHEETS, sheet("N", "56 12 78 34"), sheet("S", "56 12 78 34")).by(Days.desk());
        day.does(replace(1, "-"));
        assertThat(IntStream.rangeClosed(1, 4).mapToObj(rubber -> home(day, rubber)))
                .containsExactly(
                        Optional.of(Pair.of("N7", "N8")),
                        Optional.of(Pair.of("N1", "N2")),
                        Optional.empty(),
                        Optional.of(Pair.of("N3", "N4")));
    }

    private static Optional<Pair> home(Days day, int rubber) {
        return day.event()
                .tie(TieId.of("A1"))
                .orElseThrow()
                .opened()
                .get(RubberNo.of(rubber))
                .pair(Side.HOME);
    }

    @Test
    void a_choice_says_at_once_who_may_not_stand_there() {
        Choices choices = Choices.of(whose(day(EACH)), Map.of(RubberNo.of(3), List.of(PlayerId.of("N1"))));
        assertThat(reasons(choices, 0, 0)).containsOnlyKeys("N1", "N5", "N6", "N7", "N8");
        assertThat(reasons(choices, 0, 0)).containsEntry("N5", "not-of-kind").containsEntry("N1", "player-twice");
        assertThat(reasons(choices, 2, 1)).containsEntry("N2", "not-mixed").doesNotContainKey("N5");
    }

    private static Map<String, String> reasons(Choices choices, int rubber, int seat) {
        return choices.rubbers().get(rubber).seats().get(seat).players().stream()
                .filter(choice -> !choice.isFree())
                .collect(Collectors.toMap(
                        choice -> choice.player().code(),
                        choice -> Asked.code(choice.whyNot().orElseThrow())));
    }

    /** Squads and kinds by lot: small enough that every sheet there is can be tried. */
    private record Lot(Days day, int players, List<Optional<Plays>> plays, int rubbers) {
        static Lot of(Random random) {
            int players = 4 + random.nextInt(2);
            int rubbers = 2 + random.nextInt(2);
            String letters = random.ints(players, 0, 3)
                    .mapToObj(i -> "wm-".substring(i, i + 1))
                    .collect(Collectors.joining());
            String kinds = Stream.generate(() -> RubberKind.values()[random.nextInt(4)].code())
                    .limit(rubbers)
                    .collect(Collectors.joining(";"));
            Days day = Days.aDay()
                    .club("N", players)
                    .club("S", 8)
                    .poolTie("A1", "A", 1, "N", "S")
                    .with(Setting.RUBBERS, Integer.toString(rubbers))
                    .with(Setting.RUBBER_KINDS, kinds)
                    .with(Setting.LATE_SHEET, "strength-order")
                    .with(Setting.MAX_RUBBERS_PER_PLAYER, Integer.toString(1 + random.nextInt(2)))
                    .with(
                            Setting.ORDER_OF_STRENGTH,
                            List.of("none", "rank-sum", "strongest-first").get(random.nextInt(3)))
                    .stating("N", letters);
            List<Optional<Plays>> plays = IntStream.rangeClosed(1, players)
                    .mapToObj(player -> day.directory().plays(PlayerId.of("N" + player)))
                    .toList();
            return new Lot(day, players, plays, rubbers);
        }

        boolean areOpen() {
            return day.event().conditions().tieRubbers().kinds().areOpen();
        }

        List<Sheet> legal() {
            List<Sheet> legal = new ArrayList<>();
            Sheets.everything("N", players, rubbers, sheet -> {
                if (SheetRules.faults(whose(day), sheet).isEmpty()) {
                    legal.add(sheet);
                }
            });
            return legal;
        }
    }

    /** {@link KindsOfRubbersTest} holds the count against going through everything without a rule of ours. */
    @Test
    void of_all_sheets_the_rules_take_as_many_as_are_counted() {
        for (int round = 0; round < 40; round++) {
            Lot lot = Lot.of(Seed.random(round));
            List<OptionalInt> ranks = IntStream.rangeClosed(1, lot.players())
                    .mapToObj(OptionalInt::of)
                    .toList();
            assertThat(lot.legal().size())
                    .as(Seed.rerun(round))
                    .isEqualTo(
                            SheetCount.of(ranks, lot.plays(), lot.day().event().conditions())
                                    .orElseThrow()
                                    .legal()
                                    .intValueExact());
        }
    }

    /** Of the seats filled so far, a player is offered exactly where some legal sheet goes on from there. */
    @Test
    void exactly_those_are_offered_with_whom_the_sheet_can_be_filled() {
        for (int round = 0; round < 40; round++) {
            Random random = Seed.random(round);
            Lot lot = Lot.of(random);
            if (lot.areOpen()) {
                continue;
            }
            List<Sheet> legal = lot.legal();
            Map<RubberNo, List<PlayerId>> soFar = new HashMap<>();
            List<Integer> seats = new ArrayList<>(IntStream.range(0, 2 * lot.rubbers())
                    .map(i -> 1 + i / 2)
                    .boxed()
                    .toList());
            Collections.shuffle(seats, random);
            for (int seat : seats) {
                RubberNo rubber = RubberNo.of(seat);
                List<PlayerId> pair = new ArrayList<>(soFar.getOrDefault(rubber, List.of()));
                List<PlayerId> free = free(lot, soFar, rubber);
                List<PlayerId> can = IntStream.rangeClosed(1, lot.players())
                        .mapToObj(player -> PlayerId.of("N" + player))
                        .filter(player -> legal.stream().anyMatch(sheet -> goesOn(sheet, soFar, rubber, player)))
                        .toList();
                assertThat(free)
                        .as("%s in %s, %s", soFar, rubber, Seed.rerun(round))
                        .isEqualTo(can);
                if (!free.isEmpty()) {
                    pair.add(free.get(random.nextInt(free.size())));
                    soFar.put(rubber, pair);
                }
            }
        }
    }

    private static List<PlayerId> free(Lot lot, Map<RubberNo, List<PlayerId>> soFar, RubberNo rubber) {
        int seat = soFar.getOrDefault(rubber, List.of()).size();
        return Choices.of(whose(lot.day()), soFar)
                .rubbers()
                .get(rubber.number() - 1)
                .seats()
                .get(seat)
                .players()
                .stream()
                .filter(Choices.Choice::isFree)
                .map(Choices.Choice::player)
                .toList();
    }

    private static boolean goesOn(Sheet sheet, Map<RubberNo, List<PlayerId>> soFar, RubberNo rubber, PlayerId player) {
        Map<RubberNo, List<PlayerId>> then = new TreeMap<>(soFar);
        List<PlayerId> pair = new ArrayList<>(soFar.getOrDefault(rubber, List.of()));
        if (pair.contains(player)) {
            return false;
        }
        pair.add(player);
        then.put(rubber, pair);
        return then.entrySet().stream()
                .allMatch(named -> sheet.pair(named.getKey())
                        .filter(both -> named.getValue().stream().allMatch(both::has))
                        .isPresent());
    }

    @Test
    void the_sheet_by_strength_is_legal_for_any_squad() {
        for (int round = 0; round < 200; round++) {
            Lot lot = Lot.of(Seed.random(round));
            assertThat(LateSheets.foreseen(whose(lot.day())))
                    .as(Seed.rerun(round))
                    .isPresent();
        }
    }

    @Test
    void the_sheet_by_strength_names_the_strongest_two_of_each_kind() {
        Days day = day("mixed;men;women;open").with(Setting.LATE_SHEET, "strength-order");
        assertThat(LateSheets.foreseen(whose(day))).contains(sheet("N", "15 67 23 48"));
    }
}
