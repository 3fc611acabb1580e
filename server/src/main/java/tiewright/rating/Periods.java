package tiewright.rating;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import tiewright.event.PlayerId;

/**
 * The spans of days in which a form is taken to stand still: four weeks; twice as long, and again, while players would have more
 * forms than can be told from each other in a moment; everything where nothing drifts.
 *
 * @param days how long each is
 */
record Periods(int days) {
    private static final int SHORTEST = 28;
    private static final int LONGEST = 1 << 16; // 1970 to 2149
    private static final int MOST_FORMS = 400;

    static Periods none() {
        return new Periods(LONGEST);
    }

    static Periods of(Evidence evidence) {
        int days = SHORTEST;
        while (days < LONGEST && new Periods(days).forms(evidence) > MOST_FORMS) {
            days *= 2;
        }
        return new Periods(Math.min(days, LONGEST));
    }

    private int forms(Evidence evidence) {
        Set<Map.Entry<PlayerId, Long>> forms = new HashSet<>();
        Stream.concat(
                        evidence.games().stream()
                                .map(game -> Map.entry(game.date(), List.of(game.home(), game.away()))),
                        evidence.films().stream()
                                .map(film -> Map.entry(
                                        film.played().orElse(evidence.latest()), List.of(film.one(), film.two()))))
                .forEach(game -> game.getValue()
                        .forEach(pair ->
                                pair.players().forEach(player -> forms.add(Map.entry(player, at(game.getKey()))))));
        return forms.size();
    }

    /** The number of the period of this day. */
    long at(LocalDate day) {
        return Math.floorDiv(day.toEpochDay(), days);
    }
}
