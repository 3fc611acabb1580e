/**
 * What the organiser does from an empty event to the deletion of private data: the steps, entries, conditions, draw, links.
 *
 * <p>Entry: {@link tiewright.http.organiser.OrganiserRoom}, then {@link tiewright.http.organiser.OrganiserPage}.
 */
@NullMarked
package tiewright.http.organiser;

import org.jspecify.annotations.NullMarked;
