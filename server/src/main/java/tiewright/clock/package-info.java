/**
 * What time is it, and may that be believed? Time is a witness, not a master: where the machine's clock, a counter and the last fact do
 * not agree, nothing opens, closes or is deleted until a person says which is right. Start at {@link tiewright.clock.WitnessedClock}.
 */
@NullMarked
package tiewright.clock;

import org.jspecify.annotations.NullMarked;
