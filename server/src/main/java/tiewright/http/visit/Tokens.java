package tiewright.http.visit;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import javax.crypto.Cipher;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;

/**
 * Small texts that travel to a browser and back without being read or changed there: who the browser is, and up to which
 * fact a form has seen. AES-256-GCM under a key that never leaves the data folder.
 */
public final class Tokens {
    private static final int NONCE_BYTES = 12;
    private static final int TAG_BITS = 128;
    private static final int SECRET_BYTES = 32;

    private final SecretKeySpec key;
    private final SecureRandom random;

    public Tokens(byte[] key, SecureRandom random) {
        this.key = new SecretKeySpec(key, "AES");
        this.random = random;
    }

    /** Tells this key from others and says nothing of it: eight hex digits. */
    public String name() {
        return hash("name of " + HexFormat.of().formatHex(key.getEncoded())).substring(0, 8);
    }

    /** @param use what the token is for; a token made for one use is no good for another */
    public String close(String use, String text) {
        byte[] nonce = new byte[NONCE_BYTES];
        random.nextBytes(nonce);
        byte[] closed = run(Cipher.ENCRYPT_MODE, use, nonce, text.getBytes(StandardCharsets.UTF_8))
                .orElseThrow();
        byte[] token = ByteBuffer.allocate(nonce.length + closed.length)
                .put(nonce)
                .put(closed)
                .array();
        return Base64.getUrlEncoder().withoutPadding().encodeToString(token);
    }

    /** The text, or empty for anything that was not closed here for this use. */
    public Optional<String> open(String use, String token) {
        try {
            byte[] all = Base64.getUrlDecoder().decode(token);
            if (all.length < NONCE_BYTES + TAG_BITS / Byte.SIZE) {
                return Optional.empty();
            }
            return run(
                            Cipher.DECRYPT_MODE,
                            use,
                            Arrays.copyOf(all, NONCE_BYTES),
                            Arrays.copyOfRange(all, NONCE_BYTES, all.length))
                    .map(text -> new String(text, StandardCharsets.UTF_8));
        } catch (IllegalArgumentException notBase64) {
            return Optional.empty();
        }
    }

    /** A fresh secret of 32 random bytes, as 64 lower-case hex digits. */
    public String secret() {
        byte[] bytes = new byte[SECRET_BYTES];
        random.nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    /** A fresh secret for a link, short enough to be read from a QR code by an old phone. */
    public String linkSecret() {
        byte[] bytes = new byte[SECRET_BYTES];
        random.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** The hash under which a link is kept: SHA-256, lower-case hex. */
    public static String hash(String secret) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException missing) {
            throw new IllegalStateException(missing);
        }
    }

    private Optional<byte[]> run(int mode, String use, byte[] nonce, byte[] text) {
        try {
            Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
            cipher.init(mode, key, new GCMParameterSpec(TAG_BITS, nonce));
            cipher.updateAAD(use.getBytes(StandardCharsets.UTF_8));
            return Optional.of(cipher.doFinal(text));
        } catch (GeneralSecurityException forged) {
            return Optional.empty();
        }
    }
}
