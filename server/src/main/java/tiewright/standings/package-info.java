/**
 * Who is ahead, and why: tables under any level-teams procedure with a reason for every place, and what each club needs
 * in the ties left.
 *
 * <p>Start at {@link tiewright.standings.Standings} (a table) and {@link tiewright.standings.Needs} (what a club needs).
 * May import only {@code event}, {@code conditions} and {@code scoring}. Knows no clock, no chance and no page: a lot is
 * drawn by people and comes in as an argument.
 */
@NullMarked
package tiewright.standings;

import org.jspecify.annotations.NullMarked;
