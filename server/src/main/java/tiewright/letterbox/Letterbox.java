package tiewright.letterbox;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import org.bouncycastle.crypto.AsymmetricCipherKeyPair;
import org.bouncycastle.crypto.InvalidCipherTextException;
import org.bouncycastle.crypto.hpke.HPKE;
import org.bouncycastle.crypto.hpke.HPKEContext;
import org.bouncycastle.crypto.params.X25519PrivateKeyParameters;
import org.bouncycastle.crypto.params.X25519PublicKeyParameters;

/**
 * The service's key pair to which phones close what nobody on the way shall read: HPKE (RFC 9180) in its base mode, with X25519,
 * HKDF-SHA256 and ChaCha20-Poly1305, by Bouncy Castle.
 */
public final class Letterbox {
    private static final int KEY_BYTES = 32;
    private static final int TAG_BYTES = 16;
    private static final byte[] INFO = "tiewright letter 1".getBytes(StandardCharsets.UTF_8);

    private final X25519PrivateKeyParameters key;

    private Letterbox(byte[] key) {
        this.key = new X25519PrivateKeyParameters(key);
    }

    /** The file of the private key in a data folder; nobody but its owner reads it, and it is copied nowhere. */
    public static Path fileIn(Path folder) {
        return folder.resolve("letterbox.key");
    }

    /**
     * With the key of this folder, or a new one. Half of one that was cut off is replaced: what was closed for it is named again by
     * its phone, and nothing that was kept hangs on it.
     */
    public static Letterbox in(Path folder, SecureRandom random) {
        Path file = fileIn(folder);
        try {
            byte[] kept = Files.exists(file) ? Files.readAllBytes(file) : new byte[0];
            if (kept.length != KEY_BYTES) {
                kept = new byte[KEY_BYTES];
                random.nextBytes(kept);
                Path part = Files.createTempFile(folder, "letterbox", ".part"); // for its owner alone
                Files.write(part, kept);
                Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
            }
            return new Letterbox(kept);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** As pages give it to phones: the 32 bytes of RFC 7748 in base64url without padding. */
    public String publicKey() {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(publicBytes());
    }

    /** What people compare: the first half of the SHA-256 of the public key, 32 hex digits in fours. */
    public String fingerprint() {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(publicBytes());
            return HexFormat.of().formatHex(digest, 0, digest.length / 2).replaceAll("(.{4})(?=.)", "$1 ");
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /**
     * Opens what a phone closed; empty if it was closed for another key or about something else, or was changed on its way.
     *
     * @param closed in base64url: the phone's own public key for this once, then the ciphertext
     * @param about what the phone said, unread, that it is about
     */
    public Optional<Letter> open(String closed, String about) {
        try {
            byte[] all = Base64.getUrlDecoder().decode(closed);
            if (all.length != KEY_BYTES + Letter.LENGTH + TAG_BYTES) {
                return Optional.empty();
            }
            HPKEContext context = suite().setupBaseR(
                            Arrays.copyOf(all, KEY_BYTES), new AsymmetricCipherKeyPair(publicKeyOf(), key), INFO);
            byte[] plain = context.open(
                    about.getBytes(StandardCharsets.UTF_8), Arrays.copyOfRange(all, KEY_BYTES, all.length));
            return Letter.of(context, plain);
        } catch (InvalidCipherTextException | IllegalArgumentException | IllegalStateException notForUs) {
            // no base64, not closed for this, or (RFC 7748, 6.1) a key that agrees with every other on nothing
            return Optional.empty();
        }
    }

    static HPKE suite() {
        return new HPKE(HPKE.mode_base, HPKE.kem_X25519_SHA256, HPKE.kdf_HKDF_SHA256, HPKE.aead_CHACHA20_POLY1305);
    }

    private X25519PublicKeyParameters publicKeyOf() {
        return key.generatePublicKey();
    }

    private byte[] publicBytes() {
        return publicKeyOf().getEncoded();
    }
}
