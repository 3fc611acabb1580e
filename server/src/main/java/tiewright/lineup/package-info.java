/**
 * The captain's questions before a tie, in the words that the rooms below share: rules, squads, wishes, what the other club may
 * send, what is wanted.
 *
 * <p>Start at {@link tiewright.lineup.LineupProblem}. It is answered in {@code tie} (which pairs, in which rubbers), {@code order}
 * (in which order, blind), {@code decider} (who plays the decider) and {@code day} (all ties ahead together), and made from an
 * event in {@code club}. Steps, time and seeds come in as arguments.
 */
@NullMarked
package tiewright.lineup;

import org.jspecify.annotations.NullMarked;
