package tiewright.http;

import java.nio.file.Path;
import java.util.Optional;

/**
 * How a service is started.
 *
 * @param data the folder of the event's data
 * @param host address to listen on; loopback unless phones shall join
 * @param port 0 takes a free one
 * @param publicUrl how phones reach it, if that differs from host and port
 * @param tls certificate and key as PEM files
 * @param copies the folder into which a copy goes every ten minutes
 * @param isRehearsal nothing of it counts, and every page says so
 */
public record ServiceOptions(
        Path data,
        String host,
        int port,
        Optional<String> publicUrl,
        Optional<Tls> tls,
        Optional<Path> copies,
        boolean isRehearsal) {
    public record Tls(Path certificate, Path key) {}

    /** Without copies that are made by themselves. */
    public ServiceOptions(Path data, String host, int port, Optional<String> publicUrl, Optional<Tls> tls) {
        this(data, host, port, publicUrl, tls, Optional.empty(), false);
    }

    /** A copy of an event to play on. */
    public static ServiceOptions rehearsal(Path data, String host, int port) {
        return new ServiceOptions(data, host, port, Optional.empty(), Optional.empty(), Optional.empty(), true);
    }

    public static ServiceOptions onLoopback(Path data, int port) {
        return new ServiceOptions(data, "127.0.0.1", port, Optional.empty(), Optional.empty());
    }
}
