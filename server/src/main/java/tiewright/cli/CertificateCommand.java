package tiewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tiewright.certificate.Authority;
import tiewright.certificate.HallCertificate;

@Command(
        name = "certificate",
        description =
                "Makes a certificate for this laptop's service, so that nobody on the hall's network can listen, and says what phones will ask.",
        mixinStandardHelpOptions = true)
final class CertificateCommand implements Callable<Integer> {
    private static final int MOST_DAYS = 397;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FOLDER", description = "A new folder for the certificate and its key.")
    private Path folder = Path.of("");

    @Option(
            names = "--name",
            paramLabel = "HOST",
            description =
                    "A name or address by which phones reach this laptop; as often as needed. Not given: its present addresses.")
    private List<String> names = new ArrayList<>();

    @Option(names = "--days", paramLabel = "N", description = "Days that it is valid: 1 to 397; 7 unless given.")
    private int days = 7;

    @Override
    public Integer call() {
        if (days < 1 || days > MOST_DAYS) {
            throw new BadInput("--days is a whole number from 1 to " + MOST_DAYS + ".");
        }
        for (String name : names) {
            if (!HallCertificate.isName(name)) {
                throw new BadInput("--name \"" + name + "\" is neither the name nor the address of a machine, such as"
                        + " hall.example or 192.0.2.7.");
            }
        }
        List<String> all = names();
        try {
            Authority made = HallCertificate.make(all, Instant.now(), Duration.ofDays(days), folder);
            say(all, made, spec.commandLine().getOut());
            return 0;
        } catch (FileAlreadyExistsException there) {
            throw new BadInput(there.getMessage() + " is there already and stays as it is: give a new folder.");
        } catch (IOException failure) {
            throw new BadInput("Nothing could be written to " + folder.toAbsolutePath() + ": " + failure.getMessage());
        }
    }

    /** What phones may type, then this laptop for itself. */
    private List<String> names() {
        Set<String> all = new LinkedHashSet<>(names.isEmpty() ? addresses() : names);
        all.add("localhost");
        all.add("127.0.0.1");
        return List.copyOf(all);
    }

    private static List<String> addresses() {
        try {
            return NetworkInterface.networkInterfaces()
                    .flatMap(NetworkInterface::inetAddresses)
                    .filter(address -> address instanceof Inet4Address && !address.isLoopbackAddress())
                    .map(InetAddress::getHostAddress)
                    .toList();
        } catch (IOException none) {
            return List.of();
        }
    }

    private void say(List<String> all, Authority made, PrintWriter out) {
        String at = folder.toString();
        out.println("Made in " + folder.toAbsolutePath() + ": authority.crt, service.crt and service.key.");
        out.println("It is valid for " + String.join(", ", all) + ", until "
                + made.until().atZone(ZoneId.systemDefault()).toLocalDate() + ".");
        out.println("Start with it:");
        out.println("  serve --host 0.0.0.0 --public-url https://" + all.get(0) + ":7070 --tls-cert "
                + Path.of(at, "service.crt") + " --tls-key " + Path.of(at, "service.key"));
        out.println();
        out.println("Each phone will warn once that it does not know who vouches for this service.");
        out.println(
                "Whoever goes on past the warning is safe from listeners, not from a service that pretends to be this one.");
        out.println(
                "To be safe from both, let the phone trust the authority: open /trust on it, and compare this fingerprint first:");
        out.println("  " + made.fingerprint());
        out.println(
                "Write it on paper and pin it up at the desk. The authority's own key was thrown away, so it can vouch for");
        out.println("nothing else. Delete the folder after the day; phones can delete the authority then too.");
    }
}
