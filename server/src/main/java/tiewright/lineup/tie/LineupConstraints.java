package tiewright.lineup.tie;

import static org.optaplanner.core.api.score.stream.ConstraintCollectors.count;
import static org.optaplanner.core.api.score.stream.ConstraintCollectors.sum;
import static org.optaplanner.core.api.score.stream.ConstraintCollectors.toList;
import static org.optaplanner.core.api.score.stream.Joiners.equal;
import static org.optaplanner.core.api.score.stream.Joiners.filtering;
import static org.optaplanner.core.api.score.stream.Joiners.lessThan;

import java.util.List;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.core.api.score.stream.ConstraintProvider;
import org.optaplanner.core.api.score.stream.bi.BiConstraintStream;
import org.optaplanner.core.api.score.stream.uni.UniConstraintStream;
import tiewright.lineup.Wish;
import tiewright.sheet.StrengthOrder;

/** What makes a sheet legal, and what makes it good. A method for each constraint; names and weights in {@link LineupWeights}. */
public class LineupConstraints implements ConstraintProvider {
    @Override
    public Constraint[] defineConstraints(ConstraintFactory factory) {
        return new Constraint[] {
            tooOften(factory),
            besideThemselves(factory),
            absent(factory),
            wrongKind(factory),
            apart(factory),
            together(factory),
            mustPlay(factory),
            mustRest(factory),
            orderOfStrength(factory),
            gap(factory),
            half(factory),
            notFull(factory),
            tieChance(factory),
            promise(factory),
            learning(factory)
        };
    }

    /** Nobody plays more rubbers than the conditions allow. */
    Constraint tooOften(ConstraintFactory factory) {
        return factory.forEach(Seat.class)
                .groupBy(Seat::player, count())
                .join(LineupPlan.TieFacts.class)
                .filter((player, times, facts) -> times > facts.rules().mostPerPlayer())
                .penalizeLong(
                        LineupWeights.BREACH,
                        (player, times, facts) -> times - facts.rules().mostPerPlayer())
                .asConstraint(LineupWeights.TOO_OFTEN);
    }

    /** A pair is two players, also where one may play several rubbers. */
    Constraint besideThemselves(ConstraintFactory factory) {
        return factory.forEachUniquePair(Seat.class, equal(Seat::rubber), equal(Seat::player))
                .penalizeLong(LineupWeights.BREACH, (one, other) -> 1)
                .asConstraint(LineupWeights.BESIDE_THEMSELVES);
    }

    /** Only who is here and fit to play can be named. */
    Constraint absent(ConstraintFactory factory) {
        return factory.forEach(Seat.class)
                .filter(seat -> !seat.taken().present())
                .penalizeLong(LineupWeights.BREACH, seat -> 1)
                .asConstraint(LineupWeights.ABSENT);
    }

    /** In a rubber for women, for men or for mixed pairs stand two who may. */
    Constraint wrongKind(ConstraintFactory factory) {
        return factory.forEachUniquePair(Seat.class, equal(Seat::rubber))
                .join(LineupPlan.TieFacts.class)
                .filter((one, other, facts) -> !facts.admits(one, other))
                .penalizeLong(LineupWeights.BREACH, (one, other, facts) -> 1)
                .asConstraint(LineupWeights.WRONG_KIND);
    }

    /** The captain wants two players never as a pair. */
    Constraint apart(ConstraintFactory factory) {
        return factory.forEachUniquePair(Seat.class, equal(Seat::rubber))
                .filter((one, other) -> !one.taken().equals(other.taken()))
                .join(Wish.class)
                .filter((one, other, wish) -> wish.kind() == Wish.Kind.APART && one.isOf(wish) && other.isOf(wish))
                .penalizeLong(LineupWeights.BREACH, (one, other, wish) -> 1)
                .asConstraint(LineupWeights.APART);
    }

    /** If one of two players plays, then with the other. */
    Constraint together(ConstraintFactory factory) {
        return named(factory, Wish.Kind.TOGETHER)
                .ifNotExists(
                        Seat.class,
                        filtering((wish, seat, other) -> other.rubber() == seat.rubber()
                                && other.isOf(wish)
                                && !other.taken().equals(seat.taken())))
                .penalizeLong(LineupWeights.BREACH, (wish, seat) -> 1)
                .asConstraint(LineupWeights.TOGETHER);
    }

    /** The captain wants a player in at least one rubber. */
    Constraint mustPlay(ConstraintFactory factory) {
        return wishes(factory, Wish.Kind.MUST_PLAY)
                .ifNotExists(Seat.class, filtering((wish, seat) -> seat.isOf(wish)))
                .penalizeLong(LineupWeights.BREACH, wish -> 1)
                .asConstraint(LineupWeights.MUST_PLAY);
    }

