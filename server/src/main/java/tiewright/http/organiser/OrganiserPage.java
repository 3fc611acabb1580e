package tiewright.http.organiser;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Club;
import tiewright.event.Link;
import tiewright.event.Role;
import tiewright.event.Stage;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.EntryAnswers;
import tiewright.http.pieces.DoNext;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.State;
import tiewright.http.views.OrganiserView;
import tiewright.http.visit.Addresses;
import tiewright.http.visit.Cautions;
import tiewright.http.visit.Counted;
import tiewright.http.visit.DoNextViews;
import tiewright.http.visit.Door;
import tiewright.http.visit.OpeningWords;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Visit;
import tiewright.wording.DeletionWords;

/** From nothing to a published day, step by step, and what waits for the organiser now. */
final class OrganiserPage implements Page {
    static final String HERE = "/organiser";
    private static final State DONE = new State(Mark.KEPT, "done");
    private static final State TO_DO = new State(Mark.HELD, "to do");
    private static final State LATER = new State(Mark.PLAIN, "later");

    @Override
    public void at(Routes routes) {
        routes.get(Door.ORGANISER, HERE, visit -> visit.show(Screen.of("organiser", "Organise", view(visit))));
    }

    private static OrganiserView view(Visit visit) {
        return new OrganiserView(
                new DoNext("From nothing to a published day", steps(visit), ""),
                new DoNextViews(visit).list(),
                places(),
                Cautions.OF_THE_DESK);
    }

    private static List<DoNext.Item> steps(Visit visit) {
        VisibleEvent event = visit.event();
        return List.of(
                step(
                        "Describe the event",
                        event.about()
                                .map(about -> about.name() + ", " + about.date() + ", " + about.venue())
                                .orElse(""),
                        event.about().isPresent(),
                        "/organiser/event"),
                step(
                        "Choose the conditions of play",
                        conditions(event),
                        event.conditionsVersion() > 0,
                        "/organiser/conditions"),
                step(
                        "Enter the courts",
                        Counted.of(event.courts().size(), "court"),
                        !event.courts().isEmpty(),
                        "/organiser/courts"),
                step(
                        "Enter clubs and squads",
                        squads(event),
                        event.clubs().size() > 1 && withoutSquad(event) == 0,
                        "/organiser/clubs"),
                warnings(visit),
                step("Say who opens the sheets", opening(event), event.opening().isPresent(), "/organiser/opening"),
                step(
                        "Draw the pools in public",
                        event.pools().isEmpty() ? "" : Counted.of(event.pools().size(), "pool"),
                        !event.pools().isEmpty(),
                        "/organiser/draw"),
                step(
                        "Say where help is: first aid, defibrillator, emergency number",
                        event.safety().firstAid(),
                        !event.safety().firstAid().isEmpty()
                                && !event.safety().emergency().isEmpty(),
                        "/organiser/help"),
                step(
                        "See whether the day fits",
                        "Rubbers, courts and hours before entries close; nothing is kept.",
                        !event.pools().isEmpty(),
                        "/organiser/budget"),
                step(
                        "Make the order of play",
                        event.order()
                                .plan()
                                .map(plan -> "Version " + plan.version() + " is published.")
                                .orElse(
                                        "Courts and times for all ties at once, with the earliest end there can be; or write them by hand in the next step."),
                        event.order().plan().isPresent() || allTimed(event),
                        Addresses.PLAN),
                timing(event),
                step(
                        "Lay out the knockout in public",
                        "Needed only if there is one.",
                        hasKnockout(event),
                        "/organiser/knockout"),
                step(
                        "Promise the day on which private data are deleted",
                        event.deletion()
                                .promised()
                                .map(one -> DeletionWords.day(one.date()))
                                .orElse("Names, birth years and what clubs note are not needed for ever."),
                        event.deletion().promised().isPresent(),
                        PrivateDataPage.HERE),
                step(
                        "Hand out the personal links",
                        links(event),
                        withoutLink(event).isEmpty() && !event.clubs().isEmpty(),
                        "/organiser/links"));
    }

    private static DoNext.Item step(String what, String detail, boolean done, String href) {
        return new DoNext.Item(what, detail, "", done ? DONE : TO_DO, href, done ? "Look or change" : "Do this");
    }

