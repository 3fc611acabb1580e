package tiewright.http.everybody;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.VisibleEvent;
import tiewright.http.views.TablesView;
import tiewright.http.visit.FinalOrders;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TableViews;
import tiewright.http.visit.Visit;

/** Every pool's table, each place with its reason. */
final class TablesPage implements Page {

    @Override
    public void at(Routes routes) {
        routes.everybodys(
                "/tables", visit -> Screen.of("tables", visit.say("page-everybody.tables"), view(AsItStood.of(visit))));
    }

    private static TablesView view(AsItStood stood) {
        Visit visit = stood.visit();
        VisibleEvent event = visit.event();
        List<TablesView.PoolTable> pools = new ArrayList<>();
        event.pools().keySet().forEach(pool -> pools.add(TableViews.pool(visit, pool)));
        KnockoutViews knockout = new KnockoutViews(visit);
        return new TablesView(
                pools,
                knockout.isDrawn() ? Optional.of(knockout.bracket()) : Optional.empty(),
                FinalOrders.of(visit),
                gone(visit),
                stood.view());
    }

    private static List<String> gone(Visit visit) {
        VisibleEvent event = visit.event();
        return event.withdrawals().values().stream()
                .map(withdrawn -> visit.words()
                        .sentence(
                                "page.withdrew-" + withdrawn.treatment().code(),
                                Map.of("club", event.clubName(withdrawn.club()), "ruling", withdrawn.ruling())))
                .toList();
    }
}
