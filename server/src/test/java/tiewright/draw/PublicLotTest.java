package tiewright.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PublicLotTest {
    /** Check value of FIPS 180-4 (one-block message), also in RFC 6234. */
    @Test
    void hashes_as_published() {
        assertThat(HexFormat.of().formatHex(PublicLot.sha256("abc")))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    /** Worked with other tools: {@code printf 'seven owls\npools\n0' | sha256sum}, then the remainder by bc. */
    @Test
    void draws_what_common_tools_draw() {
        PublicLot lot = new PublicLot("seven owls", "pools");
        List<Integer> drawn = IntStream.range(0, 6)
                .mapToObj(i -> lot.below(BigInteger.valueOf(11)).intValue())
                .toList();
        assertThat(drawn).isEqualTo(List.of(10, 8, 9, 8, 0, 7));
        assertThat(lot.next()).isEqualTo(6);
    }

    /** A number just above 2^255 makes nearly half of the digests unfair: they must be passed over, not folded in. */
    @Test
    void passes_over_unfair_numbers() {
        BigInteger n = BigInteger.ONE.shiftLeft(255).add(BigInteger.ONE);
        PublicLot lot = new PublicLot("seven owls", "pools");
        for (int i = 0; i < 40; i++) {
            assertThat(lot.below(n)).isLessThan(n);
        }
        assertThat(lot.next()).isGreaterThan(50);
    }

    @Test
    void joins_digests_for_very_many_outcomes() {
        BigInteger n = BigInteger.ONE.shiftLeft(300);
        PublicLot lot = new PublicLot("x", "y");
        BigInteger drawn = lot.below(n);
        assertThat(lot.next()).isEqualTo(2);
        byte[] first = PublicLot.sha256("x\ny\n0");
        byte[] second = PublicLot.sha256("x\ny\n1");
        BigInteger joined = new BigInteger(1, first).shiftLeft(256).add(new BigInteger(1, second));
        assertThat(drawn).isEqualTo(joined.mod(n));
    }

    @Test
    void hears_one_seed_however_it_was_typed() {
        assertThat(PublicLot.spoken("  caf\u0065\u0301 ")).isEqualTo("caf\u00e9");
    }

    @Test
    void refuses_to_draw_from_nothing() {
        assertThatThrownBy(() -> new PublicLot("x", "y").below(BigInteger.ZERO))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
