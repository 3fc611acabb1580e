/**
 * What captains and their deputies do: name and seal sheets, ask for proposals, plan the day of the club, keep what they know
 * of their players.
 *
 * <p>Entry: {@link tiewright.http.captain.CaptainRoom}, then {@link tiewright.http.captain.SheetPages}.
 */
@NullMarked
package tiewright.http.captain;

import org.jspecify.annotations.NullMarked;
