package tiewright.lineup.tie;

import java.util.List;
import tiewright.lineup.Wish;

/**
 * What a sheet of the captain's own making is worth.
 *
 * @param sheet its chance and what it costs against the best
 * @param wishesNotGranted the captain's own wishes that it does not grant: said, not refused
 */
public record Evaluation(ProposedSheet sheet, List<Wish> wishesNotGranted) {
    public Evaluation {
        wishesNotGranted = List.copyOf(wishesNotGranted);
    }
}
