package tiewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.Seed;
import tiewright.conditions.Conditions;
import tiewright.conditions.OrderOfStrength;
import tiewright.conditions.Plays;
import tiewright.conditions.Preset;
import tiewright.conditions.RubberKind;
import tiewright.conditions.RubberKinds;
import tiewright.conditions.RubberWeights;
import tiewright.conditions.Setting;
import tiewright.conditions.TieRubbers;

/** Sheets with rubbers that not everybody may stand in, against going through every sheet there is. */
class KindsOfRubbersTest {
    /** {@code wwm-}: two who play in women's rubbers, one in men's, one of whom nothing is stated. */
    private static List<Optional<Plays>> squad(String letters) {
        return letters.chars()
                .mapToObj(letter -> letter == 'w'
                        ? Optional.of(Plays.WOMEN)
                        : letter == 'm' ? Optional.of(Plays.MEN) : Optional.<Plays>empty())
                .toList();
    }

    private static TieRubbers rubbers(String kinds) {
        RubberKinds each = RubberKinds.parse(kinds).orElseThrow();
        return new TieRubbers(kinds.split(";").length, RubberWeights.EQUAL, each);
    }

    /** By hand: as many as can be filled, of equally many those that fill the first rubbers. */
    @ParameterizedTest
    @CsvSource({
        "wwmm, 1, women;men, '[1, 2]'",
        "wwmm, 1, mixed;women;men, '[2, 3]'",
        "wwmm, 1, mixed;women;mixed, '[1, 3]'",
        "mmmm, 1, women;men;mixed;open, '[2, 4]'",
        "mmmm, 1, women;women, '[]'",
        "----, 1, mixed;open;men;open, '[2, 4]'",
        "wm, 2, mixed;mixed;women, '[1, 2]'",
        "wwm, 1, women;mixed;open, '[1]'",
        "wwm, 2, women;mixed;open, '[1, 2, 3]'",
        "wwwwmmmm, 1, open;open;open;open, '[1, 2, 3, 4]'",
    })
    void a_squad_fills_the_most_rubbers_and_of_equally_many_the_first(
            String squad, int most, String kinds, String filled) {
        assertThat(Fillable.of(squad(squad), most, rubbers(kinds)).toString()).isEqualTo(filled);
    }

    /** By hand, four and four: 6 x 6 x 2 x 2; 6 x 6; 4! x 4! / 1; the open ones 8! / 2^4. */
    @ParameterizedTest
    @CsvSource({"women;men;mixed;open, 144", "women;women;men;men, 36", "mixed;mixed;mixed;mixed, 576", "open, 2520"})
    void counts_sheets_of_four_women_and_four_men(String kinds, long sheets) {
        Conditions conditions = Conditions.of(Preset.CLUB_DAY).with(Setting.RUBBER_KINDS, kinds);
        assertThat(SheetCount.of(
                        IntStream.rangeClosed(1, 8).mapToObj(OptionalInt::of).toList(), squad("wwwwmmmm"), conditions))
                .contains(new SheetCount(BigInteger.valueOf(sheets), BigInteger.valueOf(sheets)));
    }

    @Test
    void counts_what_going_through_every_sheet_counts() {
        for (int round = 0; round < 120; round++) {
            Random random = Seed.random(round);
            int players = 4 + random.nextInt(3);
            List<Optional<Plays>> plays = IntStream.range(0, players)
                    .mapToObj(any -> squad("wm-").get(random.nextInt(3)))
                    .toList();
            String kinds = String.join(
                    ";",
                    Stream.generate(() -> RubberKind.values()[random.nextInt(4)].code())
                            .limit(2 + random.nextInt(2))
                            .toList());
            int most = 1 + random.nextInt(2);
            OrderOfStrength order = OrderOfStrength.values()[random.nextInt(3)];
            TieRubbers rubbers = rubbers(kinds);
            Conditions conditions = Conditions.of(Preset.CLUB_DAY)
                    .with(Setting.RUBBERS, Integer.toString(rubbers.count()))
                    .with(Setting.RUBBER_KINDS, kinds)
                    .with(Setting.MAX_RUBBERS_PER_PLAYER, Integer.toString(most))
                    .with(Setting.ORDER_OF_STRENGTH, order.code());
            SheetCount counted = SheetCount.of(
                            IntStream.rangeClosed(1, players)
                                    .mapToObj(OptionalInt::of)
                                    .toList(),
                            plays,
                            conditions)
                    .orElseThrow();
            String as = plays + " " + kinds + " " + most + " " + order + ", " + Seed.rerun(round);
            Every every = new Every(plays, most, rubbers);
            assertThat(counted.all().longValue()).as(as).isEqualTo(every.count(OrderOfStrength.NONE));
            assertThat(counted.legal().longValue()).as(as).isEqualTo(every.count(order));
        }
    }

