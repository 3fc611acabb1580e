package tiewright.http.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tiewright.event.ClubId;
import tiewright.event.Link;
import tiewright.event.Role;
import tiewright.event.SetUpFact;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.Answers;
import tiewright.http.pieces.Frame;
import tiewright.http.pieces.NavLink;
import tiewright.wording.Words;

/** What stands round a page: event, version, how old it is, as whom one is here, where one can go. */
final class Frames {
    private Frames() {}

    static Frame of(Visit visit, String title) {
        VisibleEvent event = visit.event();
        Words words = visit.words();
        String now = HallClock.said(event.clock(event.now()));
        List<NavLink> own = own(visit);
        List<NavLink> everybodys = everybodys(visit);
        return new Frame(
                Spoken.speech(visit),
                title,
                event.about().map(about -> eventLine(about, words)).orElseGet(() -> words.say("frame.being-set-up")),
                version(event, words),
                words.say("frame.as-of", "at", now),
                visit.ask(Answers::new)
                        .lastFromDesk()
                        .map(at -> words.say("frame.heard", "at", HallClock.said(event.clock(at))))
                        .orElseGet(() -> words.say("frame.not-heard")),
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
    private static String version(VisibleEvent event, Words words) {
        return event.order()
                .plan()
                .map(plan -> words.say(
                        "frame.version-and-plan",
                        "version",
                        event.version(),
                        "plan",
                        plan.version(),
                        "at",
                        plan.at(),
                        "notice",
                        plan.notice()))
                .orElseGet(() -> words.say("frame.version", "version", event.version()));
    }

    private static String eventLine(SetUpFact.EventDescribed about, Words words) {
        return about.name() + ", " + words.weekdayAndDate(about.date()) + ", " + about.venue();
    }

    private static String roleLine(Visit visit) {
        return visit.visitor()
                .link()
                .map(link -> visit.words().say("frame.you-are", "whom", whom(visit, link)))
                .orElse("");
    }

    private static String whom(Visit visit, Link link) {
        Words words = visit.words();
        String club = link.club().map(visit.event()::clubName).orElse("");
        return switch (link.role()) {
            case CAPTAIN -> words.say("frame.captain", "club", club, "label", link.label());
            case PLAYER ->
                words.say(
                        "frame.player",
                        "player",
                        link.player().map(visit.event()::name).orElseGet(() -> words.say("frame.a-player")),
                        "club",
                        club);
            case PUBLIC, VOLUNTEER, DESK, ORGANISER, REFEREE ->
                words.say("frame.role." + link.role().code(), "label", link.label());
        };
    }

    private static List<NavLink> everybodys(Visit visit) {
        return List.of(
                link("/", "now", visit),
                link("/ties", "ties", visit),
                link("/tables", "tables", visit),
                link("/bracket", "knockout", visit),
                link("/notices", "notices", visit),
                link("/clubs", "clubs", visit),
                link("/conditions", "conditions", visit));
    }

    private static List<NavLink> own(Visit visit) {
        return switch (visit.role()) {
            case PUBLIC -> List.of();
            case PLAYER ->
                visit.viewer()
                        .player()
                        .map(player -> List.of(link("/player/" + player.code(), "next", visit)))
                        .orElse(List.of(link("/club/" + code(visit), "my-club", visit)));
            case CAPTAIN ->
                List.of(
                        link("/captain", "my-ties", visit),
                        link("/captain/day", "my-day", visit),
                        link("/captain/squad", "my-squad", visit));
            case VOLUNTEER -> List.of(link("/cards", "card", visit));
            case DESK, REFEREE -> desk(visit);
            case ORGANISER -> {
                List<NavLink> links = new ArrayList<>(List.of(link("/organiser", "organise", visit)));
                links.addAll(desk(visit));
                yield links;
            }
        };
    }

    /** The own pages that are not asked for between two rubbers: on a phone they would push the page itself out of sight. */
    private static List<NavLink> laterOn(Visit visit) {
        return visit.role() != Role.CAPTAIN
                ? List.of()
                : List.of(
                        link("/captain/form", "form", visit),
                        link("/captain/playing-time", "playing-time", visit),
                        link("/captain/record", "record", visit));
    }

    private static List<NavLink> desk(Visit visit) {
        return List.of(
                link("/desk", "desk", visit),
                link("/cards", "cards", visit),
                link("/desk/check-in", "check-in", visit),
                link("/desk/safety", "safety", visit),
                link("/paper", "paper", visit),
                link("/log", "log", visit));
    }

    private static String code(Visit visit) {
        return visit.viewer().club().map(ClubId::code).orElse("");
    }

    private static NavLink link(String href, String where, Visit visit) {
        String text = visit.words().say("frame.go." + where);
        return new NavLink(href, text, href.equals(visit.ctx().path()));
    }
}
