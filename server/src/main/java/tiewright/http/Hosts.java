package tiewright.http;

import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The names that this service answers to: those of its own addresses, of its machine and of {@code --public-url}. Another name
 * that leads here belongs to a site that wants to read with a visitor's eyes what only this network may.
 */
final class Hosts {
    private static final Pattern ADDRESS = Pattern.compile("[0-9.]+|\\[[0-9a-fA-F:.%]+]");
    private static final Pattern PORT = Pattern.compile(":[0-9]+$");

    private final Set<String> names;

    /** The service does not go by the name that was asked for. */
    static final class Unknown extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    private Hosts(Set<String> names) {
        this.names = names;
    }

    static Hosts of(ServiceOptions options) {
        Set<String> names = new HashSet<>(Set.of("localhost", options.host().toLowerCase(Locale.ROOT)));
        options.publicUrl()
                .flatMap(url -> Optional.ofNullable(URI.create(url).getHost()))
                .ifPresent(name -> names.add(name.toLowerCase(Locale.ROOT)));
        try {
            String machine = InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT);
            names.addAll(Set.of(machine, machine.replaceFirst("\\..*", "") + ".local"));
        } catch (UnknownHostException nameless) {
            // then it is reached by its address
        }
        return new Hosts(names);
    }

    /** @param host as the browser sent it, with or without a port; null where it sent none */
    boolean knows(@org.jspecify.annotations.Nullable String host) {
        if (host == null) {
            return false;
        }
        String name = PORT.matcher(host).replaceFirst("").toLowerCase(Locale.ROOT);
        return ADDRESS.matcher(name).matches() || names.contains(name);
    }
}
