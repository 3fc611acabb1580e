package tiewright.bench;

import java.io.BufferedInputStream;
import java.io.Closeable;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;

/** One kept connection to a service (HTTP/1.1, RFC 9112): so plain that a hall full of them leaves the processors to the service. */
final class Line implements Closeable {
    private final Socket socket;
    private final InputStream in;
    private final OutputStream out;
    private final String host;

    Line(URI at) throws IOException {
        this(at, at.getHost());
    }

    /** @param from an address of this machine, so that one process can be many phones */
    Line(URI at, String from) throws IOException {
        this.socket = new Socket(InetAddress.getByName(at.getHost()), at.getPort(), InetAddress.getByName(from), 0);
        this.socket.setTcpNoDelay(true);
        this.in = new BufferedInputStream(socket.getInputStream(), 16 << 10);
        this.out = socket.getOutputStream();
        this.host = at.getAuthority();
    }

    /** Asks for a page and reads it to its end. Returns the status. */
    int get(String path) throws IOException {
        ask(path, "text/html");
        int status = Integer.parseInt(line().split(" ")[1]);
        long length = 0;
        boolean chunked = false;
        for (String header = line(); !header.isEmpty(); header = line()) {
            String[] parts = header.toLowerCase(java.util.Locale.ROOT).split(": ", 2);
            chunked |= parts[0].equals("transfer-encoding");
            length = parts[0].equals("content-length") ? Long.parseLong(parts[1]) : length;
        }
        in.skipNBytes(chunked ? 0 : length);
        for (int chunk = chunked ? chunk() : 0; chunk > 0; chunk = chunk()) {
            in.skipNBytes(chunk + 2L);
        }
        if (chunked) {
            line();
        }
        return status;
    }

    /** Sends the request alone; what comes is read by {@link #line}. */
    void ask(String path, String accept) throws IOException {
        out.write(("GET " + path + " HTTP/1.1\r\nHost: " + host + "\r\nAccept: " + accept + "\r\n\r\n")
                .getBytes(StandardCharsets.US_ASCII));
    }

    /** Sends these bytes as they are. */
    void send(String text) throws IOException {
        out.write(text.getBytes(StandardCharsets.US_ASCII));
    }

    private int chunk() throws IOException {
        return Integer.parseInt(line(), 16);
    }

    /** The next line without its end. */
    String line() throws IOException {
        StringBuilder line = new StringBuilder();
        for (int c = in.read(); c != '\n'; c = in.read()) {
            if (c < 0) {
                throw new EOFException();
            }
            if (c != '\r') {
                line.append((char) c);
            }
        }
        return line.toString();
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
