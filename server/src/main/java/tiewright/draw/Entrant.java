package tiewright.draw;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.event.ClubId;

/**
 * A club that goes into the draw.
 *
 * @param seed 1 is the strongest; empty where the club is not seeded
 */
public record Entrant(ClubId club, String name, Optional<String> town, OptionalInt seed) {
    /** The town in the form in which two spellings of it are compared: case and spacing do not count. */
    Optional<String> townAsCompared() {
        return town.map(t ->
                        Normalizer.normalize(t, Normalizer.Form.NFKC).strip().replaceAll("\\s+", " "))
                .map(t -> t.toLowerCase(Locale.ROOT))
                .filter(t -> !t.isEmpty());
    }
}
