/**
 * Where do the marks of a picture stand? Numbers come in, places in units of the drawing come out; a template draws them, so
 * that a page, a print and a screen reader get the same picture.
 *
 * <p>Entry: {@link tiewright.picture.DayPicture}.
 */
@NullMarked
package tiewright.picture;

import org.jspecify.annotations.NullMarked;
