/**
 * What did a phone close for this service alone? Begin with {@link tiewright.letterbox.Letterbox}; the phone's side is
 * {@code web/static/closed.js}.
 */
@NullMarked
package tiewright.letterbox;

import org.jspecify.annotations.NullMarked;
