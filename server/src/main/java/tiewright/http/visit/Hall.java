package tiewright.http.visit;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.SecureRandom;
import java.util.Optional;
import tiewright.certificate.Authority;
import tiewright.clock.WitnessedClock;
import tiewright.http.answers.Worked;
import tiewright.ledger.Ledger;
import tiewright.letterbox.Letterbox;

/**
 * What every page of one running service shares.
 *
 * @param address how phones reach the service, without a slash at the end: "http://192.0.2.7:7070"
 * @param trust by what phones and people know that it is this service
 */
public record Hall(
        Ledger ledger,
        Laptop laptop,
        Tokens tokens,
        Templates templates,
        Worked worked,
        EverybodysPages pages,
        Address address,
        Trust trust) {

    private static final int SESSION_KEY_BYTES = 32;

    public WitnessedClock clock() {
        return laptop.clock();
    }

    /** The key of the browsers' tokens: made once, kept beside the data so that a restart signs nobody out. */
    public static byte[] sessionKey(Path folder, SecureRandom random) {
        Path file = folder.resolve("session.key");
        try {
            byte[] kept = Files.exists(file) ? Files.readAllBytes(file) : new byte[0];
            if (kept.length == SESSION_KEY_BYTES) {
                return kept;
            }
            // none yet, or half of one that was cut off: a new one costs everybody no more than opening the own link
            // again
            byte[] key = new byte[SESSION_KEY_BYTES];
            random.nextBytes(key);
            Path part = Files.createTempFile(folder, "session", ".part");
            Files.write(part, key);
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
            return key;
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /**
     * By what it is known that this is the service.
     *
     * @param authority who vouches for its certificate, if it is nobody whom phones know
     * @param letterbox to whose key phones close what nobody on the way shall read
     */
    public record Trust(Optional<Authority> authority, Letterbox letterbox) {}

    /** Where the service is found; known only once it listens. */
    public static final class Address {
        private final Optional<String> given;
        private volatile String url = "";

        public Address(Optional<String> given) {
            this.given = given.map(text -> text.endsWith("/") ? text.substring(0, text.length() - 1) : text);
        }

        public void listening(String scheme, String host, int port) {
            String shown = host.contains(":") ? "[" + host + "]" : host;
            url = given.orElse(scheme + "://" + shown + ":" + port);
        }

        public String url() {
            return url;
        }

        /** It names this machine alone: no phone reaches it. */
        public boolean isLoopback() {
            return url.contains("//127.") || url.contains("//localhost") || url.contains("//[::1]");
        }

        /** Whoever listens in the network between can read what travels: it leaves this machine, without TLS. */
        public boolean isReadInTheAir() {
            return url.startsWith("http:") && !isLoopback();
        }

        /**
         * The same of one answer: it leaves without TLS, and not to this machine itself. Where it comes from and the name that was asked
         * for must both say so: the name is whatever somebody sends.
         */
        public boolean isReadInTheAir(Context ctx) {
            boolean here = ctx.ip().startsWith("127.") || ctx.ip().matches("\\[?(0:0:0:0:0:0:0:1|::1)]?");
            return ctx.scheme().equals("http")
                    && !(here && (url.startsWith("https:") || isThisMachine(String.valueOf(ctx.host()))));
        }

        private static boolean isThisMachine(String host) {
            return host.matches("(127\\.[0-9.]+|localhost|\\[::1])(:[0-9]+)?");
        }
    }
}
