package tiewright.certificate;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.cert.Certificate;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/**
 * Whom a phone would have to trust.
 *
 * @param fingerprint SHA-256 of the certificate, in pairs of hex digits with colons, as phones show it
 * @param until when it ends
 * @param certificate in DER, as a phone takes it
 */
public record Authority(String fingerprint, Instant until, byte[] certificate) {

    static Authority of(X509Certificate root) throws GeneralSecurityException {
        byte[] der = root.getEncoded();
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(der);
        return new Authority(
                HexFormat.ofDelimiter(":").withUpperCase().formatHex(digest),
                root.getNotAfter().toInstant(),
                der);
    }

    /** The authority at the end of a chain that vouches for itself; empty where a public one vouches, or nothing can be read. */
    public static Optional<Authority> of(Path chain) {
        try (InputStream in = Files.newInputStream(chain)) {
            List<Certificate> all =
                    List.copyOf(CertificateFactory.getInstance("X.509").generateCertificates(in));
            if (all.isEmpty() || !(all.get(all.size() - 1) instanceof X509Certificate root)) {
                return Optional.empty();
            }
            boolean isOwn = root.getBasicConstraints() >= 0
                    && root.getSubjectX500Principal().equals(root.getIssuerX500Principal());
            return isOwn ? Optional.of(of(root)) : Optional.empty();
        } catch (IOException | GeneralSecurityException unread) {
            return Optional.empty();
        }
    }
}
