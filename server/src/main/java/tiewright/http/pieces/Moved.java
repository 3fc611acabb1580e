package tiewright.http.pieces;

/**
 * A published time that changed.
 *
 * @param what whose it is, empty where that is plain
 * @param old what no longer holds, shown struck; empty where nothing was published before
 * @param now what holds
 * @param why under which notice, and the reason
 */
public record Moved(String what, String old, String now, String why) {}
