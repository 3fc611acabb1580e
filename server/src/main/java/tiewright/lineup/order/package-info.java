/**
 * In which order, against somebody who names theirs blind?
 *
 * <p>Start at {@link tiewright.lineup.order.OrderAdvice}; {@link tiewright.lineup.order.BlindGame} is the draw that cannot be read,
 * {@link tiewright.lineup.order.Habit} what a reading of them is worth.
 */
@NullMarked
package tiewright.lineup.order;

import org.jspecify.annotations.NullMarked;
