package tiewright.sheet;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import tiewright.event.ClubId;
import tiewright.event.Sheet;
import tiewright.event.TieId;

/**
 * The receipt of a sealed sheet: it tells nothing before the opening and proves afterwards that nothing was swapped.
 *
 * <p>SHA-256 (FIPS 180-4) in lower-case hex over the secret, a line feed, the tie, a line feed, the club, a line feed and
 * the sheet's canonical text. The secret is what keeps it from being guessed: there are only 2,520 ways to name four
 * ordered pairs of eight.
 */
public final class Receipt {
    private Receipt() {}

    /**
     * @param secret 64 lower-case hex digits, random
     * @throws IllegalArgumentException if it is not such a secret
     */
    public static String of(String secret, TieId tie, ClubId club, Sheet sheet) {
        if (!isSecret(secret)) {
            throw new IllegalArgumentException("a secret has 64 lower-case hex digits");
        }
        String text = secret + "\n" + tie + "\n" + club + "\n" + sheet.canonical();
        return HexFormat.of().formatHex(sha256().digest(text.getBytes(StandardCharsets.UTF_8)));
    }

    public static boolean isSecret(String text) {
        return text.matches("[0-9a-f]{64}");
    }

    /** Whether a text has the shape of a receipt. */
    public static boolean isReceipt(String text) {
        return text.matches("[0-9a-f]{64}");
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
