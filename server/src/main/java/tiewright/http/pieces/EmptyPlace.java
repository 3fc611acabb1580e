package tiewright.http.pieces;

/**
 * What will stand here and when.
 *
 * @param href where the reader can make it so, empty for no link
 */
public record EmptyPlace(String what, String when, String href, String linkWords) {}
