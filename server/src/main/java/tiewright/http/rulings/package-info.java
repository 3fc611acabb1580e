/**
 * What officials decide: rulings, corrections, protests, withdrawals, lots and signatures.
 *
 * <p>Entry: {@link tiewright.http.rulings.RulingsRoom}, then {@link tiewright.http.rulings.CorrectionPage}.
 */
@NullMarked
package tiewright.http.rulings;

import org.jspecify.annotations.NullMarked;
