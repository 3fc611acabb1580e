package tiewright.timetable;

import static org.optaplanner.core.api.score.stream.ConstraintCollectors.count;
import static org.optaplanner.core.api.score.stream.ConstraintCollectors.max;
import static org.optaplanner.core.api.score.stream.ConstraintCollectors.toList;
import static org.optaplanner.core.api.score.stream.Joiners.equal;
import static org.optaplanner.core.api.score.stream.Joiners.filtering;
import static org.optaplanner.core.api.score.stream.Joiners.lessThan;
import static org.optaplanner.core.api.score.stream.Joiners.overlapping;

import java.util.function.BiPredicate;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.core.api.score.stream.ConstraintProvider;
import org.optaplanner.core.api.score.stream.bi.BiConstraintStream;
import org.optaplanner.core.api.score.stream.tri.TriConstraintStream;
import org.optaplanner.core.api.score.stream.uni.UniConstraintStream;

/**
 * What an order of play must keep, and what makes it good. A method for each constraint; names and weights in {@link
 * TimetableWeights}.
 */
public class TimetableConstraints implements ConstraintProvider {
    @Override
    public Constraint[] defineConstraints(ConstraintFactory factory) {
        return new Constraint[] {
            courtTaken(factory),
            courtClosed(factory),
            clubNotHere(factory),
            clubTwice(factory),
            rest(factory),
            roundOrder(factory),
            source(factory),
            lastRoundTogether(factory),
            rubberOrder(factory),
            playerTwice(factory),
            umpirePlays(factory),
            umpireTwice(factory),
            overrun(factory),
            length(factory),
            longestWait(factory),
            backToBack(factory),
            unequalRest(factory),
            sameCourts(factory),
            sharedDuties(factory)
        };
    }

    /** A court holds one rubber at a time; what is pinned to it was put there by people. */
    Constraint courtTaken(ConstraintFactory factory) {
        return factory.forEach(PlacedPiece.class)
                .join(
                        PlacedPiece.class,
                        lessThan(PlacedPiece::number),
                        overlapping(PlacedPiece::start, PlacedPiece::end))
                .filter((one, other) ->
                        (one.at().courts() & other.at().courts()) != 0 && !(one.isPinned() && other.isPinned()))
                .penalizeLong(TimetableWeights.BREACH, (one, other) -> 1)
                .asConstraint(TimetableWeights.COURT_TAKEN);
    }

    /** Courts have their hours. */
    Constraint courtClosed(ConstraintFactory factory) {
        return factory.forEach(PlacedPiece.class)
                .filter(piece -> !piece.board().isOpen(piece.at()))
                .penalizeLong(TimetableWeights.BREACH, piece -> 1)
                .asConstraint(TimetableWeights.COURT_CLOSED);
    }

    /** A club that comes late does not play before, and no tie begins before its published start. */
    Constraint clubNotHere(ConstraintFactory factory) {
        return factory.forEach(PlacedPiece.class)
                .filter(piece -> piece.start() < piece.board().ready(piece.number()))
                .penalizeLong(TimetableWeights.BREACH, piece -> 1)
                .asConstraint(TimetableWeights.CLUB_NOT_HERE);
    }

    /** No club is in two ties at once. */
    Constraint clubTwice(ConstraintFactory factory) {
        return forbidden(
                factory,
                Link.Kind.CLUB,
                TimetableWeights.CLUB_TWICE,
                (one, other) -> Rules.isClubTwice(one.at(), other.at()));
    }

    /** Between two ties a club rests. */
    Constraint rest(ConstraintFactory factory) {
        return forbidden(
                factory,
                Link.Kind.CLUB,
                TimetableWeights.REST,
                (one, other) ->
                        Rules.isTooSoon(one.at(), other.at(), one.board().rest()));
    }

    /** No tie begins before one of an earlier round of its pool, or of one of its clubs. */
    Constraint roundOrder(ConstraintFactory factory) {
        return forbidden(
                factory,
                Link.Kind.ROUND,
                TimetableWeights.ROUND_ORDER,
                (earlier, later) -> Rules.isOutOfOrder(earlier.at(), later.at()));
    }

    /** A tie waits for those that send it a club, and for that club's rest. */
    Constraint source(ConstraintFactory factory) {
        return forbidden(
                factory,
                Link.Kind.SOURCE,
                TimetableWeights.SOURCE,
                (source, then) -> Rules.isBeforeSource(
                        source.at(), then.at(), then.board().rest()));
    }

    /** The last round of a pool begins together where the courts allow it, so that nobody knows what is needed. */
    Constraint lastRoundTogether(ConstraintFactory factory) {
        return forbidden(
                factory,
                Link.Kind.TOGETHER,
                TimetableWeights.LAST_ROUND_TOGETHER,
                (one, other) -> one.start() != other.start());
    }

    /** The rubbers of a tie begin in their order. */
    Constraint rubberOrder(ConstraintFactory factory) {
        return forbidden(
                factory,
                Link.Kind.RUBBERS,
                TimetableWeights.RUBBER_ORDER,
                (earlier, later) -> Rules.isOutOfOrder(earlier.at(), later.at()));
    }

    /** Rubbers that may have a player in common are not played at once. */
    Constraint playerTwice(ConstraintFactory factory) {
        return forbidden(
                factory,
                Link.Kind.PLAYERS,
                TimetableWeights.PLAYER_TWICE,
                (one, other) -> one.at().meets(other.at()));
    }

