package tiewright.http;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.security.RouteRole;
import java.util.Locale;
import java.util.Set;
import tiewright.event.Event;
import tiewright.http.answers.Asker;
import tiewright.http.visit.ClosedDoor;
import tiewright.http.visit.Door;
import tiewright.http.visit.Hall;
import tiewright.http.visit.Parts;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Spoken;
import tiewright.http.visit.Visit;
import tiewright.http.visit.Visitor;

/** Where every request comes in: it becomes a visit, and comes no further than its visitor may. */
final class Gate implements Routes.Consumers {
    private static final String VISIT = "visit";

    private final Hall hall;
    private final Visitors visitors;
    private final Hosts hosts;
    private final DoorLog doors;

    Gate(Hall hall, Visitors visitors, Hosts hosts, DoorLog doors) {
        this.hall = hall;
        this.visitors = visitors;
        this.hosts = hosts;
        this.doors = doors;
    }

    /** The visit of this request, made once: what the guard let in is what the page answers. */
    @Override
    public Visit visit(Context ctx) {
        Visit known = ctx.attribute(VISIT);
        if (known != null) {
            return known;
        }
        Event event = hall.ledger().event();
        Visitor visitor = visitors.of(ctx, event);
        Asker asker = Asker.of(event, visitor.viewer(), hall.clock().instant(), hall.ledger(), hall.worked())
                .in(Spoken.of(ctx, hall.templates().languages()).tag());
        Visit visit = new Visit(ctx, hall, visitor, asker);
        ctx.attribute(VISIT, visit);
        return visit;
    }

    /** Before any page: may this visitor open the door, and does a form come from our own page? */
    void guard(Context ctx) {
        Set<RouteRole> known = ctx.routeRoles();
        Visit visit = visit(ctx);
        if (!hosts.knows(ctx.host())) {
            throw new Hosts.Unknown();
        }
        for (RouteRole door : known) {
            if (door instanceof Door one && !(one.opensFor(visit.role()) && isLetIn(one, visit))) {
                doors.stayedClosed(
                        ctx.method() + " " + address(ctx), visit.viewer().link().orElse("a stranger"), ctx.ip());
                throw new ClosedDoor(one);
            }
        }
        boolean oddParts = isInParts(ctx) && !known.contains(Parts.WELCOME);
        if (ctx.method().equals(HandlerType.POST) && (oddParts || !isFromOwnPage(ctx))) {
            doors.foreignForm(address(ctx), ctx.ip());
            throw new ClosedDoor(Door.ANYBODY);
        }
    }

    /** As the page says it, such as {@code /enter/{secret}}: what somebody put into it stands in no log. */
    static String address(Context ctx) {
        return ctx.routeRoles().stream()
                .filter(Routes.Route.class::isInstance)
                .map(route -> ((Routes.Route) route).path())
                .findFirst()
                .orElse("an address without a page");
    }

    private static boolean isLetIn(Door door, Visit visit) {
        return door != Door.NOTES || visit.event().isLetIn();
    }

    private boolean isFromOwnPage(Context ctx) {
        String origin = ctx.header("Origin");
        if (origin == null) {
            String site = ctx.header("Sec-Fetch-Site");
            return site == null || site.equals("same-origin") || site.equals("none");
        }
        return origin.equals(hall.address().url())
                || origin.replaceFirst("^https?://", "").equals(ctx.header("Host"));
    }

    /** Only forms with files are sent in parts; of any other address it cannot be a page of ours. */
    private static boolean isInParts(Context ctx) {
        return String.valueOf(ctx.contentType()).toLowerCase(Locale.ROOT).startsWith("multipart/");
    }
}
