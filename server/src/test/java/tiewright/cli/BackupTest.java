package tiewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.time.Clock;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.event.Actor;
import tiewright.event.Days;
import tiewright.event.Decision;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.http.Service;
import tiewright.http.ServiceOptions;
import tiewright.ledger.Ledger;
import tiewright.ledger.Request;

/** A backup while the service runs, and the spare laptop that goes on where the first stopped. */
class BackupTest {
    @TempDir
    Path folder;

    private static void begin(Ledger ledger) {
        List<Recorded> facts = Days.oneTie().facts();
        Decision given = (event, now) ->
                new Decision.Accepted(facts.stream().map(Recorded::fact).toList(), List.of());
        ledger.decide(Request.of("given", Actor.of(Role.ORGANISER, "test")), given);
    }

    @Test
    @SuppressWarnings("try") // the service is there to be found, not to be called
    void the_spare_laptop_goes_on_where_the_first_stopped() {
        Path first = folder.resolve("first");
        Path spare = folder.resolve("spare");
        Path zip = folder.resolve("day.zip");
        try (Ledger ledger = Ledger.open(first, Clock.systemUTC());
                Service service = Service.start(ServiceOptions.onLoopback(first, 0), ledger, Clock.systemUTC())) {
            begin(ledger);
            assertThat(Commands.run("backup", zip, "--data", first).status()).isZero();
            assertThat(Commands.run("backup", zip, "--data", first).status())
                    .as("never over another backup")
                    .isEqualTo(2);
            assertThat(Commands.run("restore", zip, "--data", spare).status()).isZero();
            assertThat(Commands.run("restore", zip, "--data", first).status())
                    .as("never over a folder in use")
                    .isEqualTo(2);
            try (Ledger restored = Ledger.open(spare, Clock.systemUTC())) {
                assertThat(restored.facts(0)).isEqualTo(ledger.facts(0));
            }
        }
        assertThat(Commands.run("backup", folder.resolve("later.zip"), "--data", first)
                        .status())
                .as("also when it is stopped")
                .isZero();
    }

    @Test
    void over_https_too_and_the_cookie_is_for_https_only() throws Exception {
        Path cert = folder.resolve("cert.pem");
        Path key = folder.resolve("key.pem");
        selfSigned(cert, key);
        Path data = folder.resolve("data");
        ServiceOptions options = new ServiceOptions(
                data, "127.0.0.1", 0, Optional.empty(), Optional.of(new ServiceOptions.Tls(cert, key)));
        try (Ledger ledger = Ledger.open(data, Clock.systemUTC());
                Service service = Service.start(options, ledger, Clock.systemUTC())) {
            begin(ledger);
            assertThat(service.url()).startsWith("https://127.0.0.1:");
            assertThat(Commands.run("backup", folder.resolve("tls.zip"), "--data", data)
                            .err())
                    .contains("Backed up");
            String secret = service.newLinkSecret();
            Decision link = (event, now) -> Decision.Accepted.of(new tiewright.event.SetUpFact.LinkIssued(
                    "L1", Role.DESK, Optional.empty(), Optional.empty(), "desk", Service.hash(secret)));
            ledger.decide(Request.of("link", Actor.of(Role.ORGANISER, "test")), link);
            HttpResponse<String> entered = OwnService.client(cert.toString())
                    .send(
                            HttpRequest.newBuilder(URI.create(service.link(secret)))
                                    .build(),
                            HttpResponse.BodyHandlers.ofString());
            assertThat(entered.statusCode()).isEqualTo(303);
            assertThat(entered.headers().firstValue("Set-Cookie").orElse(""))
                    .contains("Secure", "HttpOnly", "SameSite=Lax");
        }
    }

    private void selfSigned(Path cert, Path key) throws Exception {
        Path store = folder.resolve("store.p12");
        Process keytool = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "keytool")
                                .toString(),
                        "-genkeypair",
                        "-alias",
                        "hall",
                        "-keyalg",
                        "RSA",
                        "-dname",
                        "CN=localhost",
                        "-storetype",
                        "PKCS12",
                        "-keystore",
                        store.toString(),
                        "-storepass",
                        "changeit")
                .redirectErrorStream(true)
                .start();
        String said = new String(keytool.getInputStream().readAllBytes());
        assertThat(keytool.waitFor()).as(said).isZero();
        KeyStore keys = KeyStore.getInstance(store.toFile(), "changeit".toCharArray());
        pem(cert, "CERTIFICATE", keys.getCertificate("hall").getEncoded());
        pem(key, "PRIVATE KEY", keys.getKey("hall", "changeit".toCharArray()).getEncoded());
    }

    private static void pem(Path file, String kind, byte[] bytes) throws IOException {
        Files.writeString(
                file,
                "-----BEGIN " + kind + "-----\n" + Base64.getMimeEncoder().encodeToString(bytes) + "\n-----END " + kind
                        + "-----\n");
    }
}
