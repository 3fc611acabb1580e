/**
 * Games of two who choose at the same time: what are they worth, and how should each mix?
 *
 * <p>Start at {@link tiewright.lineup.game.MatrixGame}, for a whole matrix, or {@link tiewright.lineup.game.OracleGame}, whose
 * payoffs are worked out one by one. Knows nothing of ties.
 */
@NullMarked
package tiewright.lineup.game;

import org.jspecify.annotations.NullMarked;
