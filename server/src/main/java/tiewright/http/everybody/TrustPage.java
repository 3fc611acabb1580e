package tiewright.http.everybody;

import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import tiewright.certificate.Authority;
import tiewright.http.visit.Door;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Visit;

/** What a phone trusts once, with the fingerprint that stands on paper at the desk; and whether anybody can listen. */
final class TrustPage implements Page {
    private static final String PATH = "/trust";

    @Override
    public void at(Routes routes) {
        routes.get(Door.ANYBODY, PATH, visit -> visit.show(screen(visit)));
        routes.get(Door.ANYBODY, PATH + "/authority.crt", TrustPage::send);
    }

    private static Screen screen(Visit visit) {
        Optional<Authority> authority = visit.hall().trust().authority();
        return new Screen(
                "pages/trust",
                visit.say("page-everybody.can-anybody-listen"),
                Map.of(
                        "fingerprint",
                        authority.map(Authority::fingerprint).orElse(""),
                        "until",
                        authority
                                .map(one -> visit.words()
                                        .date(one.until()
                                                .atZone(ZoneId.of("UTC"))
                                                .toLocalDate()))
                                .orElse(""),
                        "isEncrypted",
                        visit.hall().address().url().startsWith("https:"),
                        "isInTheAir",
                        visit.hall().address().isReadInTheAir(),
                        "key",
                        visit.hall().trust().letterbox().fingerprint()));
    }

    private static void send(Visit visit) {
        Authority authority = visit.hall()
                .trust()
                .authority()
                .orElseThrow(() -> new NotFound(visit.say("page-everybody.no-authority-of-our-own")));
        Context ctx = visit.ctx();
        ctx.contentType("application/x-x509-ca-cert")
                .header("Content-Disposition", "attachment; filename=\"tiewright-authority.crt\"")
                .result(authority.certificate());
    }
}
