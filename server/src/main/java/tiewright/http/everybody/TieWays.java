package tiewright.http.everybody;

import java.util.ArrayList;
import java.util.List;
import tiewright.event.Role;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.NavLink;
import tiewright.http.views.TieView;
import tiewright.http.visit.Door;
import tiewright.http.visit.Visit;

/** What a reader can do about a tie: a captain of one of its clubs most, everybody its paper. */
record TieWays(Visit visit, Tie tie) {
    List<TieView.Way> all() {
        VisibleEvent event = visit.event();
        List<TieView.Way> ways = new ArrayList<>();
        boolean own = visit.role() == Role.CAPTAIN && tie.has(visit.club());
        boolean goesOn = event.goesOn(tie);
        if (own && tie.isReady() && !tie.isOpened() && goesOn) {
            ways.add(way("/captain/sheet/" + tie.id(), "own-sheet"));
        }
        if (own && tie.isOpened() && goesOn && event.progress(tie).canComeToDecider() && !tie.isDeciderOpened()) {
            ways.add(way("/captain/decider/" + tie.id(), "own-pair"));
        }
        if (tie.isOpened() && goesOn && (own || Door.DESK.opensFor(visit.role()))) {
            ways.add(way("/cards/" + tie.id(), "scores"));
        }
        if (own && tie.isOpened()) {
            ways.addAll(afterOpening(goesOn));
        }
        if (Door.DESK.opensFor(visit.role())) {
            ways.add(way("/desk/tie/" + tie.id(), "desk"));
        }
        ways.add(way("/paper/tie/" + tie.id(), "paper"));
        return ways;
    }

    private List<TieView.Way> afterOpening(boolean goesOn) {
        List<TieView.Way> ways = new ArrayList<>();
        if (goesOn) {
            ways.add(way("/captain/proposal/" + tie.id(), "worth"));
        }
        ways.add(way("/protests", "object"));
        ways.add(way("/hurt", "cannot-play"));
        return ways;
    }

    private TieView.Way way(String href, String what) {
        return new TieView.Way(
                new NavLink(href, visit.say("page-everybody.way-" + what), false),
                visit.say("page-everybody.way-" + what + "-detail"));
    }
}
