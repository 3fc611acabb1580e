/**
 * Everything before the first sheet: what the event is, its conditions, clubs and squads, courts, links, the draw. Every
 * change is a decision named by its verb; all but a captain's own squad are the organiser's.
 *
 * <p>Start at {@link tiewright.setup.DescribeEvent}, {@link tiewright.setup.PublishConditions} and {@link
 * tiewright.setup.DrawPools}; {@link tiewright.setup.EntryWarnings} says what looks wrong about the entries. May import
 * {@code draw}, {@code standings}, {@code event}, {@code conditions} and {@code scoring}. Knows no clock, no database and no
 * page.
 */
@NullMarked
package tiewright.setup;

import org.jspecify.annotations.NullMarked;
