/**
 * A certificate of one's own, for halls whose laptop has no name that a public authority could vouch for: made once, trusted by those
 * phones that want to, worthless after the day.
 */
@NullMarked
package tiewright.certificate;

import org.jspecify.annotations.NullMarked;
