/**
 * How strong are players and pairs, and with what doubt?
 *
 * <p>Start at {@link tiewright.rating.Ratings}, or at {@link tiewright.rating.Rating} for the strengths alone: the captains' own
 * judgement is the prior, scores move it through the scoring chain, film rally by rally. Everything is in rallies won per 100 above an even game; formulas in docs/models.md. May import {@code
 * event}, {@code conditions} and {@code scoring}, and hipparchus for linear algebra. No clock, no files, no chance but by
 * a seed that is given.
 */
@NullMarked
package tiewright.rating;

import org.jspecify.annotations.NullMarked;
