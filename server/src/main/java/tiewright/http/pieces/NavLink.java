package tiewright.http.pieces;

/** A page to go to; {@code current} says that the reader is on it. */
public record NavLink(String href, String text, boolean current) {}
