/**
 * What is made to be carried away: codes that a phone reads from a slip or a wall, calendars that it subscribes to.
 *
 * <p>Entry: {@link tiewright.paper.QrCode} and {@link tiewright.paper.CalendarFile}. May use {@code zxing} and {@code biweekly}; knows no
 * other room.
 */
@NullMarked
package tiewright.paper;

import org.jspecify.annotations.NullMarked;
