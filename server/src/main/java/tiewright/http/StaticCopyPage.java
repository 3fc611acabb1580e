package tiewright.http;

import java.io.IOException;
import java.net.http.HttpClient;
import java.security.GeneralSecurityException;
import java.security.cert.X509Certificate;
import java.util.function.Supplier;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLEngine;
import javax.net.ssl.TrustManager;
import javax.net.ssl.X509ExtendedTrustManager;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tiewright.http.visit.Addresses;
import tiewright.http.visit.Door;
import tiewright.http.visit.Downloads;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Visit;

/** All public pages to carry away: the service asks itself, on this machine, for what any stranger may read. */
final class StaticCopyPage implements Page {
    private static final Logger LOG = LoggerFactory.getLogger(StaticCopyPage.class);

    private final Supplier<String> url;

    /** @param url where the service answers on this machine; known only once it listens */
    StaticCopyPage(Supplier<String> url) {
        this.url = url;
    }

    @Override
    public void at(Routes routes) {
        routes.get(Door.ORGANISER, Addresses.STATIC_COPY, this::send);
    }

    private void send(Visit visit) {
        String stamp = visit.say(
                "frame.static-copy",
                "day",
                visit.words()
                        .weekdayAndDate(
                                visit.event().now().atZone(visit.event().zone()).toLocalDate()),
                "at",
                HallClock.said(visit.event().clock(visit.event().now())));
        try {
            byte[] zip = new StaticCopy(
                            client(), url.get(), visit.event().language(), "<p class=\"error\">" + stamp + "</p>")
                    .zip();
            Downloads.send(visit, "application/zip", "public-pages.zip", zip);
        } catch (IOException | GeneralSecurityException failure) {
            LOG.warn("The copy of all public pages did not come about", failure);
            throw new NotFound(visit.say("frame.no-static-copy"));
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            throw new NotFound(visit.say("frame.no-static-copy"));
        }
    }

    /** It goes to this machine's own port and fetches what is public: whose certificate answers there need not be asked. */
    private static HttpClient client() throws GeneralSecurityException {
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, new TrustManager[] {new OwnMachine()}, null);
        return HttpClient.newBuilder().sslContext(context).build();
    }

    private static final class OwnMachine extends X509ExtendedTrustManager {
        @Override
        public void checkClientTrusted(X509Certificate[] chain, String kind, java.net.Socket socket) {}

        @Override
        public void checkServerTrusted(X509Certificate[] chain, String kind, java.net.Socket socket) {}

        @Override
        public void checkClientTrusted(X509Certificate[] chain, String kind, SSLEngine engine) {}

        @Override
        public void checkServerTrusted(X509Certificate[] chain, String kind, SSLEngine engine) {}

        @Override
        public void checkClientTrusted(X509Certificate[] chain, String kind) {}

        @Override
        public void checkServerTrusted(X509Certificate[] chain, String kind) {}

        @Override
        public X509Certificate[] getAcceptedIssuers() {
            return new X509Certificate[0];
        }
    }
}
