/**
 * Sheets: which ones the conditions allow, the blind exchange from sealing to opening, and receipts that anybody can
 * check.
 *
 * <p>Start at {@link tiewright.sheet.SheetRules} and {@link tiewright.sheet.Choices} (what may be named), {@link
 * tiewright.sheet.SealSheet} and {@link tiewright.sheet.OpenSheets} (the exchange), {@link tiewright.sheet.Exchanges} (how
 * it stands) and {@link tiewright.sheet.Receipt}. May import {@code draw} (slots that an opening fills), {@code event},
 * {@code conditions} and {@code scoring}.
 */
@NullMarked
package tiewright.sheet;

import org.jspecify.annotations.NullMarked;
