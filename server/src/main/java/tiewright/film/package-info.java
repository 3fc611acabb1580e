/**
 * What film notes say: who served and at which score, whether they fit the card, and what can be learnt from them with which
 * doubt.
 *
 * <p>Start at {@link tiewright.film.FilmGame} (a game as it was charted) and {@link tiewright.film.Replay} (the game rally by
 * rally). May import {@code rating}, {@code event} and {@code scoring}, and hipparchus for distributions. No clock, no files, no
 * sentence, no chance but by a seed that is given. Formulas in docs/models.md.
 */
@NullMarked
package tiewright.film;

import org.jspecify.annotations.NullMarked;
