package tiewright.cli;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;

/** The first page of a service that has just started, asked for by the service itself. */
final class FirstPage {
    private FirstPage() {}

    /** What to say of it; anything but 200 is bad input, for then this machine cannot run the service so. */
    static String of(String url) throws IOException, InterruptedException {
        HttpResponse<String> page = HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(URI.create(url)).build(), HttpResponse.BodyHandlers.ofString());
        if (page.statusCode() != 200) {
            throw new BadInput("The first page was answered with " + page.statusCode() + " instead of 200.");
        }
        return "The first page came after "
                + ManagementFactory.getRuntimeMXBean().getUptime() + " ms. Stopped, as asked by --once.";
    }
}
