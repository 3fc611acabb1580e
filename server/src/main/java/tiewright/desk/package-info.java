/**
 * The desk's decisions while the day runs: cards, calls, check-in, rulings, notices, times, lots, signatures,
 * withdrawals; and the list of what to do next.
 *
 * <p>Start at {@link tiewright.desk.RecordCard} and {@link tiewright.desk.DoNext}. May import only {@code sheet}, {@code
 * standings}, {@code draw}, {@code event}, {@code conditions} and {@code scoring}. Each decision is a pure question to
 * the event as it stands; the moment and who asks come in with it.
 */
@NullMarked
package tiewright.desk;

import org.jspecify.annotations.NullMarked;
