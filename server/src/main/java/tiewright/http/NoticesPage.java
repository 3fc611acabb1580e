package tiewright.http;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import tiewright.event.Event;
import tiewright.event.OfficialFact;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Notice;
import tiewright.http.views.NoticesView;

/** Numbered notices and rulings, the newest first. */
final class NoticesPage implements Page {

    @Override
    public void at(Routes routes) {
        routes.everybodys("/notices", visit -> Screen.of("notices", "Notices and rulings", view(visit.event())));
    }

    private static NoticesView view(VisibleEvent event) {
        List<Notice> notices = new ArrayList<>(
                event.notices().stream().map(posted -> notice(event, posted)).toList());
        Collections.reverse(notices);
        List<NoticesView.Ruling> rulings = new ArrayList<>(
                event.rulings().stream().map(NoticesPage::ruling).toList());
        Collections.reverse(rulings);
        return new NoticesView(
                notices, rulings, event.viewer().role().isOfficial() ? TellingPage.links(event) : List.of());
    }

    static Notice notice(VisibleEvent event, Event.Posted posted) {
        OfficialFact.NoticePosted notice = posted.notice();
        String by = event.order().plans().stream()
                .filter(plan -> plan.notice() == notice.number())
                .findFirst()
                .map(plan -> "by " + plan.by())
                .orElse("");
        return new Notice(
                "Notice " + notice.number(),
                notice.text(),
                Frames.said(event.clock(posted.at())),
                notice.before().orElse(""),
                notice.after().orElse(""),
                notice.reason(),
                whom(event, notice),
                by,
                notice.tie().isPresent() ? List.of() : new Changes(event).of(notice.number()));
    }

    private static String whom(VisibleEvent event, OfficialFact.NoticePosted notice) {
        List<String> clubs = event.order().concerned(notice.number()).stream()
                .map(event::clubName)
                .toList();
        return notice.tie()
                .flatMap(event::tie)
                .map(tie -> "Concerns " + new TieViews(event).title(tie))
                .orElse(clubs.isEmpty() ? "" : "Concerns " + String.join(", ", clubs));
    }

    private static NoticesView.Ruling ruling(OfficialFact.RulingGiven ruling) {
        return new NoticesView.Ruling(
                "Ruling " + ruling.number(), ruling.about(), ruling.ruling(), ruling.reason(), ruling.by());
    }
}
