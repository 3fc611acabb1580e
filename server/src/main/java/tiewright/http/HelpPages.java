package tiewright.http;

import java.util.Map;

/** What people ask most: how to check a receipt, what the seal does and does not stop. */
final class HelpPages implements Page {
    @Override
    public void at(Routes routes) {
        routes.get(
                Door.ANYBODY,
                "/help/receipts",
                visit -> visit.show(new Screen("pages/receiptsHelp", "How to check a receipt", Map.of())));
    }
}
