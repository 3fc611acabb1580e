package tiewright.http.desk;

import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tiewright.clock.WitnessedClock;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Refusal;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Addresses;
import tiewright.http.visit.Door;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Visit;

/** Which time is right, after the machine's clock has jumped: the one question that only a person in the hall can answer. */
final class ClockPage implements Page {
    private static final Logger LOG = LoggerFactory.getLogger(ClockPage.class);
    private static final String HERE = Addresses.CLOCK;
    private static final String FORM = "clock";
    private static final String RIGHT = "right";
    private static final String MACHINE = "machine";
    private static final String COUNTED = "counted";
    private static final DateTimeFormatter TO_THE_SECOND = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

    @Override
    public void at(Routes routes) {
        routes.get(
                Door.DESK,
                HERE,
                visit -> visit.show(Screen.of("work", visit.say("page-desk.what-time-is-it"), view(visit))));
        routes.post(Door.DESK, HERE, ClockPage::answer);
    }

    private static void answer(Visit visit) {
        String right = visit.form().text(RIGHT);
        WitnessedClock clock = visit.hall().clock();
        if (clock.doubt().isPresent() && (right.equals(MACHINE) || right.equals(COUNTED))) {
            visit.hall().laptop().decide(right.equals(MACHINE));
            LOG.warn("The {} said that the {} time is right: {}.", visit.role().code(), right, clock.instant());
        }
        visit.go(HERE);
    }

    private static WorkView view(Visit visit) {
        return new WorkView(
                Refusal.NONE,
                new NavLink("/desk", visit.say("page-desk.back-to-the-desk"), false),
                List.of(),
                List.of(visit.hall()
                        .clock()
                        .doubt()
                        .map(doubt -> asked(visit, doubt))
                        .orElseGet(() -> WorkView.Section.of(
                                FORM,
                                "",
                                visit.say(
                                        "page-desk.it-is-in-the-hall",
                                        "instant",
                                        said(visit, visit.hall().clock().instant()))))));
    }

    private static WorkView.Section asked(Visit visit, WitnessedClock.Doubt doubt) {
        return WorkView.Section.of(
                        FORM,
                        visit.say("page-desk.which-time-is-right"),
                        visit.say(
                                "page-desk.the-computers-clock-says-by",
                                "machine",
                                said(visit, doubt.machine()),
                                "counted",
                                said(visit, doubt.counted())),
                        visit.say("page-desk.until-somebody-says-which-is", "stoodAt", said(visit, doubt.stoodAt())),
                        visit.say("page-desk.look-at-a-clock-on"))
                .with(new WorkView.WorkForm(
                        FORM,
                        HERE,
                        List.of(),
                        List.of(
                                Button.other(visit.say("page-desk.it-is-2", "machine", said(visit, doubt.machine())))
                                        .sending(RIGHT, MACHINE),
                                Button.other(visit.say("page-desk.it-is", "counted", said(visit, doubt.counted())))
                                        .sending(RIGHT, COUNTED))));
    }

    private static String said(Visit visit, Instant moment) {
        ZonedDateTime there = moment.atZone(visit.event().zone());
        return visit.say(
                "page-desk.time-on-day",
                "time",
                TO_THE_SECOND.format(there),
                "day",
                visit.words().weekdayAndDate(there.toLocalDate()));
    }
}
