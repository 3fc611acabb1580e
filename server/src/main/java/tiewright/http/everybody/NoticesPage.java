package tiewright.http.everybody;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import tiewright.event.OfficialFact;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Notice;
import tiewright.http.views.NoticesView;
import tiewright.http.visit.NoticeViews;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.wording.Words;

/** Numbered notices and rulings, the newest first. */
final class NoticesPage implements Page {

    @Override
    public void at(Routes routes) {
        routes.everybodys(
                "/notices",
                visit -> Screen.of("notices", visit.say("page-everybody.notices-and-rulings"), view(visit.event())));
    }

    private static NoticesView view(VisibleEvent event) {
        List<Notice> notices = new ArrayList<>(event.notices().stream()
                .map(posted -> NoticeViews.notice(event, posted))
                .toList());
        Collections.reverse(notices);
        List<NoticesView.Ruling> rulings = new ArrayList<>(event.rulings().stream()
                .map(ruling -> ruling(Words.of(event), ruling))
                .toList());
        Collections.reverse(rulings);
        return new NoticesView(
                notices, rulings, event.viewer().role().isOfficial() ? NoticeViews.toTell(event) : List.of());
    }

    private static NoticesView.Ruling ruling(Words words, OfficialFact.RulingStated ruling) {
        return new NoticesView.Ruling(
                words.say("page-everybody.ruling", "ruling", ruling.number()),
                words.saying(ruling.about()),
                words.saying(ruling.ruling()),
                ruling.reason(),
                ruling.by());
    }
}
