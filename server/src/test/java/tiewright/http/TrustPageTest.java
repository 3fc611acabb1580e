package tiewright.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.security.KeyStore;
import java.security.cert.CertificateFactory;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLHandshakeException;
import javax.net.ssl.TrustManagerFactory;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.certificate.Authority;
import tiewright.certificate.HallCertificate;
import tiewright.event.Actor;
import tiewright.event.Decision;
import tiewright.event.Role;
import tiewright.event.SetUpFact;
import tiewright.ledger.Ledger;
import tiewright.ledger.Request;

/** A phone that does not know the service, learns the fingerprint from paper, and trusts what it took from the page. */
class TrustPageTest {
    private static final Instant NOW = Instant.now();

    @TempDir
    private Path folder;

    private static HttpClient trusting(byte[] certificate) throws Exception {
        KeyStore store = KeyStore.getInstance(KeyStore.getDefaultType());
        store.load(null, null);
        store.setCertificateEntry(
                "authority",
                CertificateFactory.getInstance("X.509").generateCertificate(new ByteArrayInputStream(certificate)));
        TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        trust.init(store);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, trust.getTrustManagers(), null);
        return HttpClient.newBuilder().sslContext(context).build();
    }

    private Authority certificate() throws java.io.IOException {
        return HallCertificate.make(List.of("127.0.0.1"), NOW, Duration.ofDays(7), folder.resolve("certificate"));
    }

    private ServiceOptions encrypted() {
        return new ServiceOptions(
                folder.resolve("data"),
                "127.0.0.1",
                0,
                Optional.empty(),
                Optional.of(new ServiceOptions.Tls(
                        folder.resolve("certificate/service.crt"), folder.resolve("certificate/service.key"))));
    }

    private static HttpResponse<byte[]> get(HttpClient phone, String url) throws Exception {
        return phone.send(HttpRequest.newBuilder(URI.create(url)).build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    @Test
    void a_phone_that_took_the_certificate_reads_the_page_without_a_warning_and_no_other_phone_does() throws Exception {
        Authority made = certificate();
        ServiceOptions options = encrypted();
        try (Ledger ledger = Ledger.open(options.data(), InstantSource.system());
                Service service = Service.start(options, ledger, InstantSource.system())) {
            HttpClient phone = trusting(made.certificate());
            String page =
                    new String(get(phone, service.url() + "/trust").body(), java.nio.charset.StandardCharsets.UTF_8);
            assertThat(page)
                    .contains(made.fingerprint())
                    .contains("is encrypted")
                    .contains("Compare first");
            assertThat(get(phone, service.url() + "/trust/authority.crt").body())
                    .isEqualTo(made.certificate());
            Assertions.assertThatThrownBy(() -> get(HttpClient.newHttpClient(), service.url() + "/trust"))
                    .isInstanceOf(SSLHandshakeException.class);
        }
    }

    /** RFC 6797, 7.1; RFC 6265bis, 4.1.3.2. */
    @Test
    void over_an_encrypted_line_browsers_are_told_to_stay_on_it_and_to_send_the_cookie_nowhere_else() throws Exception {
        Authority made = certificate();
        ServiceOptions options = encrypted();
        try (Ledger ledger = Ledger.open(options.data(), InstantSource.system());
                Service service = Service.start(options, ledger, InstantSource.system())) {
            ledger.decide(
                    Request.of("link", Actor.of(Role.ORGANISER, "test")),
                    (event, given) -> new Decision.Accepted(
                            List.of(new SetUpFact.LinkIssued(
                                    "T1",
                                    Role.DESK,
                                    Optional.empty(),
                                    Optional.empty(),
                                    "desk",
                                    Service.hash("secret"))),
                            List.of()));
            HttpResponse<byte[]> entered = get(trusting(made.certificate()), service.link("secret"));
            assertThat(entered.headers().firstValue("Strict-Transport-Security"))
                    .contains("max-age=2592000");
            assertThat(entered.headers().firstValue("Set-Cookie").orElseThrow())
                    .startsWith("__Host-tiewright-")
                    .contains("Secure", "HttpOnly", "Path=/", "SameSite=Lax")
                    .doesNotContain("Domain");
        }
    }

    @Test
    void without_encryption_there_is_nothing_to_take() {
        try (Served served = Served.empty(NOW)) {
            assertThat(served.stranger().get("/trust").text())
                    .contains("answers this machine alone")
                    .doesNotContain("Compare first");
            assertThat(served.stranger().get("/trust/authority.crt").status()).isEqualTo(404);
        }
    }
}
