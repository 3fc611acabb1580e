package tiewright.letterbox;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.Arrays;
import java.util.Base64;
import java.util.Map;
import java.util.stream.Collectors;
import javax.crypto.Cipher;
import javax.crypto.spec.IvParameterSpec;
import javax.crypto.spec.SecretKeySpec;
import org.bouncycastle.crypto.InvalidCipherTextException;
import org.bouncycastle.crypto.hpke.HPKEContextWithEncapsulation;

/** What the script of a page does on a phone, by the library of the service's side. */
public final class Phone {
    private final HPKEContextWithEncapsulation context;
    private final String closed;

    private Phone(HPKEContextWithEncapsulation context, String closed) {
        this.context = context;
        this.closed = closed;
    }

    public static Phone closing(String publicKey, String about, Map<String, String> fields) {
        byte[] text = fields.entrySet().stream()
                .map(one -> one.getKey() + "=" + one.getValue() + "\n")
                .collect(Collectors.joining())
                .getBytes(StandardCharsets.UTF_8);
        return closing(
                publicKey,
                about,
                ByteBuffer.allocate(Letter.LENGTH)
                        .putShort((short) text.length)
                        .put(text)
                        .array());
    }

    static Phone closing(String publicKey, String about, byte[] plain) {
        try {
            HPKEContextWithEncapsulation context = Letterbox.suite()
                    .setupBaseS(
                            Letterbox.suite()
                                    .deserializePublicKey(Base64.getUrlDecoder().decode(publicKey)),
                            "tiewright letter 1".getBytes(StandardCharsets.UTF_8));
            byte[] ciphertext = context.seal(about.getBytes(StandardCharsets.UTF_8), plain);
            byte[] all = ByteBuffer.allocate(context.getEncapsulation().length + ciphertext.length)
                    .put(context.getEncapsulation())
                    .put(ciphertext)
                    .array();
            return new Phone(context, Base64.getUrlEncoder().withoutPadding().encodeToString(all));
        } catch (InvalidCipherTextException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** As it travels. */
    public String closed() {
        return closed;
    }

    /** What the service answered to it. */
    public String read(byte[] answer) {
        byte[] seed = Arrays.copyOf(answer, 32);
        try {
            Cipher cipher = Cipher.getInstance("ChaCha20-Poly1305");
            cipher.init(
                    Cipher.DECRYPT_MODE,
                    new SecretKeySpec(context.export(named("key", seed), 32), "ChaCha20"),
                    new IvParameterSpec(context.export(named("nonce", seed), 12)));
            ByteBuffer plain = ByteBuffer.wrap(cipher.doFinal(Arrays.copyOfRange(answer, 32, answer.length)));
            byte[] text = new byte[plain.getInt()];
            plain.get(text);
            return new String(text, StandardCharsets.UTF_8);
        } catch (GeneralSecurityException unread) {
            throw new AssertionError("the answer cannot be read", unread);
        }
    }

    private static byte[] named(String use, byte[] seed) {
        return ByteBuffer.allocate(use.length() + seed.length)
                .put(use.getBytes(StandardCharsets.UTF_8))
                .put(seed)
                .array();
    }
}
