package tiewright.http.rulings;

import java.util.List;
import tiewright.event.Role;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Door;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.wording.Words;

/** A club goes home: which one is it? What that brings stands on the next page. */
final class GoesHomePage implements Page {

    @Override
    public void at(Routes routes) {
        routes.get(Door.OFFICIALS, WithdrawalPage.ASK, visit -> visit.show(clubs(visit)));
    }

    /** The way here, on the page of tables. */
    static WorkView.Section way(VisibleEvent event) {
        Words words = Words.of(event);
        return WorkView.Section.of(
                        "withdraw",
                        words.say("page-rulings.a-club-goes-home"),
                        words.say("page-rulings.you-first-see-what-each"))
                .with(new NavLink(WithdrawalPage.ASK, words.say("page-rulings.choose-the-club"), false));
    }

    /** First: which club it is. */
    private static Screen clubs(Visit visit) {
        Words words = visit.words();
        List<ReasonTable.Row> rows = visit.event().clubs().stream()
                .filter(club -> !visit.event().withdrawals().containsKey(club.id()))
                .map(club -> ReasonTable.Row.of(
                        List.of(new ReasonTable.Cell(club.name(), WithdrawalPage.ASK + "/" + club.id()))))
                .toList();
        return Screen.of(
                "work",
                words.say("page-rulings.a-club-goes-home"),
                new WorkView(
                        Tried.NOTHING.refusal(),
                        back(visit),
                        List.of(
                                words.say("page-rulings.step", "step", 1, "of", 2),
                                words.say("page-rulings.you-first-see-what-each")),
                        List.of(WorkView.Section.of("clubs", "")
                                .with(new ReasonTable(
                                        "clubs",
                                        words.say("page-rulings.choose-the-club"),
                                        List.of(new ReasonTable.Column(words.say("page-rulings.the-club"), false)),
                                        rows,
                                        "")))));
    }

    private static NavLink back(Visit visit) {
        String home = visit.role() == Role.ORGANISER ? "/organiser" : "/desk";
        return new NavLink(home, visit.say("page-rulings.back-to-where-one-began"), false);
    }
}
