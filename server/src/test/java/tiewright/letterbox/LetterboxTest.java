package tiewright.letterbox;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import org.bouncycastle.crypto.hpke.HPKE;
import org.bouncycastle.crypto.hpke.HPKEContext;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.Seed;

/** What was closed for this key about this is opened; nothing else is. */
class LetterboxTest {
    private static final Map<String, String> FIELDS = Map.of("step", "seal", "sheet-1-first", "Žofie");
    private static final SecureRandom RANDOM = new SecureRandom();

    @TempDir
    private Path folder;

    private Letterbox box() {
        return Letterbox.in(folder, RANDOM);
    }

    private static byte[] hex(String digits) {
        return HexFormat.of().parseHex(digits);
    }

    /** RFC 9180, A.2.1: DHKEM(X25519, HKDF-SHA256), HKDF-SHA256, ChaCha20Poly1305, base mode. The same stand in SealedOnPhoneIT. */
    @Test
    void opens_the_published_example_and_exports_its_secrets() throws Exception {
        HPKE suite = Letterbox.suite();
        HPKEContext context = suite.setupBaseR(
                hex("1afa08d3dec047a643885163f1180476fa7ddb54c6a8029ea33f95796bf2ac4a"),
                suite.deserializePrivateKey(
                        hex("8057991eef8f1f1af18f4a9491d16a1ce333f695d4db8e38da75975c4478e0fb"),
                        hex("4310ee97d88cc1f088a5576c77ab0cf5c3ac797f3d95139c6c84b5429c59662a")),
                hex("4f6465206f6e2061204772656369616e2055726e"));
        assertThat(
                        context.open(
                                hex("436f756e742d30"),
                                hex(
                                        "1c5250d8034ec2b784ba2cfd69dbdb8af406cfe3ff938e131f0def8c8b60b4db21993c62ce81883d2dd1b51a28")))
                .isEqualTo(hex("4265617574792069732074727574682c20747275746820626561757479"));
        assertThat(context.export(new byte[0], 32))
                .isEqualTo(hex("4bbd6243b8bb54cec311fac9df81841b6fd61f56538a775e7c80a9f40160606e"));
        assertThat(context.export(hex("54657374436f6e74657874"), 32))
                .isEqualTo(hex("5acb09211139c43b3090489a9da433e8a30ee7188ba8b0a9a1ccf0c229283e53"));
    }

    @Test
    void reads_what_a_phone_closed_and_answers_so_that_it_alone_can_read_it() {
        Phone phone = Phone.closing(box().publicKey(), "a sheet", FIELDS);
        Letter letter = box().open(phone.closed(), "a sheet").orElseThrow();
        assertThat(letter.fields()).isEqualTo(new LinkedHashMap<>(FIELDS));
        String said = "Rubber 2 has only one player: Žofie.";
        byte[] answer = letter.answer(said);
        assertThat(phone.read(answer)).isEqualTo(said);
        assertThat(letter.answer(said)).as("never the same twice").isNotEqualTo(answer);
        Phone other = Phone.closing(box().publicKey(), "a sheet", FIELDS);
        assertThatThrownBy(() -> other.read(answer)).isInstanceOf(AssertionError.class);
    }

    @Test
    void what_stands_in_it_is_seen_by_no_length() {
        Phone little = Phone.closing(box().publicKey(), "a sheet", Map.of());
        Phone much = Phone.closing(box().publicKey(), "a sheet", Map.of("why", "x".repeat(4_000)));
        assertThat(little.closed()).hasSameSizeAs(much.closed());
        Letter letter = box().open(much.closed(), "a sheet").orElseThrow();
        assertThat(letter.answer("")).hasSameSizeAs(letter.answer("y".repeat(16_380)));
        assertThat(letter.answer("y".repeat(16_381))).hasSize(32 + 2 * 16_384 + 16);
        assertThat(letter.toString()).isEqualTo("Letter[]");
    }

    @Test
    void opens_nothing_that_was_changed_or_closed_for_another_key_or_about_something_else() {
        Letterbox box = box();
        Phone phone = Phone.closing(box.publicKey(), "a sheet", FIELDS);
        assertThat(box.open(phone.closed(), "another sheet")).isEmpty();
        byte[] all = Base64.getUrlDecoder().decode(phone.closed());
        Seed seed = Seed.fresh();
        Random random = seed.random();
        for (int time = 0; time < 50; time++) {
            byte[] changed = all.clone();
            changed[random.nextInt(all.length)] ^= (byte) (1 << random.nextInt(8));
            assertThat(box.open(Base64.getUrlEncoder().encodeToString(changed), "a sheet"))
                    .as(seed.toString())
                    .isEmpty();
        }
        assertThat(box.open(phone.closed().substring(4), "a sheet")).isEmpty();
        assertThat(box.open("no base64, no letter", "a sheet")).isEmpty();
        assertThat(box.open("", "a sheet")).isEmpty();
        byte[] agreesOnNothing = ByteBuffer.allocate(all.length)
                .put(new byte[32])
                .put(all, 32, all.length - 32)
                .array();
        assertThat(box.open(Base64.getUrlEncoder().encodeToString(agreesOnNothing), "a sheet"))
                .as("RFC 7748, 6.1")
                .isEmpty();
        byte[] longer =
                ByteBuffer.allocate(Letter.LENGTH).putShort((short) 60_000).array();
        assertThat(box.open(Phone.closing(box.publicKey(), "a sheet", longer).closed(), "a sheet"))
                .as("says that it is longer than it is")
                .isEmpty();
    }

    @Test
    void the_key_stays_in_its_folder_for_its_owner_alone_and_half_of_one_is_replaced() throws IOException {
        String key = box().publicKey();
        assertThat(box().publicKey()).isEqualTo(key);
        Path file = Letterbox.fileIn(folder);
        FileStore store = Files.getFileStore(file);
        if (store.supportsFileAttributeView("posix")) {
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                    .isEqualTo("rw-------");
        }
        assertThat(folder).as("and no half-made file").isDirectoryNotContaining("glob:**.part");
        Files.write(file, new byte[31]);
        assertThat(box().publicKey()).isNotEqualTo(key);
        assertThat(Files.size(file)).isEqualTo(32);
    }

    /** RFC 7748, 6.1: the public key of Bob's private key; its SHA-256 by {@code sha256sum}. */
    @Test
    void people_compare_half_of_the_hash_of_the_public_key() throws IOException {
        Files.write(Letterbox.fileIn(folder), hex("5dab087e624a8a4b79e17f8b83800ee66f3bb1292618b6fd1c2f8b27ff88e0eb"));
        assertThat(Base64.getUrlDecoder().decode(box().publicKey()))
                .isEqualTo(hex("de9edb7d7b7dc1b4d35b61c2ece435373f8343c85b78674dadfc7e146f882b4f"));
        assertThat(box().fingerprint()).isEqualTo("f35e 5616 160a 30bf 3c6e 79fa 73c5 76d4");
    }
}
