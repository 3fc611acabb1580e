/**
 * What pages ask computing rooms: the one room among those of the pages that reads a whole event. Every answer is for
 * everybody, or looks for whom it is made and refuses everybody else.
 *
 * <p>Entry: {@link tiewright.http.answers.Asker}; its answers are asked for by {@code visit.ask(ClubAnswers::new)}.
 */
@NullMarked
package tiewright.http.answers;

import org.jspecify.annotations.NullMarked;
