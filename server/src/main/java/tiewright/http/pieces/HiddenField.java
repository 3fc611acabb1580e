package tiewright.http.pieces;

/** What a form carries along without showing it; never a secret. */
public record HiddenField(String name, String value) implements FormField {}
