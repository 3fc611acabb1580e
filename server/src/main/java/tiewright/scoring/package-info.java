/**
 * Scoring formats, which scores are legal, and the chain that turns rally chances into game chances.
 *
 * <p>Start at {@link tiewright.scoring.Format}. Imports nothing of the other rooms.
 */
@NullMarked
package tiewright.scoring;

import org.jspecify.annotations.NullMarked;
