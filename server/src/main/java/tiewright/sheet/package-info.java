/**
 * Sheets: the receipt that anybody can check, and which sheets the conditions allow.
 *
 * <p>Start at {@link tiewright.sheet.Receipt} and {@link tiewright.sheet.SheetCount}. May import {@code event}, {@code
 * conditions} and {@code scoring}.
 */
@NullMarked
package tiewright.sheet;

import org.jspecify.annotations.NullMarked;
