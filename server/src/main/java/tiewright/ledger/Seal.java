package tiewright.ledger;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Objects;
import java.util.Optional;
import javax.crypto.AEADBadTagException;
import javax.crypto.Cipher;
import javax.crypto.Mac;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;
import tiewright.event.Decision.Sealed;
import tiewright.event.Decision.SealedRef;

/**
 * Seals sheets and opens them again: AES-256 in Galois/Counter Mode (NIST SP 800-38D), a fresh random 96-bit nonce each,
 * every sheet padded to one length, bound to its exchange and club so that no ciphertext can stand in for another.
 */
final class Seal {
    /** More than the longest sheet that the conditions allow: 12 rubbers, two codes of 40 characters each. */
    static final int PADDED = 4096;

    private static final int KEY_BYTES = 32;
    private static final int NONCE_BYTES = 12;
    private static final int TAG_BITS = 128;
    private static final SecureRandom RANDOM = new SecureRandom();

    private final SecretKeySpec key;

    /** Nonce and ciphertext in Base64. */
    record Box(String nonce, String ciphertext) {}

    private Seal(byte[] key) {
        this.key = new SecretKeySpec(key, "AES");
    }

    /** The key in this file, or a new one that is written there for its owner only. */
    static Seal withKeyIn(Path file) {
        try {
            if (!Files.exists(file)) {
                writeKey(file, random(KEY_BYTES));
            }
            return new Seal(readKey(file));
        } catch (IOException e) {
            throw new LedgerException("The key file " + file + " cannot be used: " + e.getMessage() + ".", e);
        }
    }

    static byte[] readKey(Path file) throws IOException {
        byte[] key = Files.readAllBytes(file);
        if (key.length != KEY_BYTES) {
            throw new LedgerException(
                    "The key file " + file + " is damaged: it has " + key.length + " bytes instead of " + KEY_BYTES
                            + ". Put the right one there, or move it away; then every club whose sheet is sealed must seal again.");
        }
        return key;
    }

    /** Writes the key down to the disk; nobody but the owner may ever read the file. */
    static void writeKey(Path file, byte[] key) throws IOException {
        if (Files.exists(file)) {
            throw new FileAlreadyExistsException(file.toString());
        }
        Path folder = Objects.requireNonNull(file.toAbsolutePath().getParent());
        Path empty = Files.createTempFile(folder, "key", ".part");
        DataFolder.ownerOnly(empty);
        try (FileChannel channel = FileChannel.open(empty, StandardOpenOption.WRITE)) {
            channel.write(ByteBuffer.wrap(key));
            channel.force(true);
        }
        Files.move(empty, file);
        DataFolder.forceFolder(folder);
    }

    Box close(SealedRef where, Sealed sheet) {
        byte[] nonce = random(NONCE_BYTES);
        try {
            byte[] ciphertext = cipher(Cipher.ENCRYPT_MODE, nonce, where).doFinal(padded(sheet));
            return new Box(base64(nonce), base64(ciphertext));
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("every Java has AES-GCM", impossible);
        }
    }

    /** Empty if another key sealed it, it was sealed for another place, or it was changed. */
    Optional<Sealed> open(SealedRef where, Box box) {
        try {
            byte[] nonce = Base64.getDecoder().decode(box.nonce());
            byte[] padded = cipher(Cipher.DECRYPT_MODE, nonce, where)
                    .doFinal(Base64.getDecoder().decode(box.ciphertext()));
            return Optional.of(unpadded(padded));
        } catch (AEADBadTagException notThisOne) {
            return Optional.empty();
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("every Java has AES-GCM", impossible);
        }
    }

    /**
     * A number that nobody can foresee who has not the key, the same for the same question: the first eight bytes of HMAC-SHA-256
     * (RFC 2104, FIPS 198-1), keyed with a key made from this one for nothing else.
     */
    long chance(String question) {
        return ByteBuffer.wrap(hmac(hmac(key.getEncoded(), "chance"), question)).getLong();
    }

    private static byte[] hmac(byte[] key, String text) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(key, "HmacSHA256"));
            return mac.doFinal(text.getBytes(StandardCharsets.UTF_8));
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("every Java has HMAC-SHA-256", impossible);
        }
    }

    private Cipher cipher(int mode, byte[] nonce, SealedRef where) throws GeneralSecurityException {
        Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
        cipher.init(mode, key, new GCMParameterSpec(TAG_BITS, nonce));
        // A code has no comma, so that no two places give the same text.
        cipher.updateAAD((Texts.exchange(where.exchange()) + "," + where.club()).getBytes(StandardCharsets.UTF_8));
        return cipher;
    }

    /** The length, the secret, a line feed, the canonical sheet, and zeros. */
    private static byte[] padded(Sealed sheet) {
        byte[] text = (sheet.secret() + "\n" + sheet.sheet().canonical()).getBytes(StandardCharsets.UTF_8);
        if (text.length > PADDED - Short.BYTES) {
            throw new IllegalArgumentException("the sheet is too long to be sealed: " + text.length + " bytes");
        }
        return ByteBuffer.allocate(PADDED)
                .putShort((short) text.length)
                .put(text)
                .array();
    }

    private static Sealed unpadded(byte[] padded) {
        ByteBuffer buffer = ByteBuffer.wrap(padded);
        String text = new String(padded, Short.BYTES, buffer.getShort(), StandardCharsets.UTF_8);
        int secretEnd = text.indexOf('\n');
        return new Sealed(Texts.sheet(text.substring(secretEnd + 1)), text.substring(0, secretEnd));
    }

    private static byte[] random(int bytes) {
        byte[] random = new byte[bytes];
        RANDOM.nextBytes(random);
        return random;
    }

    private static String base64(byte[] bytes) {
        return Base64.getEncoder().encodeToString(bytes);
    }
}
