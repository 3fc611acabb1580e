package tiewright.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;
import tiewright.event.SheetKind;

/**
 * What a captain can choose for each seat of a sheet, given the rest as it is filled so far.
 *
 * @param rubbers in order
 */
public record Choices(List<Rubber> rubbers) {

    /** @param seats the two players of the pair */
    public record Rubber(RubberNo rubber, List<Seat> seats) {
        public Rubber {
            seats = List.copyOf(seats);
        }
    }

    /**
     * @param chosen who sits there so far
     * @param players the whole squad in order of entry
     */
    public record Seat(Optional<PlayerId> chosen, List<Choice> players) {
        public Seat {
            players = List.copyOf(players);
        }
    }

    /** @param whyNot the rule that forbids it; empty when the player can be chosen */
    public record Choice(PlayerId player, Optional<Refusal> whyNot) {
        public boolean isFree() {
            return whyNot.isEmpty();
        }
    }

    private static final int SEATS = 2;

    public Choices {
        rubbers = List.copyOf(rubbers);
    }

    /** @param soFar the players of each rubber, none, one or two; rubbers that the sheet does not have are ignored */
    public static Choices of(SheetOf whose, Map<RubberNo, List<PlayerId>> soFar) {
        return new Chooser(whose, soFar).choices();
    }

    private static final class Chooser {
        private final Event event;
        private final ExchangeId exchange;
        private final Squad squad;
        private final SortedSet<RubberNo> rubbers;
        private final Map<RubberNo, List<PlayerId>> soFar;
        private final Completion completion;

        Chooser(SheetOf whose, Map<RubberNo, List<PlayerId>> soFar) {
            this.event = whose.event();
            this.exchange = whose.exchange();
            this.squad = new Squad(whose);
            this.rubbers = SheetRules.rubbers(event, exchange);
            this.soFar = soFar;
            this.completion = new Completion(squad, event.conditions());
        }

        Choices choices() {
            return new Choices(rubbers.stream()
                    .map(rubber -> new Rubber(
                            rubber,
                            IntStream.range(0, SEATS)
                                    .mapToObj(seat -> seat(rubber, seat))
                                    .toList()))
                    .toList());
        }

        private Seat seat(RubberNo rubber, int seat) {
            return new Seat(
                    named(rubber).skip(seat).findFirst(),
                    squad.all().stream()
                            .map(player -> new Choice(player, whyNot(player, rubber, seat)))
                            .toList());
        }

        private Stream<PlayerId> named(RubberNo rubber) {
            return soFar.getOrDefault(rubber, List.of()).stream().limit(SEATS);
        }

        private Optional<Refusal> whyNot(PlayerId player, RubberNo rubber, int seat) {
            Optional<PlayerId> partner = named(rubber).skip(SEATS - 1 - seat).findFirst();
            return squad.whyNot(player)
                    .or(() -> partner.filter(player::equals)
                            .map(p -> Why.OWN_PARTNER.refusal().with("player", p)))
                    .or(() -> KindRule.whyNot(squad, player, rubber))
                    .or(() -> tooOften(player, rubber))
                    .or(() -> partner.flatMap(with -> asPair(Pair.of(player, with), rubber)))
                    .or(() -> deadEnd(player, rubber, seat))
                    .map(why -> why.at(SheetRules.field(rubber)));
        }

        private Optional<Refusal> tooOften(PlayerId player, RubberNo rubber) {
            List<RubberNo> elsewhere = rubbers.stream()
                    .filter(other -> !other.equals(rubber) && named(other).anyMatch(player::equals))
                    .toList();
            if (elsewhere.size() < event.conditions().maxRubbersPerPlayer()) {
                return Optional.empty();
            }
            List<RubberNo> all = new ArrayList<>(elsewhere);
            all.add(rubber);
            return Optional.of(SheetRules.tooOften(player, all.stream().sorted().toList(), event.conditions()));
        }

        private Optional<Refusal> asPair(Pair pair, RubberNo rubber) {
            if (exchange.kind() == SheetKind.DECIDER) {
                return Deciders.whyNot(event, exchange, squad, pair).stream().findFirst();
            }
            Optional<Refusal> kind =
                    KindRule.whyNot(squad, pair, rubber).stream().findFirst();
            return kind.or(() -> rubbers.stream()
                    .filter(other -> !other.equals(rubber) && named(other).count() == SEATS)
                    .filter(other -> squad.kind(other) == squad.kind(rubber))
                    .flatMap(other -> outOfOrder(pair, rubber, other).stream())
                    .findFirst());
        }

        /** The rest could not be filled any more; a sheet that is stuck without this player says so at every seat. */
        private Optional<Refusal> deadEnd(PlayerId player, RubberNo rubber, int seat) {
            if (exchange.kind() == SheetKind.DECIDER) {
                return Optional.empty();
            }
            List<PlayerId> pair = new ArrayList<>(named(rubber).toList());
            if (seat < pair.size()) {
                pair.set(seat, player);
            } else {
                pair.add(player);
            }
            Map<RubberNo, List<PlayerId>> then = new HashMap<>(soFar);
            then.put(rubber, pair);
            return completion.exists(then)
                    ? Optional.empty()
                    : Optional.of(Why.DEAD_END.refusal().with("player", player));
        }

        private Optional<Refusal> outOfOrder(Pair pair, RubberNo rubber, RubberNo other) {
            StrengthOrder.Strength own =
                    new StrengthOrder.Strength(rubber, squad.rank(pair.first()) + squad.rank(pair.second()));
            StrengthOrder.Strength others = new StrengthOrder.Strength(
                    other, named(other).mapToInt(squad::rank).sum());
            boolean isUpper = rubber.compareTo(other) < 0;
            Optional<StrengthOrder.Break> broken = StrengthOrder.broken(
                    event.conditions().orderOfStrength(),
                    event.conditions().tieRubbers().kinds(),
                    isUpper ? own : others,
                    isUpper ? others : own);
            return broken.map(b -> SheetRules.order(b, event.conditions()));
        }
    }
}
