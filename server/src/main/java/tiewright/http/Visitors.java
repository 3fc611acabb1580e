package tiewright.http;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.Optional;
import org.eclipse.jetty.server.Request;
import tiewright.event.Event;
import tiewright.event.Link;
import tiewright.http.visit.Tokens;
import tiewright.http.visit.Visitor;

/** Personal links: the secret in a link is exchanged once for a cookie, and only its hash is ever compared. */
final class Visitors {
    private static final String USE = "visitor";
    private static final int DAYS_30 = 30 * 24 * 60 * 60;

    private final Tokens tokens;
    private final EndedVisits ended;
    private final boolean secure;
    /** Of this event: browsers send a cookie to every port of a machine, and two events may run on one. */
    private final String cookieName;

    Visitors(Tokens tokens, EndedVisits ended, boolean secure) {
        this.tokens = tokens;
        this.ended = ended;
        this.secure = secure;
        // with this beginning browsers take it over TLS from this host alone (RFC 6265bis, 4.1.3.2)
        this.cookieName = (secure ? "__Host-" : "") + "tiewright-" + tokens.name();
    }

    /** The visitor behind the cookie; a stranger when there is none, or its link was revoked. */
    Visitor of(Context ctx, Event event) {
        String cookie = ctx.cookie(cookieName);
        if (cookie == null || ended.isEnded(cookie)) {
            return Visitor.STRANGER;
        }
        return tokens.open(USE, cookie)
                .map(text -> text.split("\n", 3))
                .filter(parts -> parts.length >= 2)
                .flatMap(parts -> Optional.ofNullable(event.links().get(parts[0]))
                        .filter(link -> !link.revoked())
                        .map(link -> new Visitor(Optional.of(link), parts[1], parts.length == 3 ? parts[2] : "")))
                .orElse(Visitor.STRANGER);
    }

    /** The name of the link by which this request comes, before any page knows of it; whether it still holds is not asked. */
    Optional<String> linkOf(Request request) {
        return Request.getCookies(request).stream()
                .filter(cookie -> cookie.getName().equals(cookieName))
                .findFirst()
                .flatMap(cookie -> tokens.open(USE, cookie.getValue()))
                .map(text -> text.split("\n", 2)[0]);
    }

    /** The link with this secret, if it still holds. */
    Optional<Link> link(String secret, Event event) {
        String hash = Tokens.hash(secret);
        return event.links().values().stream()
                .filter(link -> !link.revoked() && link.hash().equals(hash))
                .findFirst();
    }

    void enter(Context ctx, Link link, Visitor before) {
        String device = before.device().isEmpty() ? tokens.secret().substring(0, 12) : before.device();
        keep(ctx, link.name() + "\n" + device);
    }

    /** Somebody else sits at this device from now on; nobody in particular where the name is empty. */
    void sit(Context ctx, Visitor visitor, String name) {
        visitor.link().ifPresent(link -> keep(ctx, link.name() + "\n" + visitor.device() + "\n" + name));
    }

    private void keep(Context ctx, String whom) {
        set(ctx, tokens.close(USE, whom), DAYS_30);
    }

    private void set(Context ctx, String value, int seconds) {
        Cookie cookie = new Cookie(cookieName, value);
        cookie.setPath("/");
        cookie.setHttpOnly(true);
        cookie.setSecure(secure);
        cookie.setSameSite(SameSite.LAX);
        cookie.setMaxAge(seconds);
        ctx.cookie(cookie);
    }

    void leave(Context ctx) {
        Optional.ofNullable(ctx.cookie(cookieName))
                .filter(cookie -> tokens.open(USE, cookie).isPresent())
                .ifPresent(ended::end);
        set(ctx, "", 0);
    }
}
