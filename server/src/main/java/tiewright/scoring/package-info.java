/**
 * Scoring formats, which scores are legal, and the chain that turns rally chances into game chances.
 *
 * <p>Start at {@link tiewright.scoring.Format} (the rules of a game), {@link tiewright.scoring.Legality} (can a score be),
 * {@link tiewright.scoring.GameState} (a game rally by rally) and {@link tiewright.scoring.Chain} (chances). Imports nothing
 * of the other rooms.
 */
@NullMarked
package tiewright.scoring;

import org.jspecify.annotations.NullMarked;
