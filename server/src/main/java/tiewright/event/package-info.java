/**
 * The facts of an event, the snapshot they fold into, and what each viewer may know of it.
 *
 * <p>Start at {@link tiewright.event.Event} (the snapshot), {@link tiewright.event.Fact} (what can happen) and {@link
 * tiewright.event.VisibleEvent} (what one viewer may see). May import only {@code scoring} and {@code conditions}. Knows
 * no clock, no database and no page.
 */
@NullMarked
package tiewright.event;

import org.jspecify.annotations.NullMarked;
