/**
 * What anybody may read without a link: what is on now, ties, tables, the knockout, notices, clubs and players, the order of
 * play, the conditions, and all of it on paper.
 *
 * <p>Entry: {@link tiewright.http.everybody.EverybodyRoom}, then {@link tiewright.http.everybody.NowPage}.
 */
@NullMarked
package tiewright.http.everybody;

import org.jspecify.annotations.NullMarked;
