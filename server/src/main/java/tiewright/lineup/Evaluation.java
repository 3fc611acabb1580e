package tiewright.lineup;

import java.util.List;
import java.util.Optional;
import tiewright.event.Refusal;

/**
 * What a sheet of the captain's own making is worth.
 *
 * @param faults why the conditions do not allow it; empty = it is accepted
 * @param sheet its chance and what it costs against the best, where it is accepted
 * @param wishesNotGranted the captain's own wishes that it does not grant: said, not refused
 */
public record Evaluation(List<Refusal> faults, Optional<ProposedSheet> sheet, List<Wish> wishesNotGranted) {
  public Evaluation {
    faults = List.copyOf(faults);
    wishesNotGranted = List.copyOf(wishesNotGranted);
  }

  public boolean isAccepted() {
    return faults.isEmpty();
  }
}
