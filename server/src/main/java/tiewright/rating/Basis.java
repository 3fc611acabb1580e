package tiewright.rating;

/**
 * How much the ratings rest on besides a captain's own notes; no game stands in two of these.
 *
 * @param cards games of the day known by their score
 * @param earlier games of earlier days known by their score
 * @param filmed games on film, of whatever day
 * @param rallies of these, as far as somebody won them
 */
public record Basis(int cards, int earlier, int filmed, int rallies) {}
