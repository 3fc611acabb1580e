package tiewright.http;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.cert.Certificate;
import java.security.cert.CertificateFactory;
import java.security.spec.InvalidKeySpecException;
import java.security.spec.PKCS8EncodedKeySpec;
import java.util.Base64;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;

/** HTTPS from a certificate and a key as PEM files (RFC 7468), the key as PKCS #8 and without a pass phrase. */
final class TlsConnector {
    private static final char[] IN_MEMORY_ONLY = "in memory only".toCharArray();

    private final ServiceOptions.Tls tls;

    TlsConnector(ServiceOptions.Tls tls) {
        this.tls = tls;
    }

    ServerConnector of(Server server, HttpConfiguration http) {
        HttpConfiguration https = new HttpConfiguration(http);
        https.addCustomizer(new SecureRequestCustomizer(false));
        SslContextFactory.Server context = new SslContextFactory.Server();
        context.setKeyStore(keyStore());
        context.setKeyStorePassword(new String(IN_MEMORY_ONLY));
        return new ServerConnector(
                server, new SslConnectionFactory(context, "http/1.1"), new HttpConnectionFactory(https));
    }

    private KeyStore keyStore() {
        try {
            byte[] pem = Files.readAllBytes(tls.certificate());
            Certificate[] chain = CertificateFactory.getInstance("X.509")
                    .generateCertificates(new ByteArrayInputStream(pem))
                    .toArray(Certificate[]::new);
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(null, null);
            store.setKeyEntry("service", key(tls.key()), IN_MEMORY_ONLY, chain);
            return store;
        } catch (IOException | GeneralSecurityException | IllegalArgumentException unread) {
            throw new IllegalArgumentException(
                    "The certificate " + tls.certificate() + " with the key " + tls.key() + " cannot be used: "
                            + unread.getMessage()
                            + ". Both must be PEM files, the key as PKCS #8 without a pass phrase.",
                    unread);
        }
    }

    private static PrivateKey key(Path file) throws IOException, GeneralSecurityException {
        String text = Files.readString(file).replaceAll("-----[A-Z ]+-----", "").replaceAll("\\s", "");
        PKCS8EncodedKeySpec spec = new PKCS8EncodedKeySpec(Base64.getDecoder().decode(text));
        for (String kind : new String[] {"RSA", "EC", "Ed25519"}) {
            try {
                return KeyFactory.getInstance(kind).generatePrivate(spec);
            } catch (InvalidKeySpecException otherKind) {
                // the next one
            }
        }
        throw new InvalidKeySpecException("the key is of no kind known here");
    }
}
