package tiewright.http.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.event.ExchangeId;
import tiewright.event.SheetKind;
import tiewright.event.Tie;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Refusal;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Addresses;
import tiewright.http.visit.Door;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.Laptop;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;

/** This laptop: whether its time is the hall's, what passed while it slept, its copies, and how a spare one takes over. */
final class LaptopPage implements Page {
    private static final String HERE = Addresses.LAPTOP;
    private static final String TIME = "time";
    private static final String SLEPT = "slept";
    private static final String COPY = "copy";

    @Override
    public void at(Routes routes) {
        routes.get(Door.DESK, HERE, visit -> visit.show(Screen.of("work", visit.say("page-desk.laptop"), view(visit))));
        routes.post(Door.DESK, HERE + "/" + TIME, visit -> press(visit, laptop(visit)::timeIsRight));
        routes.post(Door.DESK, HERE + "/" + SLEPT, visit -> press(visit, laptop(visit)::sleepIsKnown));
        routes.post(Door.DESK, HERE + "/" + COPY, visit -> press(visit, laptop(visit)::copyNow));
    }

    private static Laptop laptop(Visit visit) {
        return visit.hall().laptop();
    }

    private static void press(Visit visit, Runnable work) {
        work.run();
        visit.go(HERE);
    }

    private static WorkView view(Visit visit) {
        List<WorkView.Section> sections = new ArrayList<>();
        sections.add(time(visit));
        laptop(visit).slept().map(slept -> slept(visit, slept)).ifPresent(sections::add);
        sections.add(laptop(visit).copied().map(copied -> copies(visit, copied)).orElseGet(() -> none(visit)));
        sections.add(spare(visit));
        return new WorkView(
                Refusal.NONE,
                new NavLink("/desk", visit.say("page-desk.back-to-the-desk"), false),
                List.of(),
                sections);
    }

    private static WorkView.Section time(Visit visit) {
        if (visit.hall().clock().doubt().isPresent()) {
            return WorkView.Section.of(
                            TIME, visit.say("page-desk.laptop-time"), visit.say("page-desk.laptop-time-in-doubt"))
                    .with(new NavLink(Addresses.CLOCK, visit.say("page-desk.laptop-which-time"), false));
        }
        String now = HallClock.said(visit.event().clock(visit.event().now()));
        WorkView.Section section = WorkView.Section.of(
                TIME, visit.say("page-desk.laptop-time"), visit.say("page-desk.laptop-time-is", "now", now));
        return laptop(visit).asksForTime()
                ? section.saying(List.of(visit.say("page-desk.laptop-time-if-not")))
                        .with(press(TIME, visit.say("page-desk.laptop-time-right", "now", now)))
                : visit.hall().clock().isBelieved()
                        ? section
                        : section.saying(List.of(visit.say("page-desk.laptop-time-said")));
    }

    private static WorkView.WorkForm press(String name, String words) {
        return new WorkView.WorkForm(name, HERE + "/" + name, List.of(), List.of(Button.other(words)));
    }

    private static WorkView.Section slept(Visit visit, Laptop.Slept slept) {
        List<String> passed = visit.event().ties().stream()
                .flatMap(tie -> Stream.of(SheetKind.values()).map(kind -> new ExchangeId(tie.id(), kind)))
                .filter(exchange -> visit.event()
                        .deadline(exchange)
                        .filter(at -> at.isAfter(slept.from()) && !at.isAfter(slept.to()))
                        .isPresent())
                .map(exchange -> became(visit, exchange))
                .toList();
        return WorkView.Section.of(
                        SLEPT,
                        visit.say("page-desk.laptop-slept"),
                        visit.say(
                                "page-desk.laptop-slept-from",
                                "from",
                                clock(visit, slept.from()),
                                "to",
                                clock(visit, slept.to())))
                .saying(passed.isEmpty() ? List.of(visit.say("page-desk.laptop-slept-over-nothing")) : passed)
                .with(press(SLEPT, visit.say("page-desk.laptop-slept-known")));
    }

    /** What became of sheets whose time passed while nobody looked. */
    private static String became(Visit visit, ExchangeId exchange) {
        Tie tie = visit.event().tie(exchange.tie()).orElseThrow();
        Optional<String> opened = visit.event().exchange(exchange).openedAt().map(at -> clock(visit, at));
        return visit.say(
                opened.isPresent() ? "page-desk.laptop-then-opened" : "page-desk.laptop-then-waits",
                "tie",
                new TieViews(visit.event()).title(tie),
                "due",
                visit.event().deadline(exchange).map(at -> clock(visit, at)).orElse(""),
                "opened",
                opened.orElse(""));
    }

    private static String clock(Visit visit, Instant at) {
        return HallClock.said(visit.event().clock(at));
    }

    private static WorkView.Section copies(Visit visit, Laptop.Copied state) {
        List<String> lines = new ArrayList<>();
        lines.add(visit.say("page-desk.copies-go-to", "folder", state.folder()));
        lines.add(state.at()
                .map(at -> visit.say(
                        "page-desk.copies-last", "at", clock(visit, at), "file", state.file(), "facts", state.facts()))
                .orElse(visit.say("page-desk.copies-none-yet")));
        if (!state.trouble().isEmpty()) {
            lines.add(visit.say("page-desk.copies-trouble", "why", state.trouble()));
        }
        lines.add(visit.say("page-desk.copies-without-key"));
        return WorkView.Section.of(COPY, visit.say("page-desk.copies"))
                .saying(lines)
                .with(press(COPY, visit.say("page-desk.copies-now")));
    }

    private static WorkView.Section none(Visit visit) {
        return WorkView.Section.of(COPY, visit.say("page-desk.copies"), visit.say("page-desk.copies-not-asked"));
    }

    private static WorkView.Section spare(Visit visit) {
        return WorkView.Section.of(
                "spare",
                visit.say("page-desk.spare"),
                visit.say("page-desk.spare-1"),
                visit.say("page-desk.spare-2"),
                visit.say("page-desk.spare-3"),
                visit.say("page-desk.spare-4"),
                visit.say("page-desk.spare-5"));
    }
}
