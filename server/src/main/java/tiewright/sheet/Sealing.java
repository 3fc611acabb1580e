package tiewright.sheet;

import java.util.Collection;
import java.util.List;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.SetUpFact;

/** When a club may seal, at the desk or on the phone, and what makes its form stale. */
final class Sealing {
    private Sealing() {}

    /** Who asks, the tie, how far the exchange has come, and the clock, in this order; not yet the sheet itself. */
    static List<Refusal> whyNot(Event event, ExchangeId exchange, ClubId club, Decision.Given given) {
        return Gate.first(
                () -> Gate.captainOf(club, given.by()),
                () -> Gate.place(event, exchange, club),
                () -> Gate.unopened(event, exchange),
                () -> Gate.when(
                        Gate.stateOf(event, exchange, club).ruled().isPresent(),
                        Why.RULED.refusal().with("club", club).at("exchange")),
                () -> LateRule.whyNot(event, exchange, Gate.sideOf(event, exchange, club), given.now()).stream()
                        .map(late -> late.at("exchange"))
                        .toList());
    }

    static boolean isStaledBy(Fact fact, ExchangeId exchange, ClubId club, Collection<PlayerId> named) {
        return switch (fact.kind()) {
            case CONDITIONS_PUBLISHED -> true;
            case PLAYER_ENTERED ->
                ((SetUpFact.PlayerEntered) fact).club().equals(club)
                        || named.contains(((SetUpFact.PlayerEntered) fact).player());
            case PLAYER_REMOVED -> named.contains(((SetUpFact.PlayerRemoved) fact).player());
            case CHECKED_IN ->
                !((SetUpFact.CheckedIn) fact).present() && named.contains(((SetUpFact.CheckedIn) fact).player());
            case SHEETS_OPENED -> ((ExchangeFact) fact).exchange().equals(exchange);
            case SHEET_SEALED ->
                ((ExchangeFact.SheetSealed) fact).club().equals(club)
                        && ((ExchangeFact) fact).exchange().equals(exchange);
            case SHEET_RETURNED ->
                ((ExchangeFact.SheetReturned) fact).club().equals(club)
                        && ((ExchangeFact) fact).exchange().equals(exchange);
            case SIDE_RULED ->
                ((ExchangeFact.SideRuled) fact).club().equals(club)
                        && ((ExchangeFact) fact).exchange().equals(exchange);
            default -> false;
        };
    }
}
