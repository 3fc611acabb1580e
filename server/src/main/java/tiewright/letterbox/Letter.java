package tiewright.letterbox;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javax.crypto.Cipher;
import javax.crypto.spec.IvParameterSpec;
import javax.crypto.spec.SecretKeySpec;
import org.bouncycastle.crypto.hpke.HPKEContext;

/** What a phone closed, opened: the fields of its form, and the way to answer so that it alone can read the answer. */
public final class Letter {
    /** Of what is closed, whatever stands in it; more than the longest sheet takes: 12 rubbers, two codes of 40 characters each. */
    static final int LENGTH = 4096;

    /** Answers grow in such steps. */
    private static final int STEP = 16_384;

    private static final int SEED_BYTES = 32;
    private static final int KEY_BYTES = 32;
    private static final int NONCE_BYTES = 12;
    private static final SecureRandom RANDOM = new SecureRandom();

    private final HPKEContext context;
    private final Map<String, String> fields;

    private Letter(HPKEContext context, Map<String, String> fields) {
        this.context = context;
        this.fields = fields;
    }

    /** @param plain the length of a text, the text, and zeros */
    static Optional<Letter> of(HPKEContext context, byte[] plain) {
        int length = Short.toUnsignedInt(ByteBuffer.wrap(plain).getShort());
        if (length > plain.length - Short.BYTES) {
            return Optional.empty();
        }
        Map<String, String> fields = new LinkedHashMap<>();
        new String(plain, Short.BYTES, length, StandardCharsets.UTF_8).lines().forEach(line -> {
            int name = line.indexOf('=');
            if (name > 0) {
                fields.put(line.substring(0, name), line.substring(name + 1));
            }
        });
        return Optional.of(new Letter(context, fields));
    }

    /** What was typed, by field. */
    public Map<String, String> fields() {
        return new LinkedHashMap<>(fields);
    }

    /**
     * The answer, closed under a key that both sides make from the letter (RFC 9180, 5.3 and 9.8) and from a fresh random number, which
     * stands before it: so the same letter sent twice is never answered under one key twice. Its length grows in steps of 16 kB.
     */
    public byte[] answer(String text) {
        byte[] seed = new byte[SEED_BYTES];
        RANDOM.nextBytes(seed);
        byte[] said = text.getBytes(StandardCharsets.UTF_8);
        int steps = (Integer.BYTES + said.length + STEP - 1) / STEP;
        byte[] plain =
                ByteBuffer.allocate(steps * STEP).putInt(said.length).put(said).array();
        try {
            Cipher cipher = Cipher.getInstance("ChaCha20-Poly1305");
            cipher.init(
                    Cipher.ENCRYPT_MODE,
                    new SecretKeySpec(exported("key", seed, KEY_BYTES), "ChaCha20"),
                    new IvParameterSpec(exported("nonce", seed, NONCE_BYTES)));
            byte[] closed = cipher.doFinal(plain);
            return ByteBuffer.allocate(seed.length + closed.length)
                    .put(seed)
                    .put(closed)
                    .array();
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("every Java since 11 has ChaCha20-Poly1305", impossible);
        }
    }

    private byte[] exported(String use, byte[] seed, int bytes) {
        byte[] name = use.getBytes(StandardCharsets.UTF_8);
        return context.export(
                ByteBuffer.allocate(name.length + seed.length)
                        .put(name)
                        .put(seed)
                        .array(),
                bytes);
    }

    /** Says nothing of what stands in it. */
    @Override
    public String toString() {
        return "Letter[]";
    }
}
