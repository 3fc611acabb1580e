package tiewright.http;

import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.Optional;
import java.util.regex.Pattern;
import tiewright.http.visit.Door;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Spoken;
import tiewright.http.visit.Visit;
import tiewright.wording.Language;

/** Where the links at the foot of a page lead that choose a language. */
final class LanguagePage implements Page {
    private static final int A_YEAR = 365 * 24 * 60 * 60;

    /** An address of our own: no second slash, which would begin the name of another host, and nothing odd. */
    private static final Pattern OWN = Pattern.compile("/(?:[\\w.~%-][\\w.~%/?=&+:@,-]*)?");

    @Override
    public void at(Routes routes) {
        routes.get(Door.ANYBODY, "/language/{language}", LanguagePage::choose);
    }

    private static void choose(Visit visit) {
        Language chosen = visit.hall()
                .templates()
                .languages()
                .of(visit.path("language"))
                .orElseThrow(() -> new NotFound(visit.say("frame.no-such-language")));
        Cookie cookie = new Cookie(Spoken.COOKIE, chosen.tag());
        cookie.setPath("/");
        cookie.setHttpOnly(true);
        cookie.setSecure(visit.ctx().scheme().equals("https"));
        cookie.setSameSite(SameSite.LAX);
        cookie.setMaxAge(A_YEAR);
        visit.ctx().cookie(cookie);
        visit.go(Optional.ofNullable(visit.ctx().queryParam("page"))
                .filter(OWN.asMatchPredicate())
                .orElse("/"));
    }
}
