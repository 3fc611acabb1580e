package tiewright.draw;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.text.Normalizer;

/**
 * Numbers drawn from a seed spoken in public, so that anyone can draw them again with common tools.
 *
 * <p>Number i (0, 1, 2, …) of a draw is the SHA-256 (FIPS 180-4) of the UTF-8 text {@code seed LF purpose LF i}, read as
 * one big-endian unsigned number. To draw one of n outcomes, numbers that are not below the largest multiple of n are
 * passed over, and the first that is left is taken modulo n; so every outcome has exactly the same share of the hash
 * values. Where n is over 256 bits, as many successive digests as needed are put end to end.
 */
final class PublicLot {
    private static final int DIGEST_BITS = 256;

    private final String prefix;
    private long next;

    PublicLot(String seed, String purpose) {
        this.prefix = spoken(seed) + "\n" + purpose + "\n";
    }

    /** The seed as it is hashed: Unicode NFC, without white space at either end. */
    static String spoken(String seed) {
        return Normalizer.normalize(seed, Normalizer.Form.NFC).strip();
    }

    /** The index i of the number that will be drawn next. */
    long next() {
        return next;
    }

    /** One of 0 to n - 1, each as likely as the other. */
    BigInteger below(BigInteger n) {
        if (n.signum() <= 0) {
            throw new IllegalArgumentException("nothing to draw from");
        }
        int digests = Math.max(1, (n.bitLength() + DIGEST_BITS - 1) / DIGEST_BITS);
        BigInteger all = BigInteger.ONE.shiftLeft(DIGEST_BITS * digests);
        BigInteger fair = all.subtract(all.mod(n));
        BigInteger number = number(digests);
        while (number.compareTo(fair) >= 0) {
            number = number(digests);
        }
        return number.mod(n);
    }

    private BigInteger number(int digests) {
        BigInteger number = BigInteger.ZERO;
        for (int i = 0; i < digests; i++) {
            number = number.shiftLeft(DIGEST_BITS).add(new BigInteger(1, sha256(prefix + next++)));
        }
        return number;
    }

    static byte[] sha256(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
