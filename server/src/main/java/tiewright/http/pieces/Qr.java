package tiewright.http.pieces;

/**
 * A QR code.
 *
 * @param size modules along a side
 * @param path its black modules as an SVG path
 * @param words what it leads to, for who cannot see it
 */
public record Qr(int size, String path, String words) {}
