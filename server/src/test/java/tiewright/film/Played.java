package tiewright.film;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.PlayerId;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

/** Games of A1 and A2 (side one) against B1 and B2, written as the sides that won the rallies; A1 serves first, from the right. */
final class Played {
    static final PlayerId A1 = PlayerId.of("A1");
    static final PlayerId A2 = PlayerId.of("A2");
    static final PlayerId B1 = PlayerId.of("B1");
    static final PlayerId B2 = PlayerId.of("B2");

    private Played() {}

    static Start start(Format format) {
        return new Start(format, A1, A1, A2, B1, B2);
    }

    /** A, B = who won the rally; r = played again; ? = unsure. */
    static List<RallyNote> notes(String winners) {
        List<RallyNote> notes = new ArrayList<>();
        for (char winner : winners.toCharArray()) {
            int number = notes.size() + 1;
            notes.add(
                    switch (winner) {
                        case 'A' -> RallyNote.of(number, Ending.EARNED, A1);
                        case 'B' -> RallyNote.of(number, Ending.GAVE, A2);
                        case 'r' -> RallyNote.of(number, Ending.REPLAY);
                        case '?' -> RallyNote.of(number, Ending.UNSURE);
                        default -> throw new IllegalArgumentException(winners);
                    });
        }
        return notes;
    }

    static FilmGame game(Format format, String winners) {
        return new FilmGame("g", Optional.empty(), Optional.empty(), start(format), Optional.empty(), notes(winners));
    }

    static FilmGame game(Format format, String winners, Score card) {
        return new FilmGame("g", Optional.empty(), Optional.empty(), start(format), Optional.of(card), notes(winners));
    }
}
