package tiewright.http.visit;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.function.Consumer;
import java.util.function.Function;

/** Where pages say which address they answer and for whom. */
public final class Routes {
    private final RoutesConfig routes;
    private final Consumers visits;

    /** Turns a request into a visit. */
    public interface Consumers {
        Visit visit(Context ctx);
    }

    public Routes(RoutesConfig routes, Consumers visits) {
        this.routes = routes;
        this.visits = visits;
    }

    /** Answers HEAD as GET, the page itself left away (RFC 9110, 9.3.2): a closed page is closed to both. */
    public void get(Door door, String path, Consumer<Visit> page) {
        routes.get(path, ctx -> page.accept(visits.visit(ctx)), door);
        routes.head(path, ctx -> page.accept(visits.visit(ctx)), door);
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
        routes.post(path, ctx -> page.accept(visits.visit(ctx)), door);
    }

    /** For a form with files. */
    public void postInParts(Door door, String path, Consumer<Visit> page) {
        routes.post(path, ctx -> page.accept(visits.visit(ctx)), door, Parts.WELCOME);
    }
}