    private static DoNext.Item warnings(Visit visit) {
        int warnings = visit.ask(EntryAnswers::new).entryWarnings().size();
        State state = warnings > 0
                ? new State(Mark.HELD, "look at it")
                : visit.event().clubs().isEmpty() ? LATER : DONE;
        String detail = warnings == 0
                ? "Nothing looks wrong."
                : Counted.of(warnings, "warning") + " about clubs or names that look alike.";
        return new DoNext.Item(
                "Look at the warnings about the entries",
                visit.event().clubs().isEmpty() ? "" : detail,
                "",
                state,
                "/organiser/clubs#part-warnings",
                "Look");
    }

    private static boolean allTimed(VisibleEvent event) {
        return !event.ties().isEmpty()
                && event.ties().stream().allMatch(tie -> tie.start().isPresent());
    }

    private static DoNext.Item timing(VisibleEvent event) {
        long timed =
                event.ties().stream().filter(tie -> tie.start().isPresent()).count();
        String detail = event.ties().isEmpty()
                ? "The ties are there once the pools are drawn."
                : timed + " of " + event.ties().size() + " ties have a start. A sheet's deadline counts from it.";
        return step(
                "Give each tie its start and court",
                detail,
                timed > 0 && timed == event.ties().size(),
                "/organiser/times");
    }

    private static String conditions(VisibleEvent event) {
        return event.conditionsVersion() == 0
                ? "Until you choose, the preset " + event.conditions().base().printed() + " holds."
                : "Version " + event.conditionsVersion() + ", from the preset "
                        + event.conditions().base().printed() + ".";
    }

    private static String squads(VisibleEvent event) {
        long without = withoutSquad(event);
        return event.clubs().isEmpty()
                ? ""
                : Counted.of(event.clubs().size(), "club") + ", "
                        + Counted.of(event.players().size(), "player")
                        + (without == 0 ? "." : "; " + Counted.of((int) without, "club") + " without a squad.");
    }

    private static long withoutSquad(VisibleEvent event) {
        return event.clubs().stream()
                .filter(club -> event.squad(club.id()).isEmpty())
                .count();
    }

    private static String opening(VisibleEvent event) {
        return event.opening().map(OpeningWords::of).orElse("An organiser who also plays must not open sheets.");
    }

    private static boolean hasKnockout(VisibleEvent event) {
        return event.ties().stream().anyMatch(tie -> tie.stage() == Stage.KNOCKOUT);
    }

    private static String links(VisibleEvent event) {
        List<String> without = withoutLink(event);
        long held = event.links().stream().filter(link -> !link.revoked()).count();
        String line = Counted.of((int) held, "link") + " in use.";
        return without.isEmpty() ? line : line + " No captain's link yet: " + String.join(", ", without) + ".";
    }

    private static List<String> withoutLink(VisibleEvent event) {
        List<String> without = new ArrayList<>();
        for (Club club : event.clubs()) {
            Optional<Link> link = event.links().stream()
                    .filter(one -> !one.revoked()
                            && one.role() == Role.CAPTAIN
                            && one.club().filter(club.id()::equals).isPresent())
                    .findFirst();
            if (link.isEmpty()) {
                without.add(club.name());
            }
        }
        return without;
    }

    private static List<NavLink> places() {
        return List.of(
                new NavLink("/organiser/dry-run", "Dry run of the conditions: when would only a lot decide?", false),
                new NavLink(Addresses.BREAKS, "The day breaks: rain, a lost court, a late club", false),
                new NavLink("/desk/safety", "Heat and safety", false),
                new NavLink("/organiser/tables", "Sign tables, draw lots, withdraw a club", false),
                new NavLink("/organiser/rulings", "Give a ruling", false),
                new NavLink("/protests", "Protests", false),
                new NavLink("/hurt", "Who is marked as hurt or ill", false),
                new NavLink("/organiser/cases", "Rulings needed: ineligible players, wrong order", false),
                new NavLink("/organiser/notices", "Post a notice", false),
                new NavLink("/log", "Read the log", false),
                new NavLink("/organiser/backup", "Take a backup", false),
                new NavLink(PrivateDataPage.HERE, "Private data: what is held, and when it is deleted", false));
    }
}
