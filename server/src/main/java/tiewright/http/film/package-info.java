/**
 * What a captain keeps of films and of earlier games, and what can be read from it.
 *
 * <p>Entry: {@link tiewright.http.film.FilmRoom}, then {@link tiewright.http.film.FilmPage}.
 */
@NullMarked
package tiewright.http.film;

import org.jspecify.annotations.NullMarked;
