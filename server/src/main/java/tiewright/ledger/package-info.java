/**
 * Keeps what happened: appends facts, asks decisions, holds sealed sheets and private notes, backs up.
 *
 * <p>Start at {@link tiewright.ledger.Ledger}. May import {@code event}, {@code conditions}, {@code scoring}, the
 * generated {@code schema}, jOOQ, Flyway and H2. Knows no page, no command and no computing room; nobody else knows the
 * database.
 */
@NullMarked
package tiewright.ledger;

import org.jspecify.annotations.NullMarked;