    /** A club that umpires does not play meanwhile. */
    Constraint umpirePlays(ConstraintFactory factory) {
        return duties(factory)
                .join(
                        PlacedPiece.class,
                        filtering((duty, piece, other) ->
                                piece.at().meets(other.at()) && other.hasClub(duty.clubNumber())))
                .penalizeLong(TimetableWeights.BREACH, (duty, piece, other) -> 1)
                .asConstraint(TimetableWeights.UMPIRE_PLAYS);
    }

    /** A club umpires one tie at a time. */
    Constraint umpireTwice(ConstraintFactory factory) {
        return duties(factory)
                .join(
                        Duty.class,
                        equal((duty, piece) -> duty.club(), Duty::club),
                        lessThan((duty, piece) -> duty.piece(), Duty::piece))
                .join(PlacedPiece.class, equal((duty, piece, other) -> other.piece(), PlacedPiece::number))
                .filter((duty, piece, other, otherPiece) -> piece.at().meets(otherPiece.at()))
                .penalizeLong(TimetableWeights.BREACH, (duty, piece, other, otherPiece) -> 1)
                .asConstraint(TimetableWeights.UMPIRE_TWICE);
    }

    /** The last tie ends before the venue closes. */
    Constraint overrun(ConstraintFactory factory) {
        return ends(factory)
                .filter(end -> end.minute() > end.board().closes())
                .penalizeLong(
                        TimetableWeights.of(Part.OVERRUN),
                        end -> end.minute() - end.board().closes())
                .asConstraint(TimetableWeights.OVERRUN);
    }

    /** The day is short. */
    Constraint length(ConstraintFactory factory) {
        return ends(factory)
                .penalizeLong(
                        TimetableWeights.of(Part.LENGTH),
                        end -> Math.max(0, end.minute() - end.board().base()))
                .asConstraint(TimetableWeights.LENGTH);
    }

    /** No club waits long between two ties. */
    Constraint longestWait(ConstraintFactory factory) {
        return waits(factory)
                .penalizeLong(TimetableWeights.of(Part.WAIT), Waits::squares)
                .asConstraint(TimetableWeights.LONGEST_WAIT);
    }

    /** Clubs seldom play twice running. */
    Constraint backToBack(ConstraintFactory factory) {
        return waits(factory)
                .penalizeLong(TimetableWeights.of(Part.BACK_TO_BACK), Waits::backToBacks)
                .asConstraint(TimetableWeights.BACK_TO_BACK);
    }

    /** The two sides of a tie have rested alike. */
    Constraint unequalRest(ConstraintFactory factory) {
        return waits(factory)
                .penalizeLong(TimetableWeights.of(Part.UNEQUAL_REST), Waits::unequalRest)
                .asConstraint(TimetableWeights.UNEQUAL_REST);
    }

    /** Clubs change courts. */
    Constraint sameCourts(ConstraintFactory factory) {
        return linked(factory, Link.Kind.CLUB)
                .filter((link, one, other) -> one.board().hasChoiceOfCourts()
                        && (one.at().courts() & other.at().courts()) != 0)
                .penalizeLong(TimetableWeights.of(Part.SAME_COURTS), (link, one, other) -> 1)
                .asConstraint(TimetableWeights.SAME_COURTS);
    }

    /** Clubs share the duties. */
    Constraint sharedDuties(ConstraintFactory factory) {
        return factory.forEach(Duty.class)
                .groupBy(Duty::club, count())
                .penalizeLong(TimetableWeights.of(Part.DUTIES), (club, duties) -> (long) duties * duties)
                .asConstraint(TimetableWeights.SHARED_DUTIES);
    }

    /** Two pieces that are linked so must not stand like this. */
    private static Constraint forbidden(
            ConstraintFactory factory, Link.Kind kind, String name, BiPredicate<PlacedPiece, PlacedPiece> breach) {
        return linked(factory, kind)
                .filter((link, one, other) -> breach.test(one, other))
                .penalizeLong(TimetableWeights.BREACH, (link, one, other) -> 1)
                .asConstraint(name);
    }

    private static TriConstraintStream<Link, PlacedPiece, PlacedPiece> linked(
            ConstraintFactory factory, Link.Kind kind) {
        return factory.forEach(Link.class)
                .filter(link -> link.kind() == kind)
                .join(PlacedPiece.class, equal(Link::a, PlacedPiece::number))
                .join(PlacedPiece.class, equal((link, one) -> link.b(), PlacedPiece::number));
    }

    private static BiConstraintStream<Duty, PlacedPiece> duties(ConstraintFactory factory) {
        return factory.forEach(Duty.class).join(PlacedPiece.class, equal(Duty::piece, PlacedPiece::number));
    }

    /** The whole plan, for what is reckoned over all ties. */
    private static UniConstraintStream<Waits> waits(ConstraintFactory factory) {
        return factory.forEach(PlacedPiece.class).groupBy(toList()).map(Waits::of);
    }

    private static UniConstraintStream<LastEnd> ends(ConstraintFactory factory) {
        return factory.forEach(PlacedPiece.class)
                .groupBy(PlacedPiece::board, max(PlacedPiece::end))
                .map(LastEnd::new);
    }

    /** When the last tie ends. */
    record LastEnd(Board board, int minute) {}
}
