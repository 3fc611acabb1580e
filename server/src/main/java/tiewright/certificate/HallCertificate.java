package tiewright.certificate;

import java.io.IOException;
import java.math.BigInteger;
import java.net.InetAddress;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.List;
import javax.security.auth.x500.X500Principal;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.cert.CertIOException;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509ExtensionUtils;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/**
 * Makes an authority and a certificate of the service signed by it (RFC 5280). The authority's key is thrown away with the first
 * signature: nobody, not even whoever has the laptop, can make another certificate that phones which trust this authority would take.
 */
public final class HallCertificate {
    /** Browsers' clocks may be behind that of the laptop. */
    private static final Duration BEFORE = Duration.ofDays(1);

    private static final SecureRandom RANDOM = new SecureRandom();

    private final Instant now;
    private final Instant until;
    private final KeyPair authority = keys();
    private final KeyPair service = keys();

    private HallCertificate(Instant now, Duration validFor) {
        this.now = now;
        this.until = now.plus(validFor);
    }

    /**
     * Writes {@code authority.crt}, {@code service.crt} with both certificates, and {@code service.key}, readable by its owner alone.
     *
     * @param names host names and addresses by which phones reach the service, at least one
     * @param folder is made; nothing in it is ever written over
     * @return what stands in the authority's certificate
     * @throws java.nio.file.FileAlreadyExistsException if one of the files is there already
     */
    public static Authority make(List<String> names, Instant now, Duration validFor, Path folder) throws IOException {
        HallCertificate made = new HallCertificate(now, validFor);
        try {
            X509Certificate root = made.root();
            X509Certificate leaf = made.leaf(names);
            new CertificateFiles(folder).write(root, leaf, made.service.getPrivate());
            return Authority.of(root);
        } catch (OperatorCreationException | GeneralSecurityException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private X500Principal name() {
        return new X500Principal(
                "CN=Tiewright on this laptop " + now.atZone(ZoneOffset.UTC).toLocalDate());
    }

    private X509Certificate root() throws CertIOException, OperatorCreationException, GeneralSecurityException {
        JcaX509v3CertificateBuilder root = builder(name(), authority);
        root.addExtension(Extension.basicConstraints, true, new BasicConstraints(0));
        root.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.keyCertSign));
        root.addExtension(
                Extension.subjectKeyIdentifier,
                false,
                new JcaX509ExtensionUtils().createSubjectKeyIdentifier(authority.getPublic()));
        return signed(root);
    }

    private X509Certificate leaf(List<String> names)
            throws CertIOException, OperatorCreationException, GeneralSecurityException {
        JcaX509v3CertificateBuilder leaf = builder(new X500Principal("CN=Tiewright"), service);
        leaf.addExtension(Extension.basicConstraints, true, new BasicConstraints(false));
        leaf.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature));
        leaf.addExtension(Extension.extendedKeyUsage, false, new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth));
        leaf.addExtension(
                Extension.authorityKeyIdentifier,
                false,
                new JcaX509ExtensionUtils().createAuthorityKeyIdentifier(authority.getPublic()));
        leaf.addExtension(
                Extension.subjectAlternativeName,
                false,
                new GeneralNames(
                        names.stream().map(HallCertificate::alternative).toArray(GeneralName[]::new)));
        return signed(leaf);
    }

    private static GeneralName alternative(String name) {
        return new GeneralName(isAddress(name) ? GeneralName.iPAddress : GeneralName.dNSName, name);
    }

    /** Whether it is the address of a machine in figures, such as {@code 192.0.2.7} or {@code 2001:db8::7}. */
    static boolean isAddress(String name) {
        return name.contains(":") || name.matches("[0-9.]+");
    }

    /** A host name as letters, figures and hyphens between dots, or an address that exists (RFC 1123, 2.1). */
    public static boolean isName(String name) {
        if (!isAddress(name)) {
            return name.length() <= 253
                    && name.matches("(?i)[a-z0-9]([a-z0-9-]{0,61}[a-z0-9])?(\\.[a-z0-9]([a-z0-9-]{0,61}[a-z0-9])?)*");
        }
        try {
            // in figures, so nobody is asked
            return name.matches("[0-9a-fA-F:.]+")
                    && !InetAddress.getByName(name).isAnyLocalAddress();
        } catch (IOException none) {
            return false;
        }
    }

    private JcaX509v3CertificateBuilder builder(X500Principal subject, KeyPair keys) {
        return new JcaX509v3CertificateBuilder(
                name(),
                new BigInteger(127, RANDOM).setBit(0),
                Date.from(now.minus(BEFORE)),
                Date.from(until),
                subject,
                keys.getPublic());
    }

    private X509Certificate signed(JcaX509v3CertificateBuilder certificate)
            throws OperatorCreationException, GeneralSecurityException {
        return new JcaX509CertificateConverter()
                .getCertificate(certificate.build(
                        new JcaContentSignerBuilder("SHA256withECDSA").build(authority.getPrivate())));
    }

    private static KeyPair keys() {
        try {
            KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
            generator.initialize(new ECGenParameterSpec("secp256r1"), RANDOM);
            return generator.generateKeyPair();
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
