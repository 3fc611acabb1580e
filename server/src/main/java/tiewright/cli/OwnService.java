package tiewright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.http.HttpClient;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.security.cert.CertificateException;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLEngine;
import javax.net.ssl.TrustManager;
import javax.net.ssl.TrustManagerFactory;
import javax.net.ssl.X509ExtendedTrustManager;

/** How a command talks to the service on this machine: it trusts the certificate that the service was started with. */
final class OwnService {
    private OwnService() {}

    /** @param certificate PEM file; empty for plain HTTP */
    static HttpClient client(String certificate) {
        if (certificate.isEmpty()) {
            return HttpClient.newHttpClient();
        }
        return HttpClient.newBuilder()
                .sslContext(trusting(Path.of(certificate)))
                .build();
    }

    private static SSLContext trusting(Path certificate) {
        try (InputStream pem = Files.newInputStream(certificate)) {
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(null, null);
            int number = 0;
            for (Certificate one : CertificateFactory.getInstance("X.509").generateCertificates(pem)) {
                store.setCertificateEntry("own-" + number++, one);
            }
            TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
            trust.init(store);
            SSLContext context = SSLContext.getInstance("TLS");
            context.init(
                    null,
                    new TrustManager[] {new ThisChain((X509ExtendedTrustManager) trust.getTrustManagers()[0])},
                    null);
            return context;
        } catch (IOException | GeneralSecurityException unread) {
            throw new BadInput("The service's certificate " + certificate + " cannot be read: " + unread.getMessage());
        }
    }

    /** Asks for the service's own chain, not for a name: it names the address of the phones, and a command asks by another. */
    private static final class ThisChain extends X509ExtendedTrustManager {
        private final X509ExtendedTrustManager own;

        ThisChain(X509ExtendedTrustManager own) {
            this.own = own;
        }

        @Override
        public void checkServerTrusted(X509Certificate[] chain, String kind) throws CertificateException {
            own.checkServerTrusted(chain, kind);
        }

        @Override
        public void checkServerTrusted(X509Certificate[] chain, String kind, Socket socket)
                throws CertificateException {
            own.checkServerTrusted(chain, kind);
        }

        @Override
        public void checkServerTrusted(X509Certificate[] chain, String kind, SSLEngine engine)
                throws CertificateException {
            own.checkServerTrusted(chain, kind);
        }

        @Override
        public void checkClientTrusted(X509Certificate[] chain, String kind) throws CertificateException {
            throw new CertificateException("a command serves nobody");
        }

        @Override
        public void checkClientTrusted(X509Certificate[] chain, String kind, Socket socket)
                throws CertificateException {
            checkClientTrusted(chain, kind);
        }

        @Override
        public void checkClientTrusted(X509Certificate[] chain, String kind, SSLEngine engine)
                throws CertificateException {
            checkClientTrusted(chain, kind);
        }

        @Override
        public X509Certificate[] getAcceptedIssuers() {
            return own.getAcceptedIssuers();
        }
    }
}
