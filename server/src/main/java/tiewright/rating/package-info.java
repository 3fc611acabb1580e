/**
 * How strong are players and pairs, and with what doubt?
 *
 * <p>Start at {@link tiewright.rating.Rating}: the captains' own judgement is the prior, past games move it through the
 * scoring chain. Everything is in rallies won per 100 above an even game; formulas in docs/models.md. May import {@code
 * event}, {@code conditions} and {@code scoring}, and hipparchus for linear algebra. No clock, no files, no chance but by
 * a seed that is given.
 */
@NullMarked
package tiewright.rating;

import org.jspecify.annotations.NullMarked;
