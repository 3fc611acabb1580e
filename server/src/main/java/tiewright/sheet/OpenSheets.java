package tiewright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import tiewright.event.ClubId;
import tiewright.event.Deadlines;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Exchange;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.Pair;
import tiewright.event.PrivateNote;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.Side;
import tiewright.event.Tie;

/**
 * Both sheets are opened at once, or neither: from the deadline on or when both captains ask, each side at the desk or
 * ruled, and each receipt right. Rubbers without a pair stand as walkover or void from then on.
 */
public record OpenSheets(ExchangeId exchange) implements Decision {

    @Override
    public Set<SealedRef> needs(Event event) {
        Set<SealedRef> needs = new LinkedHashSet<>();
        for (Side side : Side.values()) {
            Exchange.SideOfExchange state = event.exchange(exchange).side(side);
            boolean kept = state.ruled().map(ruled -> !ruled.forfeited()).orElse(state.isIn() && state.atDesk());
            event.tie(exchange.tie())
                    .filter(tie -> kept && !event.exchange(exchange).isOpened())
                    .flatMap(tie -> tie.club(side))
                    .ifPresent(club -> needs.add(new SealedRef(exchange, club)));
        }
        return needs;
    }

    @Override
    public Outcome decide(Event event, Given given) {
        List<Refusal> reasons = Gate.first(
                () -> Gate.official(given.by()),
                () -> Openers.whyNot(event, given.by()),
                () -> Gate.tie(event, exchange),
                () -> Gate.unopened(event, exchange),
                () -> tooEarly(event, given),
                () -> sides(event, given));
        if (!reasons.isEmpty()) {
            return new Refused(reasons);
        }
        Tie tie = event.tie(exchange.tie()).orElseThrow();
        Opened home = opened(event, tie, Side.HOME, given);
        Opened away = opened(event, tie, Side.AWAY, given);
        List<Fact> facts = new ArrayList<>();
        facts.add(new ExchangeFact.SheetsOpened(exchange, home.sheet(), home.secret(), away.sheet(), away.secret()));
        facts.addAll(empties(event, tie, home.sheet(), away.sheet()));
        facts.addAll(Swaps.told(event, exchange));
        List<PrivateNote> dropped = new ArrayList<>();
        needs(event).forEach(ref -> dropped.add(new PrivateNote.SheetDropped(ref.exchange(), ref.club())));
        return Consequences.of(event, given, facts, dropped);
    }

    /** Cards of rubbers for which a side named nobody. */
    private List<Fact> empties(Event event, Tie tie, Sheet home, Sheet away) {
        List<Fact> cards = new ArrayList<>();
        SheetRules.rubbers(event, exchange)
                .forEach(rubber -> Empties.card(
                                tie.id(),
                                rubber,
                                new Tie.OpenedRubber(home.pair(rubber), away.pair(rubber)),
                                event.conditions())
                        .ifPresent(cards::add));
        return cards;
    }

    private List<Refusal> tooEarly(Event event, Given given) {
        if (Exchanges.isEarly(event, exchange)) {
            return List.of(Why.NOT_LEVEL.refusal().with("tie", exchange.tie()).at("exchange"));
        }
        if (Exchanges.isTime(event, exchange, given.now())) {
            return List.of();
        }
        Refusal why = Deadlines.of(event, exchange)
                .map(deadline -> Why.TOO_EARLY.refusal().with("deadline", deadline))
                .orElseGet(Why.NO_DEADLINE::refusal);
        return List.of(why.with("tie", exchange.tie()).at("exchange"));
    }

    /** Each side is there and its receipt is right; a wrong one is told by its club alone, never by what it named. */
    private List<Refusal> sides(Event event, Given given) {
        Tie tie = event.tie(exchange.tie()).orElseThrow();
        List<Refusal> reasons = new ArrayList<>();
        for (Side side : Side.values()) {
            ClubId club = tie.club(side).orElseThrow();
            Exchange.SideOfExchange state = event.exchange(exchange).side(side);
            whyNot(state, club, given)
                    .map(why -> why.refusal().with("club", club).at("exchange"))
                    .ifPresent(reasons::add);
        }
        return reasons;
    }

    private Optional<Why> whyNot(Exchange.SideOfExchange state, ClubId club, Given given) {
        if (!Exchanges.isReady(state)) {
            return Optional.of(state.isIn() ? Why.ON_PHONE : Why.SIDE_MISSING);
        }
        if (state.ruled().filter(ExchangeFact.SideRuled::forfeited).isPresent()) {
            return Optional.empty();
        }
        Optional<Sealed> sealed = given.sealed(exchange, club);
        if (sealed.isEmpty()) {
            return Optional.of(Why.NOT_KEPT);
        }
        return state.ruled().isPresent() || isRight(state, club, sealed.get())
                ? Optional.empty()
                : Optional.of(Why.RECEIPT_WRONG);
    }

    private boolean isRight(Exchange.SideOfExchange state, ClubId club, Sealed sealed) {
        return Receipt.isSecret(sealed.secret())
                && state.receipt()
                        .filter(Receipt.of(sealed.secret(), exchange.tie(), club, sealed.sheet())::equals)
                        .isPresent();
    }

    private record Opened(Sheet sheet, Optional<String> secret) {}

    private Opened opened(Event event, Tie tie, Side side, Given given) {
        Optional<ExchangeFact.SideRuled> ruled =
                event.exchange(exchange).side(side).ruled();
        if (ruled.filter(ExchangeFact.SideRuled::forfeited).isPresent()) {
            return new Opened(nobody(event), Optional.empty());
        }
        Sealed sealed = given.sealed(exchange, tie.club(side).orElseThrow()).orElseThrow();
        return new Opened(sealed.sheet(), ruled.isPresent() ? Optional.empty() : Optional.of(sealed.secret()));
    }

    /** The sheet of a side that forfeits: every rubber without a pair. */
    private Sheet nobody(Event event) {
        SortedMap<RubberNo, Optional<Pair>> pairs = new TreeMap<>();
        SheetRules.rubbers(event, exchange).forEach(rubber -> pairs.put(rubber, Optional.empty()));
        return new Sheet(pairs);
    }
}
