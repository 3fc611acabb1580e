package tiewright.http.everybody;

import tiewright.http.views.BracketView;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;

/** The knockout, round by round. */
final class BracketPage implements Page {

    @Override
    public void at(Routes routes) {
        routes.everybodys(
                "/bracket",
                visit -> Screen.of("bracket", visit.say("page-everybody.knockout"), view(AsItStood.of(visit))));
    }

    private static BracketView view(AsItStood stood) {
        KnockoutViews knockout = new KnockoutViews(stood.visit());
        return new BracketView(knockout.bracket(), knockout.isDrawn(), knockout.champion(), stood.view());
    }
}
