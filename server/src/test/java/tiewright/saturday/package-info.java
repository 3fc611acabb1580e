/**
 * A machine that plays days: people of every role who only click what their pages offer and type what forms ask, under a
 * clock that a seed moves. After each step the promises are looked at. Start at {@link tiewright.saturday.Saturday}.
 */
@NullMarked
package tiewright.saturday;

import org.jspecify.annotations.NullMarked;
