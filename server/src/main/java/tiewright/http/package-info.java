/**
 * The service: personal links, pages, live updates. A page is one class here (parse, hand over the decision, show) and one
 * template; it is made from a {@link tiewright.event.VisibleEvent} and never holds an {@code Event}: what must be worked out
 * from one, {@link tiewright.http.Answers} and its neighbours ask for.
 *
 * <p>Entry: {@link tiewright.http.Service}. May use every room; only this room knows Javalin and jte.
 */
@NullMarked
package tiewright.http;

import org.jspecify.annotations.NullMarked;
