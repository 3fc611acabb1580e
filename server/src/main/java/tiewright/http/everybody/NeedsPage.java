package tiewright.http.everybody;

import tiewright.event.VisibleEvent;
import tiewright.http.answers.Answers;
import tiewright.http.views.NeedsView;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Visit;
import tiewright.standings.NeedsReport;
import tiewright.wording.NeedsWords;

/** What each club can still reach and what it needs for that, while its pool goes on. */
final class NeedsPage implements Page {
    @Override
    public void at(Routes routes) {
        routes.everybodys(
                "/needs",
                visit -> Screen.of("needs", visit.say("page-everybody.what-each-club-can-still"), view(visit)));
    }

    private static NeedsView view(Visit visit) {
        return new NeedsView(visit.event().pools().keySet().stream()
                .filter(pool -> visit.ask(Answers::new).table(pool).isProvisional())
                .map(pool -> new NeedsView.Pool(
                        visit.say("page-everybody.pool", "pool", pool),
                        visit.ask(Answers::new).needs(pool).stream()
                                .map(report -> club(visit, report))
                                .toList()))
                .toList());
    }

    private static NeedsView.Club club(Visit visit, NeedsReport report) {
        VisibleEvent event = visit.event();
        NeedsWords words = new NeedsWords(visit.words());
        return new NeedsView.Club(
                event.clubName(report.club()),
                words.overall(report),
                report.cases().stream().map(words::statement).toList());
    }
}
