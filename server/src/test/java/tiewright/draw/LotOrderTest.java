package tiewright.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;

/** The order of a lot, against SHA-256 (FIPS 180-4) as Java has it and against the chi-squared table. */
class LotOrderTest {
    private static final List<ClubId> THREE = List.of(ClubId.of("N"), ClubId.of("S"), ClubId.of("E"));

    @Test
    void can_be_drawn_again_by_hand() throws Exception {
        String prefix = "seven blue kites\nlot A E,N,S\n";
        List<String> left = new java.util.ArrayList<>(List.of("E", "N", "S"));
        List<ClubId> order = new java.util.ArrayList<>();
        for (int i = 0; i < 3; i++) {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest((prefix + i).getBytes(StandardCharsets.UTF_8));
            order.add(ClubId.of(left.remove(new BigInteger(1, digest)
                    .mod(BigInteger.valueOf(left.size()))
                    .intValue())));
        }
        assertThat(LotOrder.of("A", THREE, " seven blue kites ")).isEqualTo(order);
    }

    @Test
    void the_order_in_which_the_clubs_are_named_does_not_matter() {
        assertThat(LotOrder.of("A", List.of(THREE.get(2), THREE.get(0), THREE.get(1)), "x"))
                .isEqualTo(LotOrder.of("A", THREE, "x"));
    }

    /** Chi-squared with 5 degrees of freedom: 20.5 is passed once in a thousand (any table of the distribution). */
    @Test
    void every_order_is_equally_likely() {
        Map<List<ClubId>, Integer> counts = new HashMap<>();
        int draws = 6000;
        for (int i = 0; i < draws; i++) {
            counts.merge(LotOrder.of("A", THREE, "seed " + i), 1, Integer::sum);
        }
        double expected = draws / 6.0;
        double chi = counts.values().stream()
                .mapToDouble(n -> (n - expected) * (n - expected) / expected)
                .sum();
        assertThat(counts).hasSize(6);
        assertThat(chi).isLessThan(20.5);
    }
}
