package tiewright.http.everybody;

import java.util.Map;
import tiewright.http.visit.Door;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;

/** What people ask most: how such a day works, how to check a receipt, what the seal does and does not stop. */
final class HelpPages implements Page {
    @Override
    public void at(Routes routes) {
        routes.get(
                Door.ANYBODY,
                "/help/receipts",
                visit -> visit.show(new Screen(
                        "pages/receiptsHelp", visit.say("page-everybody.how-to-check-a-receipt"), Map.of())));
        routes.everybodys(
                "/help/day",
                visit -> new Screen("pages/help", visit.say("page-everybody.how-such-a-day-works"), Map.of()));
    }
}
