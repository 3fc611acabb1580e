package tiewright.http.visit;

import io.javalin.http.HandlerType;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Link;
import tiewright.event.Role;
import tiewright.event.SetUpFact;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.Answers;
import tiewright.http.pieces.Frame;
import tiewright.http.pieces.NavLink;
import tiewright.wording.Words;

/** What stands round a page: event, reader, how fresh it is, where one can go. */
final class Frames {
    private Frames() {}

    static Frame of(Visit visit, String title) {
        Frame.Named event = event(visit);
        return new Frame(
                Spoken.speech(visit),
                title,
                event,
                who(visit, event.name()),
                age(visit),
                alarms(visit),
                hurt(visit),
                Places.of(visit));
    }

    /** In red on every page: that nothing here counts, then what touches the reader's club. */
    private static List<NavLink> alarms(Visit visit) {
        List<NavLink> alarms = new ArrayList<>();
        if (visit.hall().laptop().isRehearsal()) {
            alarms.add(new NavLink("/help/day", visit.say("frame.rehearsal"), false));
        }
        alarms.addAll(ClubAlarms.of(visit));
        return alarms;
    }

    private static Frame.Named event(Visit visit) {
        Words words = visit.words();
        return visit.event()
                .about()
                .map(about -> new Frame.Named(about.name(), eventLine(about, words), standstill(visit)))
                .orElseGet(() -> new Frame.Named(
                        words.say("frame.being-set-up-short"), words.say("frame.being-set-up"), Optional.empty()));
    }

    /** Everybody reads that all play is stopped, on every page; who may end it is led to where. */
    private static Optional<NavLink> standstill(Visit visit) {
        return visit.event()
                .order()
                .stop(visit.event().about(), visit.event().now())
                .map(stop -> new NavLink(
                        Door.DESK.opensFor(visit.role()) ? "/desk#standstill" : "",
                        visit.say("frame.play-is-stopped", "until", HallClock.said(stop.until())),
                        false));
    }

    private static String eventLine(SetUpFact.EventDescribed about, Words words) {
        return about.name() + ", " + words.weekdayAndDate(about.date()) + ", " + about.venue();
    }

    private static Frame.Age age(Visit visit) {
        VisibleEvent event = visit.event();
        Words words = visit.words();
        return new Frame.Age(
                version(event, words),
                words.say("frame.as-of", "at", HallClock.said(event.clock(event.now()))),
                visit.ask(Answers::new)
                        .lastFromDesk()
                        .map(at -> words.say("frame.heard", "at", HallClock.said(event.clock(at))))
                        .orElseGet(() -> words.say("frame.not-heard")),
                event.now(),
                visit.ctx().method().equals(HandlerType.POST));
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

    /** Whoever may stop a court finds the way in the head of every page. */
    private static Optional<NavLink> hurt(Visit visit) {
        return Door.STOP.opensFor(visit.role())
                ? Optional.of(new NavLink(
                        "/hurt", visit.say("frame.hurt"), visit.ctx().path().equals("/hurt")))
                : Optional.empty();
    }

    private static Frame.Reader who(Visit visit, String event) {
        return visit.visitor()
                .link()
                .map(link -> new Frame.Reader(
                        name(visit, link, event),
                        visit.say("frame.you-are", "whom", whom(visit, link)),
                        styles(link.role())))
                .orElseGet(() -> new Frame.Reader(event, "", List.of()));
    }

    /** What the pages of a role look like beyond what everybody's do; pages of its own need it before they are shown. */
    private static List<String> styles(Role role) {
        return switch (role) {
            case PUBLIC, PLAYER -> List.of();
            case CAPTAIN -> List.of("cards", "captain");
            case VOLUNTEER, DESK, ORGANISER, REFEREE -> List.of("cards", "desk");
        };
    }

    private static String name(Visit visit, Link link, String event) {
        if (link.role() == Role.PUBLIC) {
            return event;
        }
        if (link.role() == Role.PLAYER) {
            return link.player().map(visit.event()::name).orElseGet(() -> club(visit, link));
        }
        return link.role() == Role.CAPTAIN ? club(visit, link) : at(visit, link);
    }

    /** Where several people share a link, the one who sits there now is named too. */
    private static String at(Visit visit, Link link) {
        String at = visit.say("frame.at." + link.role().code());
        String sitting = visit.visitor().sitting();
        return sitting.isEmpty() ? at : visit.say("frame.sitting", "at", at, "who", sitting);
    }

    private static String club(Visit visit, Link link) {
        return link.club().map(visit.event()::clubName).orElse("");
    }

    private static String whom(Visit visit, Link link) {
        Words words = visit.words();
        return switch (link.role()) {
            case CAPTAIN -> words.say("frame.captain", "club", club(visit, link), "label", link.label());
            case PLAYER ->
                words.say(
                        "frame.player",
                        "player",
                        link.player().map(visit.event()::name).orElseGet(() -> words.say("frame.a-player")),
                        "club",
                        club(visit, link));
            case PUBLIC, VOLUNTEER, DESK, ORGANISER, REFEREE ->
                words.say("frame.role." + link.role().code(), "label", link.label());
        };
    }
}
