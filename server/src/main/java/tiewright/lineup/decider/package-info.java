/**
 * Who should play the decider, and what is it worth to come to it?
 *
 * <p>Start at {@link tiewright.lineup.decider.DeciderAdvice}, for the pairs to send; {@link
 * tiewright.lineup.decider.LevelWorth} says what a sheet leaves for it.
 */
@NullMarked
package tiewright.lineup.decider;

import org.jspecify.annotations.NullMarked;
