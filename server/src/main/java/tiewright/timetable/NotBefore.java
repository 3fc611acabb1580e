package tiewright.timetable;

import java.time.LocalTime;
import java.util.HashMap;
import java.util.Map;
import tiewright.event.ClubId;
import tiewright.event.TieId;

/**
 * What cannot begin as early as the courts could.
 *
 * @param clubs that cannot play from the start, and from when they can
 * @param published starts that people were told: their ties begin then or later
 */
public record NotBefore(Map<ClubId, LocalTime> clubs, Map<TieId, LocalTime> published) {
    static final NotBefore NOTHING = new NotBefore(Map.of(), Map.of());

    public NotBefore {
        clubs = Map.copyOf(clubs);
        published = Map.copyOf(published);
    }

    NotBefore withClubs(Map<ClubId, LocalTime> late) {
        return new NotBefore(late, published);
    }

    NotBefore withPublished(Map<TieId, LocalTime> starts) {
        return new NotBefore(clubs, starts);
    }

    NotBefore without(ClubId club) {
        Map<ClubId, LocalTime> others = new HashMap<>(clubs);
        others.remove(club);
        return withClubs(others);
    }
}
