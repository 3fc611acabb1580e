package tiewright.http;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CopyOnWriteArrayList;

/**
 * Somebody who listens in the hall's network and changes nothing: a proxy on this machine that writes every byte down. Phones reach the
 * service through it by the name of its machine, as over the air: neither they nor the service take that for the machine itself.
 */
final class Listener implements AutoCloseable {
    private final ServerSocket door;
    private final List<Heard> heard = new CopyOnWriteArrayList<>();

    /** One request and its answer, byte for byte as Latin letters; the answer grows while it comes. */
    static final class Heard {
        private final String request;
        private final ByteArrayOutputStream answer = new ByteArrayOutputStream();
        private volatile boolean whole;

        private Heard(String request) {
            this.request = request;
        }

        String request() {
            return request;
        }

        /** Method and path. */
        String what() {
            return request.substring(0, request.indexOf(" HTTP/1.1"));
        }

        String answer() {
            synchronized (answer) {
                return answer.toString(StandardCharsets.ISO_8859_1);
            }
        }

        String body() {
            String whole = answer();
            return whole.substring(whole.indexOf("\r\n\r\n") + 4);
        }

        /** Whether the answer came to its end: who leaves a page drops what was on its way. */
        boolean isWhole() {
            return whole;
        }

        private void add(byte[] bytes, int length) {
            synchronized (answer) {
                answer.write(bytes, 0, length);
            }
        }
    }

    Listener() throws IOException {
        this.door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        begin(this::listen);
    }

    InetSocketAddress address() {
        return new InetSocketAddress(InetAddress.getLoopbackAddress(), door.getLocalPort());
    }

    /** The service's address as the hall knows it, for one of the machine itself. */
    static String inTheHall(String url) {
        try {
            String machine = InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT);
            return "http://" + machine.replaceFirst("\\..*", "") + ".local:"
                    + URI.create(url).getPort() + URI.create(url).getPath();
        } catch (IOException nameless) {
            throw new UncheckedIOException(nameless);
        }
    }

    /** All that was heard so far. */
    List<Heard> heard() {
        return List.copyOf(heard);
    }

    List<Heard> heard(String what) {
        return heard.stream().filter(one -> one.what().equals(what)).toList();
    }

    private static void begin(Runnable work) {
        Thread thread = new Thread(work, "listener");
        thread.setDaemon(true);
        thread.start();
    }

    private void listen() {
        try {
            while (!door.isClosed()) {
                Socket phone = door.accept();
                begin(() -> pass(phone));
            }
        } catch (IOException closed) {
            // the test is over
        }
    }

    private void pass(Socket phone) {
        try (phone) {
            InputStream in = phone.getInputStream();
            String head = head(in);
            if (!head.contains(" http://") || !head.contains(".local:")) {
                return; // nothing of the hall
            }
            URI to = URI.create(head.split(" ")[1]);
            byte[] body = in.readNBytes(length(head));
            try (Socket service = new Socket(InetAddress.getLoopbackAddress(), to.getPort())) {
                String sent = forwarded(head, to);
                Heard one = new Heard(sent + new String(body, StandardCharsets.ISO_8859_1));
                heard.add(one);
                OutputStream out = service.getOutputStream();
                out.write(sent.getBytes(StandardCharsets.ISO_8859_1));
                out.write(body);
                back(service.getInputStream(), phone.getOutputStream(), one);
            }
        } catch (IOException dropped) {
            // one of the two has gone
        }
    }

    private static void back(InputStream from, OutputStream to, Heard one) throws IOException {
        byte[] some = new byte[8192];
        for (int read = from.read(some); read >= 0; read = from.read(some)) {
            one.add(some, read);
            to.write(some, 0, read);
            to.flush();
        }
        one.whole = true;
    }

    private static String head(InputStream in) throws IOException {
        ByteArrayOutputStream head = new ByteArrayOutputStream();
        while (!head.toString(StandardCharsets.ISO_8859_1).endsWith("\r\n\r\n")) {
            int one = in.read();
            if (one < 0) {
                break;
            }
            head.write(one);
        }
        return head.toString(StandardCharsets.ISO_8859_1);
    }

    private static int length(String head) {
        return head.lines()
                .filter(line -> line.toLowerCase(Locale.ROOT).startsWith("content-length:"))
                .mapToInt(line -> Integer.parseInt(line.substring(15).strip()))
                .findFirst()
                .orElse(0);
    }

    /** As a proxy sends it on, one request on each connection; packed answers could not be read. */
    private static String forwarded(String head, URI to) {
        String path = to.getRawPath() + (to.getRawQuery() == null ? "" : "?" + to.getRawQuery());
        StringBuilder sent = new StringBuilder(
                head.split(" ")[0] + " " + (path.isEmpty() ? "/" : path) + " HTTP/1.1\r\nConnection: close\r\n");
        head.lines()
                .skip(1)
                .filter(line -> !line.isEmpty())
                .filter(line -> !line.toLowerCase(Locale.ROOT)
                        .matches("(proxy-connection|connection|accept-encoding|upgrade.*|http2-settings):.*"))
                .forEach(line -> sent.append(line).append("\r\n"));
        return sent.append("\r\n").toString();
    }

    @Override
    public void close() throws IOException {
        door.close();
    }
}
