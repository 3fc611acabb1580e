package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.event.ClubId;

/** Numbers by lot, beside HMAC-SHA-256 of the Java platform (RFC 2104, FIPS 198-1). */
class ChancesTest {
    private static final ClubId N = ClubId.of("N");

    @TempDir
    Path folder;

    private static byte[] hmac(byte[] key, String text) throws GeneralSecurityException {
        Mac mac = Mac.getInstance("HmacSHA256");
        mac.init(new SecretKeySpec(key, "HmacSHA256"));
        return mac.doFinal(text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void a_club_draws_the_same_for_the_same_question_and_nobody_else_does() throws Exception {
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            long drawn = Chances.of(ledger, N, "A1");
            byte[] key = hmac(Files.readAllBytes(folder.resolve("seal.key")), "chance");
            assertThat(drawn).isEqualTo(ByteBuffer.wrap(hmac(key, "N,A1")).getLong());
            assertThat(Chances.of(ledger, N, "A1")).isEqualTo(drawn);
            assertThat(Chances.of(ledger, N, "A2")).isNotEqualTo(drawn);
            assertThat(Chances.of(ledger, ClubId.of("S"), "A1")).isNotEqualTo(drawn);
        }
        try (Ledger other = Ledger.open(folder.resolve("other"), Asked.CLOCK)) {
            assertThat(Chances.of(other, N, "A1")).isNotZero();
            assertThat(Files.readAllBytes(folder.resolve("other/seal.key")))
                    .isNotEqualTo(Files.readAllBytes(folder.resolve("seal.key")));
        }
    }
}
