package tiewright.sheet;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Exchange;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.OfficialFact;
import tiewright.event.Refusal;
import tiewright.event.Saying;
import tiewright.event.SheetKind;

/** Rulings for a club without a sheet at the desk: only once the clock has run out, only by who gives rulings, signed. */
final class Rulings {
    private Rulings() {}

    static List<Refusal> whyNot(Event event, ExchangeId exchange, ClubId club, Decision.Given given) {
        return Gate.first(
                () -> Gate.ruler(given.by()),
                () -> Gate.place(event, exchange, club),
                () -> Gate.unopened(event, exchange),
                () -> clock(event, exchange, given.now()),
                () -> state(Gate.stateOf(event, exchange, club), club));
    }

    private static List<Refusal> clock(Event event, ExchangeId exchange, Instant now) {
        Optional<Instant> closes = LateRule.closes(event, exchange);
        if (closes.isEmpty()) {
            Why why = exchange.kind() == SheetKind.DECIDER ? Why.NOT_LEVEL : Why.NO_DEADLINE;
            return List.of(why.refusal().with("tie", exchange.tie()).at("exchange"));
        }
        if (!now.isBefore(closes.get())) {
            return List.of();
        }
        Why why = LateRule.isDue(event, exchange, now) ? Why.GRACE_RUNS : Why.STILL_TIME;
        return List.of(why.refusal()
                .with("tie", exchange.tie())
                .with("until", closes.get())
                .at("exchange"));
    }

    private static List<Refusal> state(Exchange.SideOfExchange side, ClubId club) {
        return Gate.first(
                () -> Gate.when(
                        side.ruled().isPresent(),
                        Why.RULED.refusal().with("club", club).at("club")),
                () -> Gate.when(
                        side.isIn() && side.atDesk(),
                        Why.IS_IN.refusal().with("club", club).at("club")));
    }

    static List<Refusal> signed(String reason, String by) {
        List<Refusal> faults = new ArrayList<>(Gate.reason(reason));
        faults.addAll(Gate.name(by, "by"));
        return faults;
    }

    /**
     * A sheet that did not come.
     *
     * @param forfeited the side is lost; else its sheet was handed in late
     */
    record Missing(ExchangeId exchange, ClubId club, boolean forfeited) {}

    /** The numbered ruling and what it does to the exchange. It names a club and a tie, never a player. */
    static List<Fact> facts(Event event, Missing missing, String reason, String by) {
        int number = event.rulings().stream()
                        .mapToInt(OfficialFact.RulingStated::number)
                        .max()
                        .orElse(0)
                + 1;
        String name =
                event.club(missing.club()).map(Club::name).orElse(missing.club().code());
        String what = missing.exchange().kind() == SheetKind.DECIDER ? "decider" : "sheet";
        Saying about = Saying.of("notices.missing-" + what)
                .with("club", name)
                .with("tie", missing.exchange().tie());
        Saying ruling = Saying.of(missing.forfeited() ? "notices.forfeits" : "notices.supplied-" + what)
                .with("club", name);
        return List.of(
                new OfficialFact.RulingStated(number, about, ruling, reason.strip(), by.strip()),
                new ExchangeFact.SideRuled(missing.exchange(), missing.club(), missing.forfeited(), number));
    }
}
