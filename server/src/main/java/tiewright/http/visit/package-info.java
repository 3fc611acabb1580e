/**
 * The kit of all pages: one request and its answer, for whom a door opens, addresses, forms read and fields made, and what pages
 * of several rooms show alike: ties, tables, notices, countdowns, cautions. It knows no page.
 *
 * <p>Entry: {@link tiewright.http.visit.Visit}; a page is a {@link tiewright.http.visit.Page}, the pages of a room are a
 * {@link tiewright.http.visit.Room}.
 */
@NullMarked
package tiewright.http.visit;

import org.jspecify.annotations.NullMarked;
