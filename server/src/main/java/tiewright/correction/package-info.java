/**
 * What hangs on a score, and what becomes of it when the score was wrong; what a withdrawal would do; what needs a ruling.
 *
 * <p>Start at {@link tiewright.correction.Impact}: the difference of two snapshots. {@link tiewright.correction.Replay} and
 * {@link tiewright.correction.Stay} say which facts let play begin again or let everybody stay. May import {@code standings},
 * {@code draw}, {@code sheet}, {@code event} and below; decides nothing itself.
 */
@NullMarked
package tiewright.correction;

import org.jspecify.annotations.NullMarked;
