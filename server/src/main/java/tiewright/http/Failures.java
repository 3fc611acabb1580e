package tiewright.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import jakarta.servlet.ServletException;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.ClosedChannelException;
import java.util.UUID;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tiewright.event.Role;
import tiewright.http.pieces.EmptyPlace;
import tiewright.http.visit.ClosedDoor;
import tiewright.http.visit.Door;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Visit;
import tiewright.ledger.LedgerException;

/** The one mapper from what went wrong to a page that says what to do. It tells nothing of what the page would have shown. */
final class Failures {
    private static final Logger LOG = LoggerFactory.getLogger(Failures.class);

    private static final int UNREADABLE = 400;
    private static final int MISSING = 404;
    /** RFC 9110, 15.5.6: an address that takes forms and shows no page, or the other way round. */
    private static final int NO_SUCH_WAY = 405;

    private static final int TOO_LONG = 413;
    /** RFC 9110, 15.5.20: this server does not answer for that name. */
    private static final int MISDIRECTED = 421;
    /** RFC 4918, 11.5: the server cannot store what is needed. */
    private static final int NO_ROOM = 507;

    private static final int HEARD_AT_MOST = 50_000_000;

    private final Routes.Consumers visits;
    private volatile String said = "";

    Failures(Routes.Consumers visits) {
        this.visits = visits;
    }

    void at(RoutesConfig routes) {
        routes.exception(
                NotFound.class,
                (missing, ctx) -> show(
                        ctx, 404, "not-found", said -> place(said, String.valueOf(missing.getMessage()), "not-found")));
        routes.exception(
                ClosedDoor.class, (closed, ctx) -> show(ctx, 403, "not-for-you", said -> notFor(closed.door(), said)));
        routes.exception(Hosts.Unknown.class, (unknown, ctx) -> show(ctx, MISDIRECTED, "another-address"));
        routes.exception(HttpResponseException.class, (refused, ctx) -> unread(ctx, refused.getStatus()));
        routes.exception(ServletException.class, (unread, ctx) -> unread(ctx, inParts(unread, ctx)));
        routes.exception(LedgerException.class, this::notKept);
        routes.exception(Exception.class, this::broken);
        routes.error(404, ctx -> {
            if (ctx.result() == null
                    || ctx.result().startsWith("Endpoint ")
                    || ctx.result().equals("Not Found")) {
                show(ctx, 404, "not-found");
            }
        });
    }

    private static EmptyPlace notFor(Door door, Visit visit) {
        if (door == Door.NOTES && visit.role() == Role.CAPTAIN) {
            return new EmptyPlace(
                    visit.say("page-service.this-link-is-not-let"),
                    visit.say("page-service.whoever-has-an-older-link"),
                    "/captain/links",
                    visit.say("page-service.the-links-of-my-club"));
        }
        return place(visit, visit.say("page-service.for-whom", "door", door.code()), "not-for-you");
    }

    /** What the database could not write, for example on a full disk. */
    private void notKept(LedgerException failure, Context ctx) {
        // a full disk fails everybody: where it comes from is of use once, and fills the disk further
        Throwable cause = failure.getMessage().equals(said) ? null : failure.getCause();
        said = failure.getMessage();
        LOG.error("What was sent was not kept: {}", said, cause);
        show(
                ctx,
                failure.isForNow() ? NO_ROOM : 500,
                "not-kept",
                said -> place(said, String.valueOf(failure.getMessage()), "not-kept"));
    }

    private void broken(Exception failure, Context ctx) {
        if (isGone(root(failure))) {
            LOG.debug("a browser went before it had its answer", failure);
            return;
        }
        String number = UUID.randomUUID().toString().substring(0, 8);
        LOG.error("Failure {} at {} {}", number, ctx.method(), Gate.address(ctx), failure);
        show(
                ctx,
                500,
                "did-not-work",
                said -> place(said, said.say("page-service.something-is-wrong", "number", number), "did-not-work"));
    }

    /** A phone that drops off the network in the middle is nothing that anybody could mend. */
    private static boolean isGone(Throwable root) {
        return root instanceof EOFException
                || root instanceof ClosedChannelException
                || root instanceof TimeoutException
                || root instanceof IOException
                        && String.valueOf(root.getMessage()).matches("(?i).*(reset|broken pipe).*");
    }

    /** A form in parts is read by the server below, which says only in the cause why it gave up; without a mark between them it finds none. */
    private static int inParts(ServletException unread, Context ctx) {
        boolean hasMark = String.valueOf(ctx.contentType()).contains("boundary=");
        return hasMark && root(unread) instanceof IllegalStateException ? TOO_LONG : UNREADABLE;
    }

    private void unread(Context ctx, int status) {
        if (status == MISSING || status == NO_SUCH_WAY) {
            show(ctx, status, "not-found");
            return;
        }
        // the rest of it may never be read; a browser must not send its next form after it
        ctx.header("Connection", "close");
        if (status == TOO_LONG) {
            hearOut(ctx);
            show(ctx, status, "too-long");
            return;
        }
        show(ctx, status, "cannot-be-read");
    }

    /** A browser that is still sending would hear no answer: what comes is let go by, as long as it has an end. */
    private static void hearOut(Context ctx) {
        byte[] some = new byte[64 << 10];
        try {
            InputStream rest = ctx.req().getInputStream();
            for (int heard = 0; heard < HEARD_AT_MOST; ) {
                int more = rest.read(some);
                if (more < 0) {
                    return;
                }
                heard += more;
            }
        } catch (IOException | IllegalStateException gone) {
            LOG.debug("what was too long cannot be read to its end", gone);
        }
    }

    private static Throwable root(Throwable failure) {
        Throwable cause = failure;
        while (cause.getCause() != null) {
            cause = cause.getCause();
        }
        return cause;
    }

    /** @param code of the sentence that says what to do about it */
    private static EmptyPlace place(Visit visit, String what, String code) {
        return new EmptyPlace(
                what,
                visit.say("page-service.failure." + code + ".todo"),
                "/",
                visit.say("page-service.what-is-on-now"));
    }

    private void show(Context ctx, int status, String code) {
        show(ctx, status, code, said -> place(said, said.say("page-service.failure." + code + ".what"), code));
    }

    private void show(Context ctx, int status, String code, Function<Visit, EmptyPlace> place) {
        Visit visit = visits.visit(ctx);
        visit.show(
                status, Screen.of("failure", visit.say("page-service.failure." + code + ".title"), place.apply(visit)));
    }
}
