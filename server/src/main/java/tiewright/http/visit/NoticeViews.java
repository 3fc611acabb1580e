package tiewright.http.visit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import tiewright.event.Event;
import tiewright.event.OfficialFact;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Notice;
import tiewright.wording.Words;

/** Posted notices as pages show them, and the way to telling those whom they concern. */
public final class NoticeViews {
    private NoticeViews() {}

    public static Notice notice(VisibleEvent event, Event.Posted posted) {
        OfficialFact.NoticeStated notice = posted.notice();
        Words words = Words.of(event);
        String by = event.order().plans().stream()
                .filter(plan -> plan.notice() == notice.number())
                .findFirst()
                .map(plan -> words.say("page-visit.by", "by", plan.by()))
                .orElse("");
        return new Notice(
                words.say("page-visit.notice", "notice", notice.number()),
                words.saying(notice.text()),
                HallClock.said(event.clock(posted.at())),
                notice.before().map(words::saying).orElse(""),
                notice.after().map(words::saying).orElse(""),
                words.saying(notice.reason()),
                whom(event, posted),
                by,
                notice.tie().isPresent() ? List.of() : new Changes(event).of(notice.number()));
    }

    /** Who is concerned, as it stood when the notice was posted. */
    private static String whom(VisibleEvent event, Event.Posted posted) {
        List<String> clubs = event.order().concerned(posted.notice().number()).stream()
                .map(event::clubName)
                .toList();
        return posted.between()
                .map(between -> Words.say(
                        event,
                        "page-visit.concerns-2",
                        "between",
                        Words.of(event).saying(between)))
                .orElse(
                        clubs.isEmpty()
                                ? ""
                                : Words.say(event, "page-visit.concerns", "clubs", String.join(", ", clubs)));
    }

    /** For officials: the notices of which somebody is still to be told, newest first. */
    public static List<NavLink> toTell(VisibleEvent event) {
        List<NavLink> links = new ArrayList<>();
        for (Event.Posted posted : event.notices()) {
            int number = posted.notice().number();
            int left = event.order().concerned(number).size()
                    - event.order().told(number).size();
            if (left > 0) {
                links.add(new NavLink(
                        "/desk/notice/" + number,
                        Words.say(event, "page-visit.notice-tell", "value", number, "clubs", left),
                        false));
            }
        }
        Collections.reverse(links);
        return links;
    }
}
