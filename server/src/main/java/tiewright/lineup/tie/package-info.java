/**
 * Which pairs, in which rubbers of one tie, and what is a sheet worth?
 *
 * <p>Start at {@link tiewright.lineup.tie.Proposals}. {@link tiewright.lineup.tie.Board} lays a question out in numbers; {@link
 * tiewright.lineup.tie.SheetSearch} tries every legal sheet, and where there are too many {@code LineupSolver} searches.
 */
@NullMarked
package tiewright.lineup.tie;

import org.jspecify.annotations.NullMarked;
