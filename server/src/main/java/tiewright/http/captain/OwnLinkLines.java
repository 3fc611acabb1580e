package tiewright.http.captain;

import java.util.List;
import tiewright.event.Link;
import tiewright.event.Role;
import tiewright.http.pieces.Button;
import tiewright.http.views.OwnLinksView;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.LinkSlips;
import tiewright.http.visit.Visit;

/** A link of the own club in lines: the acts of which it is the story, with who did them and when. */
final class OwnLinkLines {
    private OwnLinkLines() {}

    /** For whom it is, when and by whom it was made, how it stands, and what may be done with it. */
    static OwnLinksView.Line of(Visit visit, Link link, List<Button> buttons) {
        return new OwnLinksView.Line(
                link.name(), whom(visit, link), said(visit, link.life().made()), state(visit, link), buttons);
    }

    private static String whom(Visit visit, Link link) {
        return visit.say(
                "page-captain.whose-and-what",
                "whom",
                LinkSlips.whom(visit.event(), link.club(), link.player(), link.label()),
                "may",
                LinkSlips.may(visit.words(), link.role()));
    }

    private static String state(Visit visit, Link link) {
        Link.Life life = link.life();
        if (life.ended().isPresent()) {
            return visit.say(
                    "page-captain.ended", "act", said(visit, life.ended().get()));
        }
        if (isOwn(visit, link)) {
            return visit.say("page-captain.this-one");
        }
        if (link.role() != Role.CAPTAIN) {
            return visit.say("page-captain.in-use");
        }
        return life.letIn()
                .map(act -> act.equals(life.made())
                        ? visit.say("page-captain.in-use")
                        : visit.say("page-captain.was-let-in", "act", said(visit, act)))
                .orElseGet(() -> visit.say("page-captain.waits"));
    }

    private static String said(Visit visit, Link.Act act) {
        return visit.say(
                "page-captain.act",
                "at",
                HallClock.said(visit.event().clock(act.at())),
                "role",
                act.by().role().code(),
                "by",
                act.by().name());
    }

    /** Whether it is the one that asks. */
    static boolean isOwn(Visit visit, Link link) {
        return visit.viewer().link().filter(link.name()::equals).isPresent();
    }
}