    /** The captain wants a player in no rubber. */
    Constraint mustRest(ConstraintFactory factory) {
        return named(factory, Wish.Kind.MUST_REST)
                .penalizeLong(LineupWeights.BREACH, (wish, seat) -> 1)
                .asConstraint(LineupWeights.MUST_REST);
    }

    /** Each two pairs in rubbers of one kind stand as the order of strength wants them. */
    Constraint orderOfStrength(ConstraintFactory factory) {
        return filledRubbers(factory)
                .join(filledRubbers(factory), lessThan(FilledRubber::rubber))
                .join(LineupPlan.TieFacts.class)
                .filter((upper, lower, facts) -> facts.areOfOneKind(upper.rubber(), lower.rubber())
                        && StrengthOrder.isBroken(
                                facts.rules().order(), facts.isTop(upper.rubber()), upper.rankSum(), lower.rankSum()))
                .penalizeLong(LineupWeights.BREACH, (upper, lower, facts) -> 1)
                .asConstraint(LineupWeights.ORDER);
    }

    /** Empty rubbers stand at the bottom. */
    Constraint gap(ConstraintFactory factory) {
        return emptySeats(factory)
                .join(Seat.class, lessThan(Seat::rubber))
                .penalizeLong(LineupWeights.BREACH, (empty, lower) -> 1)
                .asConstraint(LineupWeights.GAP);
    }

    /** A rubber is empty or has two players. */
    Constraint half(ConstraintFactory factory) {
        return emptySeats(factory)
                .join(Seat.class, equal(Seat::rubber))
                .penalizeLong(LineupWeights.BREACH, (empty, taken) -> 1)
                .asConstraint(LineupWeights.HALF);
    }

    /** The sheet is as full as the squad allows. */
    Constraint notFull(ConstraintFactory factory) {
        return emptySeats(factory)
                .join(LineupPlan.TieFacts.class)
                .filter((seat, facts) -> facts.fills(seat.rubber()))
                .penalizeLong(LineupWeights.BREACH, (seat, facts) -> 1)
                .asConstraint(LineupWeights.NOT_FULL);
    }

    /** The more of what the captain wants of the tie, the better the sheet. */
    Constraint tieChance(ConstraintFactory factory) {
        return allSeats(factory)
                .impactLong(
                        LineupWeights.BILLIONTH,
                        (seats, facts) ->
                                Merit.rough(facts.board(), facts.line(seats)).worth())
                .asConstraint(LineupWeights.TIE_CHANCE);
    }

    /** After that, playing time as promised. */
    Constraint promise(ConstraintFactory factory) {
        return allSeats(factory)
                .filter((seats, facts) -> facts.board().owed().binds())
                .penalizeLong(
                        LineupWeights.RUBBER,
                        (seats, facts) -> facts.board().owed().missing(facts.line(seats)))
                .asConstraint(LineupWeights.PROMISE);
    }

    /** After that, what is not known well is tried. */
    Constraint learning(ConstraintFactory factory) {
        return allSeats(factory)
                .filter((seats, facts) -> facts.board().problem().purpose().learning())
                .rewardLong(
                        LineupWeights.BIT_THOUSANDTH,
                        (seats, facts) ->
                                Merit.rough(facts.board(), facts.line(seats)).learning())
                .asConstraint(LineupWeights.LEARNING);
    }

    private static UniConstraintStream<Wish> wishes(ConstraintFactory factory, Wish.Kind kind) {
        return factory.forEach(Wish.class).filter(wish -> wish.kind() == kind);
    }

    /** Seats of the players that a wish names. */
    private static BiConstraintStream<Wish, Seat> named(ConstraintFactory factory, Wish.Kind kind) {
        return wishes(factory, kind).join(Seat.class, filtering((wish, seat) -> seat.isOf(wish)));
    }

    private static UniConstraintStream<Seat> emptySeats(ConstraintFactory factory) {
        return factory.forEachIncludingNullVars(Seat.class).filter(Seat::isEmpty);
    }

    private static BiConstraintStream<List<Seat>, LineupPlan.TieFacts> allSeats(ConstraintFactory factory) {
        return factory.forEachIncludingNullVars(Seat.class).groupBy(toList()).join(LineupPlan.TieFacts.class);
    }

    private static UniConstraintStream<FilledRubber> filledRubbers(ConstraintFactory factory) {
        return factory.forEach(Seat.class)
                .groupBy(Seat::rubber, sum(Seat::rank), count())
                .filter((rubber, rankSum, taken) -> taken == 2)
                .map((rubber, rankSum, taken) -> new FilledRubber(rubber, rankSum));
    }

    /** A rubber with two players and the sum of their ranks. */
    record FilledRubber(int rubber, int rankSum) {}
}
