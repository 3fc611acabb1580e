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
import tiewright.wording.Words;

/** From nothing to a published day, step by step, and what waits for the organiser now. */
final class OrganiserPage implements Page {
    static final String HERE = "/organiser";
    private static final State DONE = new State(Mark.KEPT, "done");
    private static final State TO_DO = new State(Mark.HELD, "to do");
    private static final State LATER = new State(Mark.PLAIN, "later");

    @Override
    public void at(Routes routes) {
        routes.get(
                Door.ORGANISER,
                HERE,
                visit -> visit.show(Screen.of("organiser", visit.words().say("page-organiser.organise"), view(visit))));
    }

    private static OrganiserView view(Visit visit) {
        return new OrganiserView(
                new DoNext(visit.words().say("page-organiser.from-nothing-to-a-published"), steps(visit), ""),
                new DoNextViews(visit).list(),
                places(),
                Cautions.ofTheDesk(visit.words()));
    }

    private static List<DoNext.Item> steps(Visit visit) {
        VisibleEvent event = visit.event();
        return List.of(
                step(
                        visit.words().say("page-organiser.describe-the-event"),
                        event.about()
                                .map(about -> about.name() + ", " + about.date() + ", " + about.venue())
                                .orElse(""),
                        event.about().isPresent(),
                        "/organiser/event"),
                step(
                        visit.words().say("page-organiser.choose-the-conditions-of-play"),
                        conditions(event),
                        event.conditionsVersion() > 0,
                        "/organiser/conditions"),
                step(
                        visit.words().say("page-organiser.enter-the-courts"),
                        Counted.of(event.courts().size(), "court"),
                        !event.courts().isEmpty(),
                        "/organiser/courts"),
                step(
                        visit.words().say("page-organiser.enter-clubs-and-squads"),
                        squads(event),
                        event.clubs().size() > 1 && withoutSquad(event) == 0,
                        "/organiser/clubs"),
                warnings(visit),
                step(
                        visit.words().say("page-organiser.say-who-opens-the-sheets"),
                        opening(event),
                        event.opening().isPresent(),
                        "/organiser/opening"),
                step(
                        visit.words().say("page-organiser.draw-the-pools-in-public"),
                        event.pools().isEmpty() ? "" : Counted.of(event.pools().size(), "pool"),
                        !event.pools().isEmpty(),
                        "/organiser/draw"),
                step(
                        visit.words().say("page-organiser.say-where-help-is-first"),
                        event.safety().firstAid(),
                        !event.safety().firstAid().isEmpty()
                                && !event.safety().emergency().isEmpty(),
                        "/organiser/help"),
                step(
                        visit.words().say("page-organiser.see-whether-the-day-fits"),
                        visit.words().say("page-organiser.rubbers-courts-and-hours-before"),
                        !event.pools().isEmpty(),
                        "/organiser/budget"),
                step(
                        visit.words().say("page-organiser.make-the-order-of-play"),
                        event.order()
                                .plan()
                                .map(plan -> visit.words()
                                        .say("page-organiser.version-is-published", "version", plan.version()))
                                .orElse(visit.words().say("page-organiser.courts-and-times-for-all")),
                        event.order().plan().isPresent() || allTimed(event),
                        Addresses.PLAN),
                timing(event),
                step(
                        visit.words().say("page-organiser.lay-out-the-knockout-in"),
                        visit.words().say("page-organiser.needed-only-if-there-is"),
                        hasKnockout(event),
                        "/organiser/knockout"),
                step(
                        visit.words().say("page-organiser.promise-the-day-on-which"),
                        event.deletion()
                                .promised()
                                .map(one -> DeletionWords.day(one.date()))
                                .orElse(visit.words().say("page-organiser.names-birth-years-and-what")),
                        event.deletion().promised().isPresent(),
                        PrivateDataPage.HERE),
                step(
                        visit.words().say("page-organiser.hand-out-the-personal-links"),
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
                ? new State(Mark.HELD, visit.words().say("page-organiser.look-at-it"))
                : visit.event().clubs().isEmpty() ? LATER : DONE;
        String detail = warnings == 0
                ? visit.words().say("page-organiser.nothing-looks-wrong")
                : visit.words()
                        .say("page-organiser.about-clubs-or-names-that", "warning", Counted.of(warnings, "warning"));
        return new DoNext.Item(
                visit.words().say("page-organiser.look-at-the-warnings-about"),
                visit.event().clubs().isEmpty() ? "" : detail,
                "",
                state,
                "/organiser/clubs#part-warnings",
                visit.words().say("page-organiser.look"));
    }

    private static boolean allTimed(VisibleEvent event) {
        return !event.ties().isEmpty()
                && event.ties().stream().allMatch(tie -> tie.start().isPresent());
    }

    private static DoNext.Item timing(VisibleEvent event) {
        long timed =
                event.ties().stream().filter(tie -> tie.start().isPresent()).count();
        String detail = event.ties().isEmpty()
                ? Words.of(event).say("page-organiser.the-ties-are-there-once")
                : Words.of(event)
                        .say(
                                "page-organiser.of-ties-have-a-start",
                                "timed",
                                timed,
                                "ties",
                                event.ties().size());
        return step(
                Words.of(event).say("page-organiser.give-each-tie-its-start"),
                detail,
                timed > 0 && timed == event.ties().size(),
                "/organiser/times");
    }

    private static String conditions(VisibleEvent event) {
        return event.conditionsVersion() == 0
                ? Words.of(event)
                        .say(
                                "page-organiser.until-you-choose-the-preset",
                                "printed",
                                event.conditions().base().printed())
                : Words.of(event)
                        .say(
                                "page-organiser.version-from-the-preset",
                                "conditionsVersion",
                                event.conditionsVersion(),
                                "printed",
                                event.conditions().base().printed());
    }

    private static String squads(VisibleEvent event) {
        long without = withoutSquad(event);
        return event.clubs().isEmpty()
                ? ""
                : Counted.of(event.clubs().size(), "club") + ", "
                        + Counted.of(event.players().size(), "player")
                        + (without == 0
                                ? "."
                                : Words.of(event)
                                        .say(
                                                "page-organiser.without-a-squad",
                                                "club",
                                                Counted.of((int) without, "club")));
    }

    private static long withoutSquad(VisibleEvent event) {
        return event.clubs().stream()
                .filter(club -> event.squad(club.id()).isEmpty())
                .count();
    }

    private static String opening(VisibleEvent event) {
        return event.opening()
                .map(OpeningWords::of)
                .orElse(Words.of(event).say("page-organiser.an-organiser-who-also-plays"));
    }

    private static boolean hasKnockout(VisibleEvent event) {
        return event.ties().stream().anyMatch(tie -> tie.stage() == Stage.KNOCKOUT);
    }

    private static String links(VisibleEvent event) {
        List<String> without = withoutLink(event);
        long held = event.links().stream().filter(link -> !link.revoked()).count();
        String line = Words.of(event).say("page-organiser.in-use", "link", Counted.of((int) held, "link"));
        return without.isEmpty()
                ? line
                : Words.of(event)
                        .say(
                                "page-organiser.no-captains-link-yet",
                                "line",
                                line,
                                "without",
                                String.join(", ", without));
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