    /** Every sheet, pair by pair, full or with gaps; then those that fill most, and of these the first rubbers. */
    private static final class Every {
        private final List<Optional<Plays>> plays;
        private final int most;
        private final TieRubbers rubbers;
        private final List<int[][]> sheets = new ArrayList<>();

        Every(List<Optional<Plays>> plays, int most, TieRubbers rubbers) {
            this.plays = plays;
            this.most = most;
            this.rubbers = rubbers;
            name(new int[rubbers.count()][], 0);
        }

        private void name(int[][] sheet, int rubber) {
            if (rubber == sheet.length) {
                sheets.add(sheet.clone());
                return;
            }
            sheet[rubber] = null;
            name(sheet, rubber + 1);
            for (int one = 0; one < plays.size(); one++) {
                for (int other = one + 1; other < plays.size(); other++) {
                    if (times(sheet, rubber, one) < most
                            && times(sheet, rubber, other) < most
                            && may(rubber, one, other)) {
                        sheet[rubber] = new int[] {one, other};
                        name(sheet, rubber + 1);
                        sheet[rubber] = null;
                    }
                }
            }
        }

        private static long times(int[][] sheet, int until, int player) {
            return IntStream.range(0, until)
                    .filter(rubber ->
                            sheet[rubber] != null && (sheet[rubber][0] == player || sheet[rubber][1] == player))
                    .count();
        }

        private boolean may(int rubber, int one, int other) {
            String both = Stream.of(one, other)
                    .map(player -> plays.get(player).map(Plays::code).orElse("-"))
                    .sorted()
                    .reduce("", String::concat);
            return switch (rubbers.kinds().of(rubber + 1)) {
                case OPEN -> true;
                case WOMEN -> both.equals("womenwomen");
                case MEN -> both.equals("menmen");
                case MIXED -> both.equals("menwomen");
            };
        }

        /** As text, so that the most filled sorts last and of equally many the one with the first rubbers. */
        private static String filled(int[][] sheet) {
            String each =
                    Arrays.stream(sheet).map(pair -> pair == null ? "0" : "1").reduce("", String::concat);
            return Long.toString(each.chars().filter(c -> c == '1').count()) + " " + each;
        }

        long count(OrderOfStrength order) {
            String best = sheets.stream()
                    .map(Every::filled)
                    .sorted()
                    .reduce((a, b) -> b)
                    .orElseThrow();
            return sheets.stream()
                    .filter(sheet -> filled(sheet).equals(best) && isKept(sheet, order))
                    .count();
        }

        /** Ranks are 1, 2, … in the order of the squad. */
        private boolean isKept(int[][] sheet, OrderOfStrength order) {
            TreeMap<RubberKind, List<Integer>> sums = new TreeMap<>();
            for (int rubber = 0; rubber < sheet.length; rubber++) {
                if (sheet[rubber] != null) {
                    sums.computeIfAbsent(rubbers.kinds().of(rubber + 1), kind -> new ArrayList<>())
                            .add(sheet[rubber][0] + sheet[rubber][1]);
                }
            }
            return sums.values().stream().allMatch(of -> switch (order) {
                case NONE -> true;
                case RANK_SUM -> of.equals(of.stream().sorted().toList());
                case STRONGEST_FIRST -> of.stream().noneMatch(sum -> sum < of.get(0));
            });
        }
    }
}
