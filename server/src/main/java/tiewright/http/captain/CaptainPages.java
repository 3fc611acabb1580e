package tiewright.http.captain;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.PlayerId;
import tiewright.event.Tie;
import tiewright.event.TieProgress;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.Answers;
import tiewright.http.answers.OwnSheets;
import tiewright.http.pieces.NavLink;
import tiewright.http.views.CaptainView;
import tiewright.http.visit.Calendars;
import tiewright.http.visit.Door;
import tiewright.http.visit.OwnDay;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;

/** A captain's ties: what is due, the day so far and ahead, and the way to each sheet, proposal and decider. */
final class CaptainPages implements Page {
    private static final int JUST_OFF = 15;

    @Override
    public void at(Routes routes) {
        routes.get(Door.CAPTAIN, "/captain", CaptainPages::show);
    }

    private static void show(Visit visit) {
        if (new OwnNext(visit).isTold()) {
            visit.go("/captain");
            return;
        }
        visit.show(Screen.of(
                "captain",
                visit.words().say("page-captain.my-ties", "club", visit.event().clubName(visit.club())),
                view(visit)));
    }

    private static CaptainView view(Visit visit) {
        List<Tie> ties = TieOrder.sorted(visit.event().tiesOf(visit.club()));
        OwnDay day = new OwnDay(visit, visit.club());
        return new CaptainView(
                new DueSheets(visit).all(ties),
                ties.stream().map(tie -> day.line(tie, href(visit, tie))).toList(),
                cards(visit, ties),
                new OwnNext(visit).next(ties),
                new OwnNext(visit).squad(),
                squad(visit, ties),
                unread(visit),
                Calendars.link(visit, visit.club(), Calendars.ALARMS_OF_CAPTAIN));
    }

    /** Before the opening a tie of the own club is the sheet that is named for it. */
    private static String href(Visit visit, Tie tie) {
        return tie.isReady() && !tie.isOpened() && visit.event().goesOn(tie)
                ? "/captain/sheet/" + tie.id()
                : "/tie/" + tie.id();
    }

    private static List<NavLink> cards(Visit visit, List<Tie> ties) {
        TieViews views = new TieViews(visit.event());
        List<NavLink> links = new ArrayList<>();
        for (Tie tie : ties) {
            if (tie.isOpened() && visit.event().goesOn(tie)) {
                links.add(new NavLink(
                        "/cards/" + tie.id(),
                        visit.words().say("page-captain.a-score-of", "tie", views.title(tie)),
                        false));
            }
            if (mayNeedPair(visit.event(), tie) && !visit.event().progress(tie).awaitsDecider()) {
                links.add(new NavLink(
                        "/captain/decider/" + tie.id(),
                        visit.words().say("page-captain.a-pair-should-it-come", "tie", views.title(tie)),
                        false));
            }
        }
        return links;
    }

    private static Optional<String> squad(Visit visit, List<Tie> ties) {
        Optional<Tie> next = ties.stream()
                .filter(tie -> visit.event().goesOn(tie))
                .filter(tie -> tie.isReady() && !tie.isOpened())
                .findFirst();
        Map<PlayerId, Integer> rests = next.map(tie -> visit.ask(OwnSheets::new).restedMinutes(tie.id()))
                .orElse(Map.of());
        if (rests.isEmpty() || !visit.event().isLetIn()) {
            return Optional.empty();
        }
        long off = rests.values().stream().filter(minutes -> minutes < JUST_OFF).count();
        return Optional.of(visit.words()
                .say(
                        "page-captain.squad-now",
                        "off",
                        off,
                        "rested",
                        visit.event().squad(visit.club()).size() - off,
                        "hurt",
                        visit.ask(Answers::new).hurt(visit.club()).size()));
    }

    private static Optional<String> unread(Visit visit) {
        VisibleEvent event = visit.event();
        boolean read = event.conditionsRead(visit.club()) >= event.conditionsVersion();
        return read || event.conditionsVersion() == 0
                ? Optional.empty()
                : Optional.of(visit.words()
                        .say(
                                "page-captain.read-version-of-the-conditions",
                                "conditionsVersion",
                                event.conditionsVersion()));
    }

    /** The tie goes on and can come to a decider whose pair is not opened. */
    static boolean mayNeedPair(VisibleEvent event, Tie tie) {
        TieProgress progress = event.progress(tie);
        return tie.isOpened() && event.goesOn(tie) && !tie.isDeciderOpened() && progress.canComeToDecider();
    }
}
