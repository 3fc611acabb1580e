package tiewright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import tiewright.event.Card;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Tie;

/**
 * After the opening an official changes a pair through a named door, before the rubber is played; only a clerical slip can
 * be put right after it. Without a pair the rubber becomes a walkover, or void when the other side is empty too; where
 * the conditions say that everybody moves up, the pairs below move up instead and the bottom rubber stays empty.
 *
 * @param pair the new pair; empty when nobody can play
 * @param door the code of a {@link Door}
 * @param approvedBy the name of who approved it, mandatory
 */
public record ReplacePair(
        ExchangeId exchange, ClubId club, RubberNo rubber, Optional<Pair> pair, String door, String approvedBy)
        implements Decision {

    @Override
    public Outcome decide(Event event, Given given) {
        List<Refusal> reasons = whyNot(event, given);
        if (!reasons.isEmpty()) {
            return new Refused(reasons);
        }
        List<Fact> facts = new ArrayList<>();
        Reshuffle reshuffle = new Reshuffle(event, this);
        reshuffle.changes().forEach((changed, now) -> {
            facts.add(new ExchangeFact.PairReplaced(exchange, club, changed, now, door, approvedBy.strip()));
            facts.addAll(reshuffle.cards(changed, now));
        });
        return Consequences.of(event, given, facts, List.of());
    }

    private List<Refusal> whyNot(Event event, Given given) {
        return Gate.first(
                () -> Gate.official(given.by()),
                () -> Gate.place(event, exchange, club),
                () -> Gate.when(
                        !event.exchange(exchange).isOpened(),
                        Why.NOT_OPENED.refusal().with("tie", exchange.tie()).at("exchange")),
                () -> Gate.when(
                        !tie(event).opened().containsKey(rubber)
                                || !SheetRules.rubbers(event, exchange).contains(rubber),
                        Why.NO_RUBBER
                                .refusal()
                                .with("rubber", rubber)
                                .with("tie", exchange.tie())
                                .at("rubber")),
                () -> doors(event, given),
                () -> faults(event, given.directory()));
    }

    Tie tie(Event event) {
        return event.tie(exchange.tie()).orElseThrow();
    }

    private List<Refusal> doors(Event event, Given given) {
        List<String> open =
                Door.open(event.conditions()).stream().map(Door::code).toList();
        boolean refereeOnly = Door.isForTheReferee(event.conditions());
        List<Refusal> reasons = new ArrayList<>();
        if (Door.parse(door).isEmpty()) {
            reasons.add(Why.DOOR.refusal().with("doors", open).at("door"));
        } else if (!open.contains(door)) {
            reasons.add(Why.DOOR_CLOSED
                    .refusal()
                    .with("door", door)
                    .with("doors", open)
                    .at("door"));
        }
        reasons.addAll(Gate.when(refereeOnly && given.by().role() != Role.REFEREE, Why.REFEREE_ONLY.refusal()));
        reasons.addAll(Gate.name(approvedBy, "approvedBy"));
        return reasons;
    }

    private List<Refusal> faults(Event event, Directory directory) {
        List<Refusal> faults = new ArrayList<>();
        Tie.OpenedRubber now = Objects.requireNonNull(tie(event).opened().get(rubber));
        if (now.pair(Gate.sideOf(event, exchange, club)).equals(pair)) {
            faults.add(Why.SAME_PAIR.refusal().with("rubber", rubber).at("pair"));
        }
        boolean awarded = now.home().isEmpty() || now.away().isEmpty();
        boolean over = tie(event).card(rubber).standing() != Card.Standing.EMPTY && !awarded;
        boolean slip = door.equals(Door.CLERICAL.code()) && pair.isPresent();
        boolean began = tie(event).stopped().containsKey(rubber)
                && !Door.open(event.conditions()).contains(Door.SUBSTITUTION);
        if (began && !slip) {
            faults.add(Why.RUBBER_BEGAN.refusal().with("rubber", rubber).at("rubber"));
        }
        if (over && !slip) {
            faults.add(Why.RUBBER_OVER.refusal().with("rubber", rubber).at("rubber"));
        }
        Squad squad = new Squad(new SheetOf(event, exchange, club, directory));
        pair.ifPresent(named -> people(event, squad, named, faults));
        return faults;
    }

    /** In the squad, here, of the rubber's kind, not in more rubbers than may be. The order of strength is the official's. */
    private void people(Event event, Squad squad, Pair named, List<Refusal> faults) {
        KindRule.whyNot(squad, named, rubber).stream()
                .map(why -> why.at("pair"))
                .forEach(faults::add);
        for (PlayerId player : named.players()) {
            squad.whyNot(player).map(why -> why.at("pair")).ifPresent(faults::add);
            List<RubberNo> in = SheetRules.rubbers(event, exchange).stream()
                    .filter(no -> no.equals(rubber) || isNamed(event, no, player))
                    .toList();
            if (in.size() > event.conditions().maxRubbersPerPlayer()) {
                faults.add(SheetRules.tooOften(player, in, event.conditions()).at("pair"));
            }
        }
    }

    private boolean isNamed(Event event, RubberNo no, PlayerId player) {
        return Optional.ofNullable(tie(event).opened().get(no))
                .flatMap(opened -> opened.pair(Gate.sideOf(event, exchange, club)))
                .filter(opened -> opened.has(player))
                .isPresent();
    }

    @Override
    public boolean isStaledBy(Fact fact) {
        return fact instanceof ExchangeFact.PairReplaced other
                && other.exchange().equals(exchange)
                && other.club().equals(club);
    }
}
