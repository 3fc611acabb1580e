package tiewright.http.visit;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.security.RouteRole;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

/** Where pages say which address they answer and for whom. */
public final class Routes {
    private final RoutesConfig routes;
    private final Consumers visits;
    private final List<Route> known = new ArrayList<>();

    /**
     * An address that is answered. It goes with every request, so that a log can name the address without what somebody put into it.
     *
     * @param path such as {@code /tie/{tie}}
     */
    public record Route(HandlerType method, String path, Door door) implements RouteRole {}

    /** Turns a request into a visit. */
    public interface Consumers {
        Visit visit(Context ctx);
    }

    public Routes(RoutesConfig routes, Consumers visits) {
        this.routes = routes;
        this.visits = visits;
    }

    /** All addresses that were said so far, each once; HEAD is answered wherever GET is. */
    public List<Route> known() {
        return List.copyOf(known);
    }

    /** Answers HEAD as GET, the page itself left away (RFC 9110, 9.3.2): a closed page is closed to both. */
    public void get(Door door, String path, Consumer<Visit> page) {
        Route route = known(new Route(HandlerType.GET, path, door));
        routes.get(path, ctx -> page.accept(visits.visit(ctx)), door, route);
        routes.head(path, ctx -> page.accept(visits.visit(ctx)), door, route);
    }

    /** A page for everybody, which is the same for all who come without a link. */
    public void everybodys(String path, Function<Visit, Screen> page) {
        get(Door.ANYBODY, path, visit -> visit.showEverybodys(page));
    }

    /** A page for a wall: as anybody without a link gets it, whoever opens it. */
    public void onTheWall(String path, Function<Visit, Screen> page) {
        get(Door.ANYBODY, path, visit -> visit.asStranger().showEverybodys(page));
    }

    public void post(Door door, String path, Consumer<Visit> page) {
        Route route = known(new Route(HandlerType.POST, path, door));
        routes.post(path, ctx -> page.accept(visits.visit(ctx)), door, route);
    }

    /** For a form with files. */
    public void postInParts(Door door, String path, Consumer<Visit> page) {
        Route route = known(new Route(HandlerType.POST, path, door));
        routes.post(path, ctx -> page.accept(visits.visit(ctx)), door, route, Parts.WELCOME);
    }

    private Route known(Route route) {
        known.add(route);
        return route;
    }
}
