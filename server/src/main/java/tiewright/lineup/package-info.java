/**
 * The captain's questions before a tie: which pairs, in which rubbers, in which order, and who plays the decider?
 *
 * <p>Start at {@link tiewright.lineup.Proposals}. Exact where that is possible: {@link tiewright.lineup.TieOdds}, {@link
 * tiewright.lineup.MatrixGame}, {@link tiewright.lineup.OrderGame}, {@link
 * tiewright.lineup.DeciderAdvice}. Knows OptaPlanner, as {@code timetable} does. May import {@code
 * rating}, {@code sheet}, {@code event}, {@code conditions}, {@code scoring}. Steps, time and seeds come in as arguments.
 */
@NullMarked
package tiewright.lineup;

import org.jspecify.annotations.NullMarked;
