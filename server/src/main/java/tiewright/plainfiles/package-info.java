/**
 * The event folder of plain CSV files (RFC 4180), in and out: every fault at once with file, line and column, or the event.
 *
 * <p>Start at {@link tiewright.plainfiles.EventFolder}. May import the computing rooms, and {@code wording} for the
 * sentences of faults.
 */
@NullMarked
package tiewright.plainfiles;

import org.jspecify.annotations.NullMarked;
