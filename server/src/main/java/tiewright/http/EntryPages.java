package tiewright.http;

import io.javalin.http.HandlerType;
import java.util.List;
import java.util.Optional;
import tiewright.event.Link;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.EmptyPlace;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Refusal;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Door;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Visit;

/** Coming in by a personal link, finding the own page, going out. */
final class EntryPages implements Page {
    private static final int GONE = 410;
    private static final int LONGEST_NAME = 60;

    private final Visitors visitors;
    private final DoorLog doors;

    EntryPages(Visitors visitors, DoorLog doors) {
        this.visitors = visitors;
        this.doors = doors;
    }

    @Override
    public void at(Routes routes) {
        routes.get(Door.ANYBODY, "/enter/{secret}", this::enter);
        routes.post(Door.ANYBODY, "/enter/{secret}", this::press);
        routes.get(Door.ANYBODY, "/my", visit -> visit.go(home(visit)));
        routes.post(Door.DESK, "/desk/sit", this::sit);
        routes.post(Door.ANYBODY, "/leave", visit -> {
            visitors.leave(visit.ctx());
            visit.go("/");
        });
    }

    private void enter(Visit visit) {
        Optional<Link> link =
                visitors.link(visit.path("secret"), visit.hall().ledger().event());
        if (link.isEmpty()) {
            doors.unknownLink(visit.ctx().ip());
            visit.show(
                    GONE,
                    Screen.of(
                            "failure",
                            visit.say("page-service.this-link-no-longer-holds"),
                            new EmptyPlace(
                                    visit.say("page-service.the-personal-link-was-replaced"),
                                    visit.say("page-service.ask-the-organiser-for-a"),
                                    "/",
                                    visit.say("page-service.what-is-on-now"))));
            return;
        }
        if (isAsked(visit, link.get())) {
            enterAs(visit, link.get());
        } else {
            visit.show(askFirst(visit, link.get()));
        }
    }

    /** By the press on the page that asks, which no other site can send. */
    private void press(Visit visit) {
        visitors.link(visit.path("secret"), visit.hall().ledger().event())
                .ifPresentOrElse(link -> enterAs(visit, link), () -> enter(visit));
    }

    private void enterAs(Visit visit, Link link) {
        doors.opened(link, visit.ctx().ip());
        visitors.enter(visit.ctx(), link, visit.visitor());
        visit.go("/my");
    }

    /**
     * Whether a person opened the link: a page of another site that leads here, or a program that only looks, changes not who one
     * is. Browsers that do not say where they come from are believed, unless they are somebody else here already.
     */
    private static boolean isAsked(Visit visit, Link link) {
        String site = visit.ctx().header("Sec-Fetch-Site");
        boolean other = visit.visitor()
                .link()
                .filter(own -> !own.name().equals(link.name()))
                .isPresent();
        return visit.ctx().method().equals(HandlerType.GET)
                && (site == null ? !other : site.equals("none") || site.equals("same-origin"));
    }

    private static Screen askFirst(Visit visit, Link link) {
        return Screen.of(
                "work",
                visit.say("page-service.open-this-link"),
                new WorkView(
                        Refusal.NONE,
                        new NavLink("/", visit.say("page-service.what-is-on-now"), false),
                        List.of(visit.say("page-service.it-came-from-elsewhere", "label", link.label())),
                        List.of(WorkView.Section.of("enter", "")
                                .with(new WorkView.WorkForm(
                                        "enter",
                                        visit.ctx().path(),
                                        List.of(),
                                        List.of(Button.main(visit.say("page-service.open-it"))))))));
    }

    /** Asked at every hand-over, so that the log names a person and not a table. */
    private void sit(Visit visit) {
        String name = visit.form().text("sitting").replaceAll("\\s+", " ");
        visitors.sit(visit.ctx(), visit.visitor(), name.substring(0, Math.min(name.length(), LONGEST_NAME)));
        visit.go("/desk");
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
