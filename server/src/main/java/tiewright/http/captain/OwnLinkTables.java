package tiewright.http.captain;

import java.util.List;
import tiewright.event.Link;
import tiewright.event.Role;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.LinkSlips;
import tiewright.http.visit.Visit;

/** The own club's links as tables: the acts of which each is the story, with who did them and when. */
final class OwnLinkTables {
    private OwnLinkTables() {}

    /** Links with for whom each is, when and by whom it was made, and how it stands. */
    static ReasonTable of(Visit visit, String id, List<Link> links) {
        List<ReasonTable.Column> columns = List.of(
                new ReasonTable.Column(visit.say("page-captain.link"), false),
                new ReasonTable.Column(visit.say("page-captain.for-whom"), false),
                new ReasonTable.Column(visit.say("page-captain.made"), false),
                new ReasonTable.Column(visit.say("page-captain.how-it-stands"), false));
        List<ReasonTable.Row> rows = links.stream()
                .map(link -> ReasonTable.Row.of(List.of(
                        ReasonTable.Cell.of(link.name()),
                        ReasonTable.Cell.of(whom(visit, link)),
                        ReasonTable.Cell.of(said(visit, link.life().made())),
                        ReasonTable.Cell.of(state(visit, link)))))
                .toList();
        return new ReasonTable(id, visit.say("page-captain.who-did-what"), columns, rows, "");
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
