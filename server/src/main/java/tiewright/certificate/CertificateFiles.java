package tiewright.certificate;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.PrivateKey;
import java.security.cert.X509Certificate;
import java.util.Base64;
import java.util.List;

/** The three files as PEM (RFC 7468). The key is written first and last moved: where it lies, the certificates lie too. */
final class CertificateFiles {
    static final String AUTHORITY = "authority.crt";
    static final String SERVICE = "service.crt";
    static final String KEY = "service.key";

    private final Path folder;

    CertificateFiles(Path folder) {
        this.folder = folder;
    }

    void write(X509Certificate authority, X509Certificate service, PrivateKey key)
            throws IOException, GeneralSecurityException {
        for (String name : List.of(AUTHORITY, SERVICE, KEY)) {
            if (Files.exists(folder.resolve(name))) {
                throw new FileAlreadyExistsException(folder.resolve(name).toString());
            }
        }
        Files.createDirectories(folder);
        Path secret = Files.createTempFile(folder, "service", ".part");
        if (Files.getFileStore(secret).supportsFileAttributeView("posix")) {
            Files.setPosixFilePermissions(secret, PosixFilePermissions.fromString("rw-------"));
        }
        Files.writeString(secret, pem("PRIVATE KEY", key.getEncoded()), StandardOpenOption.WRITE);
        String root = pem("CERTIFICATE", authority.getEncoded());
        Files.writeString(folder.resolve(AUTHORITY), root, StandardOpenOption.CREATE_NEW);
        Files.writeString(
                folder.resolve(SERVICE),
                pem("CERTIFICATE", service.getEncoded()) + root,
                StandardOpenOption.CREATE_NEW);
        Files.move(secret, folder.resolve(KEY));
    }

    private static String pem(String label, byte[] bytes) {
        String text = Base64.getMimeEncoder(64, "\n".getBytes(StandardCharsets.US_ASCII))
                .encodeToString(bytes);
        return "-----BEGIN " + label + "-----\n" + text + "\n-----END " + label + "-----\n";
    }
}
