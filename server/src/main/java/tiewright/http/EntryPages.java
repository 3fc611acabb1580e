package tiewright.http;

import java.util.Optional;
import tiewright.event.Link;
import tiewright.http.pieces.EmptyPlace;
import tiewright.http.visit.Door;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Visit;

/** Coming in by a personal link, finding the own page, going out. */
final class EntryPages implements Page {
    private static final int GONE = 410;

    private final Visitors visitors;

    EntryPages(Visitors visitors) {
        this.visitors = visitors;
    }

    @Override
    public void at(Routes routes) {
        routes.get(Door.ANYBODY, "/enter/{secret}", this::enter);
        routes.get(Door.ANYBODY, "/my", visit -> visit.go(home(visit)));
        routes.post(Door.ANYBODY, "/leave", visit -> {
            visitors.leave(visit.ctx());
            visit.go("/");
        });
    }

    private void enter(Visit visit) {
        Optional<Link> link =
                visitors.link(visit.path("secret"), visit.hall().ledger().event());
        if (link.isEmpty()) {
            visit.show(
                    GONE,
                    Screen.of(
                            "failure",
                            visit.words().say("page-service.this-link-no-longer-holds"),
                            new EmptyPlace(
                                    visit.words().say("page-service.the-personal-link-was-replaced"),
                                    visit.words().say("page-service.ask-the-organiser-for-a"),
                                    "/",
                                    visit.words().say("page-service.what-is-on-now"))));
            return;
        }
        visitors.enter(visit.ctx(), link.get(), visit.visitor());
        visit.go("/my");
    }

    private static String home(Visit visit) {
        return switch (visit.role()) {
            case PUBLIC -> "/";
            case PLAYER ->
                visit.viewer()
                        .player()
                        .map(player -> "/player/" + player.code())
                        .orElse("/club/" + visit.club().code());
            case CAPTAIN -> "/captain";
            case VOLUNTEER -> "/cards";
            case DESK, REFEREE -> "/desk";
            case ORGANISER -> "/organiser";
        };
    }
}
