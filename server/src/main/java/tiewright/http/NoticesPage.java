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
    routes.get(Door.ANYBODY, "/notices", visit -> visit.show(Screen.of("notices", "Notices and rulings", view(visit.event()))));
  }

  private static NoticesView view(VisibleEvent event) {
    List<Notice> notices = new ArrayList<>(event.notices().stream().map(posted -> notice(event, posted)).toList());
    Collections.reverse(notices);
    List<NoticesView.Ruling> rulings = new ArrayList<>(event.rulings().stream().map(NoticesPage::ruling).toList());
    Collections.reverse(rulings);
    return new NoticesView(notices, rulings);
  }

  static Notice notice(VisibleEvent event, Event.Posted posted) {
    OfficialFact.NoticePosted notice = posted.notice();
    String whom = notice.tie().flatMap(event::tie)
        .map(tie -> "Concerns " + new TieViews(event).title(tie))
        .orElse("");
    return new Notice(
        "Notice " + notice.number(), notice.text(), Frames.said(event.clock(posted.at())), notice.before().orElse(""),
        notice.after().orElse(""), notice.reason(), whom, "");
  }

  private static NoticesView.Ruling ruling(OfficialFact.RulingGiven ruling) {
    return new NoticesView.Ruling("Ruling " + ruling.number(), ruling.about(), ruling.ruling(), ruling.reason(), ruling.by());
  }
}
