/**
 * What is made for paper: codes that a phone can read from a slip or a wall.
 *
 * <p>Entry: {@link tiewright.paper.QrCode}. May use {@code zxing}; knows no other room.
 */
@NullMarked
package tiewright.paper;

import org.jspecify.annotations.NullMarked;
