/**
 * What the templates of the pages are given, one record for each page: words and pieces only, nothing of the event.
 *
 * <p>Made by the page classes of {@link tiewright.http}; may use only {@link tiewright.http.pieces}.
 */
@NullMarked
package tiewright.http.views;

import org.jspecify.annotations.NullMarked;
