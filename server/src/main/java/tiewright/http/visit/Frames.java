package tiewright.http.visit;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import tiewright.event.ClubId;
import tiewright.event.Link;
import tiewright.event.Role;
import tiewright.event.SetUpFact;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.Answers;
import tiewright.http.pieces.Frame;
import tiewright.http.pieces.NavLink;

/** What stands round a page: event, version, how old it is, as whom one is here, where one can go. */
final class Frames {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.ENGLISH);

    private Frames() {}

    static Frame of(Visit visit, String title) {
        VisibleEvent event = visit.event();
        String now = HallClock.said(event.clock(event.now()));
        List<NavLink> own = own(visit, visit.ctx().path());
        List<NavLink> everybodys = everybodys(visit.ctx().path());
        return new Frame(
                "en",
                title,
                event.about().map(Frames::eventLine).orElse("An event that is still being set up"),
                "Version " + event.version() + plan(event),
                "as of " + now,
                visit.ask(Answers::new)
                        .lastFromDesk()
                        .map(at -> "last heard from the desk at " + HallClock.said(event.clock(at)))
                        .orElse("the desk has not entered anything yet"),
                roleLine(visit),
                own.isEmpty() ? everybodys : own,
                own.isEmpty()
                        ? List.of()
                        : Stream.concat(laterOn(visit).stream(), everybodys.stream())
                                .toList(),
                Countdowns.dueSoon(visit),
                event.now());
    }

    /** Which plan holds: two versions on a wall can be told apart. */
    private static String plan(VisibleEvent event) {
        return event.order()
                .plan()
                .map(plan -> ", order of play " + plan.version() + " of " + HallClock.said(event.clock(plan.at()))
                        + " (notice " + plan.notice() + ")")
                .orElse("");
    }

    private static String eventLine(SetUpFact.EventDescribed about) {
        return about.name() + ", " + DAY.format(about.date()) + ", " + about.venue();
    }

    private static String roleLine(Visit visit) {
        return visit.visitor()
                .link()
                .map(link -> "You are here as " + whom(visit, link))
                .orElse("");
    }

    private static String whom(Visit visit, Link link) {
        String club = link.club().map(visit.event()::clubName).orElse("");
        return switch (link.role()) {
            case CAPTAIN -> "captain or deputy of " + club + " (" + link.label() + ")";
            case PLAYER -> link.player().map(visit.event()::name).orElse("a player") + ", " + club;
            case PUBLIC, VOLUNTEER, DESK, ORGANISER, REFEREE -> link.role().code() + " (" + link.label() + ")";
        };
    }

    private static List<NavLink> everybodys(String here) {
        return List.of(
                link("/", "Now", here),
                link("/ties", "Ties", here),
                link("/tables", "Tables", here),
                link("/bracket", "Knockout", here),
                link("/notices", "Notices", here),
                link("/clubs", "Clubs", here),
                link("/conditions", "Conditions", here));
    }

    private static List<NavLink> own(Visit visit, String here) {
        return switch (visit.role()) {
            case PUBLIC -> List.of();
            case PLAYER ->
                visit.viewer()
                        .player()
                        .map(player -> List.of(link("/player/" + player.code(), "My next", here)))
                        .orElse(List.of(link("/club/" + code(visit), "My club", here)));
            case CAPTAIN ->
                List.of(
                        link("/captain", "My ties", here),
                        link("/captain/day", "My day", here),
                        link("/captain/squad", "My squad", here));
            case VOLUNTEER -> List.of(link("/cards", "Enter a card", here));
            case DESK, REFEREE -> desk(here);
            case ORGANISER -> {
                List<NavLink> links = new ArrayList<>(List.of(link("/organiser", "Organise", here)));
                links.addAll(desk(here));
                yield links;
            }
        };
    }

    /** The own pages that are not asked for between two rubbers: on a phone they would push the page itself out of sight. */
    private static List<NavLink> laterOn(Visit visit) {
        String here = visit.ctx().path();
        return visit.role() != Role.CAPTAIN
                ? List.of()
                : List.of(
                        link("/captain/form", "Form and chemistry", here),
                        link("/captain/playing-time", "Playing time", here),
                        link("/captain/record", "Advice scored", here));
    }

    private static List<NavLink> desk(String here) {
        return List.of(
                link("/desk", "Desk", here),
                link("/cards", "Cards", here),
                link("/desk/check-in", "Check-in", here),
                link("/desk/safety", "Safety", here),
                link("/paper", "Paper", here),
                link("/log", "Log", here));
    }

    private static String code(Visit visit) {
        return visit.viewer().club().map(ClubId::code).orElse("");
    }

    private static NavLink link(String href, String text, String here) {
        return new NavLink(href, text, href.equals(here));
    }
}
