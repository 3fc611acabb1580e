/**
 * Pools by a seeded public draw, round orders, and the knockout with slots that know where they come from.
 *
 * <p>Start at {@link tiewright.draw.PoolDraw}, then {@link tiewright.draw.PoolPlan} and {@link
 * tiewright.draw.KnockoutDraw}. May import only {@code event}, {@code conditions} and {@code scoring}. The seed is an
 * argument; nothing here knows a clock or a source of chance. How to replay a draw by hand or in another language is in
 * docs/draw.md.
 */
@NullMarked
package tiewright.draw;

import org.jspecify.annotations.NullMarked;
