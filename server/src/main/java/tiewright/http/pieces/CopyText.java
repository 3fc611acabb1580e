package tiewright.http.pieces;

/** A table or sheet as plain text for a club's chat. */
public record CopyText(String id, String title, String text, String copyWords, String copiedWords) {}
