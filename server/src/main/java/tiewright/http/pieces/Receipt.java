package tiewright.http.pieces;

/**
 * A sheet's receipt.
 *
 * @param code the 64 hexadecimal digits
 * @param line when it was given and what it is good for
 * @param href how to check it, empty for no link
 */
public record Receipt(String title, String code, String line, String href, String linkWords) {}
