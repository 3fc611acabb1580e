package tiewright.http.desk;

import java.time.Instant;
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
import tiewright.http.visit.Door;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Visit;

/** Which time is right, after the machine's clock has jumped: the one question that only a person in the hall can answer. */
final class ClockPage implements Page {
    private static final Logger LOG = LoggerFactory.getLogger(ClockPage.class);
    private static final String HERE = "/desk/clock";
    private static final String FORM = "clock";
    private static final String RIGHT = "right";
    private static final String MACHINE = "machine";
    private static final String COUNTED = "counted";
    private static final DateTimeFormatter DAY_AND_TIME =
            DateTimeFormatter.ofPattern("HH:mm:ss 'on' EEEE d MMMM uuuu", Locale.ENGLISH);

    @Override
    public void at(Routes routes) {
        routes.get(Door.DESK, HERE, visit -> visit.show(Screen.of("work", "What time is it", view(visit))));
        routes.post(Door.DESK, HERE, ClockPage::answer);
    }

    private static void answer(Visit visit) {
        String right = visit.form().text(RIGHT);
        WitnessedClock clock = visit.hall().clock();
        if (clock.doubt().isPresent() && (right.equals(MACHINE) || right.equals(COUNTED))) {
            clock.decide(right.equals(MACHINE));
            LOG.warn("The {} said that the {} time is right: {}.", visit.role().code(), right, clock.instant());
        }
        visit.go(HERE);
    }

    private static WorkView view(Visit visit) {
        return new WorkView(
                Refusal.NONE,
                new NavLink("/desk", "Back to the desk", false),
                List.of(),
                List.of(visit.hall()
                        .clock()
                        .doubt()
                        .map(doubt -> asked(visit, doubt))
                        .orElseGet(() -> WorkView.Section.of(
                                FORM,
                                "",
                                "It is " + said(visit, visit.hall().clock().instant())
                                        + " in the hall, and nothing speaks against it."))));
    }

    private static WorkView.Section asked(Visit visit, WitnessedClock.Doubt doubt) {
        return WorkView.Section.of(
                        FORM,
                        "Which time is right?",
                        "The computer's clock says " + said(visit, doubt.machine())
                                + ". By what was known before, and what has passed since, it is "
                                + said(visit, doubt.counted())
                                + ". The clock was set, or the computer slept or was switched off.",
                        "Until somebody says which is right, time stands still at " + said(visit, doubt.stoodAt())
                                + ": no sheets are opened, no form is closed by its deadline and nothing is deleted. Cards, sheets and notices are"
                                + " taken as before. What was opened before stays open.",
                        "Look at a clock on the wall or a phone. If the computer is wrong, you may also set its clock: when it is right again,"
                                + " this question goes away by itself.")
                .with(new WorkView.WorkForm(
                        FORM,
                        HERE,
                        List.of(),
                        List.of(
                                Button.other("It is " + said(visit, doubt.machine()))
                                        .sending(RIGHT, MACHINE),
                                Button.other("It is " + said(visit, doubt.counted()))
                                        .sending(RIGHT, COUNTED))));
    }

    private static String said(Visit visit, Instant moment) {
        return DAY_AND_TIME.format(moment.atZone(visit.event().zone()));
    }
}
