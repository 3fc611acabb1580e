/**
 * How an order of play is made, timed, published, and mended when the day breaks; searches go on in the background.
 *
 * <p>Entry: {@link tiewright.http.plan.PlanRoom}, then {@link tiewright.http.plan.PlanPage}.
 */
@NullMarked
package tiewright.http.plan;

import org.jspecify.annotations.NullMarked;
