/**
 * What the pieces of a page are filled with: one small record for each template in {@code web/templates/pieces}.
 *
 * <p>Start at {@link tiewright.http.pieces.Frame} (what stands round every page) and {@link
 * tiewright.http.pieces.Examples} (one of each). All text arrives worded, for the reader's language; text that is empty is
 * not shown. May import nothing of the project: pages fill these records, templates only lay them out.
 */
@NullMarked
package tiewright.http.pieces;

import org.jspecify.annotations.NullMarked;
