package tiewright.standings;

/** The places that are possible, from 1; a place shared until a lot is drawn counts as every place that the lot can give. */
public record PlaceRange(int best, int worst) {
    public PlaceRange {
        if (best < 1 || worst < best) {
            throw new IllegalArgumentException("no places from " + best + " to " + worst);
        }
    }

    PlaceRange and(PlaceRange other) {
        return new PlaceRange(Math.min(best, other.best), Math.max(worst, other.worst));
    }

    public boolean isCertain() {
        return best == worst;
    }

    /** {@code 1-3}, or {@code 2} where only one place is possible. */
    @Override
    public String toString() {
        return isCertain() ? Integer.toString(best) : best + "-" + worst;
    }
}
