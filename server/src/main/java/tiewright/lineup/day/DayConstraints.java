package tiewright.lineup.day;

import static org.optaplanner.core.api.score.stream.ConstraintCollectors.toList;

import java.util.List;
import org.optaplanner.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.core.api.score.stream.ConstraintProvider;
import org.optaplanner.core.api.score.stream.bi.BiConstraintStream;
import org.optaplanner.core.api.score.stream.tri.TriConstraintStream;

/**
 * What makes the plan of a day good. Each single sheet is legal and grants the captain's wishes already; these look at what goes
 * from tie to tie. A method for each constraint.
 */
public class DayConstraints implements ConstraintProvider {
    static final String MISSING = "Rubbers missing to what was promised";
    static final String IN_A_ROW = "More ties in a row than the captain wants";
    static final String AIM = "What the captain wants of the ties";
    static final String TIRED = "What short rest and many rubbers take off";
    static final String LEARNING = "What ties teach on which little hangs";

    @Override
    public Constraint[] defineConstraints(ConstraintFactory factory) {
        return new Constraint[] {missing(factory), inARow(factory), aim(factory), tired(factory), learning(factory)};
    }

    /** Everybody has what was promised by the end of the day. */
    Constraint missing(ConstraintFactory factory) {
        return throughTheDay(factory)
                .penalizeLong(
                        HardSoftLongScore.ONE_HARD,
                        (player, sheets, facts) -> facts.score().missing(player.number(), sheets))
                .asConstraint(MISSING);
    }

    /** Nobody is named for more ties in a row than the captain wants. */
    Constraint inARow(ConstraintFactory factory) {
        return throughTheDay(factory)
                .penalizeLong(
                        HardSoftLongScore.ONE_HARD,
                        (player, sheets, facts) -> facts.score().tooManyInARow(player.number(), sheets))
                .asConstraint(IN_A_ROW);
    }

    /** The more of what the captain wants of each tie, by how much hangs on it. */
    Constraint aim(ConstraintFactory factory) {
        return planned(factory)
                .impactLong(
                        HardSoftLongScore.ONE_SOFT,
                        (tie, facts) -> facts.score().aim(tie.sheet()))
                .asConstraint(AIM);
    }

    /** Less what rest and rubbers of the day take off it. */
    Constraint tired(ConstraintFactory factory) {
        return throughTheDay(factory)
                .impactLong(
                        HardSoftLongScore.ONE_SOFT,
                        (player, sheets, facts) -> -facts.score().tired(player.number(), sheets))
                .asConstraint(TIRED);
    }

    /** What is not known well is tried where little hangs. */
    Constraint learning(ConstraintFactory factory) {
        return planned(factory)
                .filter((tie, facts) -> facts.score().day().wanted().learning())
                .rewardLong(
                        HardSoftLongScore.ONE_SOFT,
                        (tie, facts) -> facts.score().learning(tie.sheet()))
                .asConstraint(LEARNING);
    }

    private static BiConstraintStream<PlannedTie, DayPlanning.Facts> planned(ConstraintFactory factory) {
        return factory.forEach(PlannedTie.class).join(DayPlanning.Facts.class);
    }

    /** Each player with all sheets planned so far. */
    private static TriConstraintStream<DayPlanning.DayPlayer, List<DaySheet>, DayPlanning.Facts> throughTheDay(
            ConstraintFactory factory) {
        return factory.forEach(PlannedTie.class)
                .join(DayPlanning.DayPlayer.class)
                .groupBy((tie, player) -> player, toList((tie, player) -> tie.sheet()))
                .join(DayPlanning.Facts.class);
    }
}
