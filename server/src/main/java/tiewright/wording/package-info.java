/**
 * Codes and facts to plain sentences, in one place, ready for other languages: pages, commands and paper say the same.
 *
 * <p>One class for each room, such as {@link tiewright.wording.StandingsWords}; the texts lie in {@code
 * tiewright/wording/ROOM.properties}. May import the computing rooms and {@code event}, {@code conditions}, {@code
 * scoring}; decides nothing.
 */
@NullMarked
package tiewright.wording;

import org.jspecify.annotations.NullMarked;
