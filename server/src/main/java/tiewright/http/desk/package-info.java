/**
 * What the desk does, and whoever stands beside a court: cards, calls, sheets, check-in, stops, heat, telling people.
 *
 * <p>Entry: {@link tiewright.http.desk.DeskRoom}, then {@link tiewright.http.desk.CardPages}.
 */
@NullMarked
package tiewright.http.desk;

import org.jspecify.annotations.NullMarked;
