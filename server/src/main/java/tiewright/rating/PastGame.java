package tiewright.rating;

import java.time.LocalDate;
import tiewright.event.Pair;
import tiewright.scoring.Format;
import tiewright.scoring.Legality;
import tiewright.scoring.Score;

/** One finished game of two pairs, the home side first; the score is one that the format allows. */
public record PastGame(LocalDate date, Pair home, Pair away, Score score, Format format) {
    public PastGame {
        if (home.has(away.first()) || home.has(away.second())) {
            throw new IllegalArgumentException("a player stands on both sides: " + home + " v " + away);
        }
        if (Legality.game(format, score).isPresent()) {
            throw new IllegalArgumentException(
                    "no game of " + format.code() + " ends " + score.home() + "-" + score.away());
        }
    }
}
