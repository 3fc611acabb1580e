package tiewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.Seed;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;
import tiewright.conditions.Setting;

class SheetCountTest {
    private static Conditions conditions(int rubbers, String order, int most) {
        return Conditions.of(Preset.CLUB_DAY)
                .with(Setting.RUBBERS, String.valueOf(rubbers))
                .with(Setting.ORDER_OF_STRENGTH, order)
                .with(Setting.MAX_RUBBERS_PER_PLAYER, String.valueOf(most));
    }

    private static SheetCount count(List<OptionalInt> ranks, Conditions conditions) {
        return SheetCount.of(ranks, conditions).orElseThrow();
    }

    private static SheetCount counted(long legal, long all) {
        return new SheetCount(BigInteger.valueOf(legal), BigInteger.valueOf(all));
    }

    private static List<OptionalInt> ranked(int players) {
        return IntStream.rangeClosed(1, players).mapToObj(OptionalInt::of).toList();
    }

    /** Perfect matchings (2n-1)!!, On-Line Encyclopedia of Integer Sequences A001147, times the n! orders of the pairs. */
    @ParameterizedTest
    @CsvSource({"2,1,1", "4,2,3", "6,3,15", "8,4,105", "10,5,945"})
    void a_full_squad_has_its_matchings_in_every_order(int players, int rubbers, long matchings) {
        long orders = LongStream.rangeClosed(1, rubbers).reduce(1, (a, b) -> a * b);
        assertThat(count(ranked(players), conditions(rubbers, "none", 1)))
                .isEqualTo(counted(matchings * orders, matchings * orders));
    }

    /** All: multinomials, 8!/2!^4 and so on. Legal: counted once more in another language by going through them all. */
    @ParameterizedTest
    @CsvSource({"8,4,2520,199", "8,3,2520,568", "6,3,90,24"})
    void an_order_of_strength_leaves_few(int players, int rubbers, long all, long legal) {
        assertThat(count(ranked(players), conditions(rubbers, "rank-sum", 1))).isEqualTo(counted(legal, all));
    }

    @Test
    void a_short_squad_fills_what_it_can() {
        assertThat(count(ranked(6), conditions(4, "none", 1)).all()).isEqualTo(90);
        assertThat(count(ranked(7), conditions(4, "none", 1)).all()).isEqualTo(630);
    }

    @Test
    void a_player_may_play_twice_where_the_conditions_say_so() {
        // three players: 12, 13 and 23 in any order
        assertThat(count(ranked(3), conditions(3, "none", 2)).all()).isEqualTo(6);
    }

    @Test
    void an_order_of_strength_needs_every_rank() {
        List<OptionalInt> gap = List.of(OptionalInt.of(1), OptionalInt.empty());
        assertThatThrownBy(() -> SheetCount.of(gap, conditions(1, "rank-sum", 1)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** 14!/2!^7 ordered sheets; in the order of strength each set of pairs once for each way to order equal sums. */
    @Test
    void counts_fourteen_players_and_seven_rubbers_at_once() {
        assertThat(count(ranked(14), conditions(7, "none", 1))).isEqualTo(counted(681_080_400L, 681_080_400L));
        assertThat(count(ranked(14), conditions(7, "rank-sum", 1)).legal()).isEqualTo(ordered(14));
        assertThat(count(ranked(20), conditions(10, "none", 1)).all())
                .isEqualTo(new BigInteger("2375880867360000")); // 20!/2!^10
        assertThat(count(ranked(40), conditions(12, "none", 1)).all()).isPositive();
    }

    /** Every set of pairs of the whole squad, one after the other: 135,135 of fourteen. */
    private static BigInteger ordered(int players) {
        return BigInteger.valueOf(matchings(new ArrayList<>(), (1 << players) - 1));
    }

    private static long matchings(List<Integer> sums, int left) {
        if (left == 0) {
            long orders = 1;
            for (int sum : List.copyOf(new java.util.TreeSet<>(sums))) {
                for (long i = sums.stream().filter(other -> other == sum).count(); i > 1; i--) {
                    orders *= i;
                }
            }
            return orders;
        }
        int one = Integer.numberOfTrailingZeros(left);
        long found = 0;
        for (int other = one + 1; other < 31; other++) {
            if ((left >> other & 1) == 1) {
                sums.add(one + other);
                found += matchings(sums, left & ~(1 << one) & ~(1 << other));
                sums.remove(sums.size() - 1);
            }
        }
        return found;
    }

    /** Small squads, some of equal rank: as many as there are when they are all listed. */
    @Test
    void counts_what_listing_every_sheet_counts() {
        for (int round = 0; round < 120; round++) {
            Random random = Seed.random(round);
            List<OptionalInt> ranks = new ArrayList<>();
            for (int i = 2 + random.nextInt(6); i > 0; i--) {
                ranks.add(OptionalInt.of(1 + random.nextInt(7)));
            }
            int most = 1 + random.nextInt(2);
            int rubbers = 1 + random.nextInt(ranks.size() > 5 ? 3 : 4);
            for (String order : List.of("none", "rank-sum", "strongest-first")) {
                assertThat(count(ranks, conditions(rubbers, order, most)))
                        .as(ranks + " " + order + " " + rubbers + " " + most + ", " + Seed.rerun(round))
                        .isEqualTo(Listing.of(ranks, conditions(rubbers, order, most)));
            }
        }
    }

    /** Every sheet, one after the other. */
    private static final class Listing {
        private final List<OptionalInt> ranks;
        private final Conditions conditions;
        private final int pairs;
        private final int[] named;
        private long legal;
        private long all;

        private Listing(List<OptionalInt> ranks, Conditions conditions) {
            this.ranks = ranks;
            this.conditions = conditions;
            this.pairs = Math.min(conditions.rubbers(), ranks.size() * conditions.maxRubbersPerPlayer() / 2);
            this.named = new int[ranks.size()];
        }

        static SheetCount of(List<OptionalInt> ranks, Conditions conditions) {
            Listing listing = new Listing(ranks, conditions);
            listing.fill(List.of());
            return counted(listing.legal, listing.all);
        }

        private void fill(List<Integer> sums) {
            if (sums.size() == pairs) {
                all++;
                legal += isLegal(sums) ? 1 : 0;
                return;
            }
            for (int one = 0; one < named.length; one++) {
                for (int other = one + 1; other < named.length; other++) {
                    if (Math.max(named[one], named[other]) < conditions.maxRubbersPerPlayer()) {
                        List<Integer> more = new ArrayList<>(sums);
                        more.add(ranks.get(one).getAsInt() + ranks.get(other).getAsInt());
                        named[one]++;
                        named[other]++;
                        fill(more);
                        named[one]--;
                        named[other]--;
                    }
                }
            }
        }

        private boolean isLegal(List<Integer> sums) {
            return switch (conditions.orderOfStrength()) {
                case NONE -> true;
                case RANK_SUM -> IntStream.range(1, sums.size()).allMatch(i -> sums.get(i - 1) <= sums.get(i));
                case STRONGEST_FIRST -> sums.stream().allMatch(sum -> sums.get(0) <= sum);
            };
        }
    }
}
