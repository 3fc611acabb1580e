package tiewright.rating;

import java.time.LocalDate;
import java.util.Optional;
import tiewright.event.Pair;
import tiewright.scoring.Format;
import tiewright.scoring.Legality;
import tiewright.scoring.Score;

/**
 * One finished game of two pairs, the home side first; the score is one that the format allows.
 *
 * @param rubber what the games of one rubber of several games have in common; empty for a rubber of one game
 */
public record PastGame(LocalDate date, Pair home, Pair away, Score score, Format format, Optional<String> rubber) {
    public PastGame {
        if (home.has(away.first()) || home.has(away.second())) {
            throw new IllegalArgumentException("a player stands on both sides: " + home + " v " + away);
        }
        if (Legality.game(format, score).isPresent()) {
            throw new IllegalArgumentException(
                    "no game of " + format.code() + " ends " + score.home() + "-" + score.away());
        }
    }

    PastGame in(Optional<String> other) {
        return new PastGame(date, home, away, score, format, other);
    }

    /** A rubber by itself. */
    public PastGame(LocalDate date, Pair home, Pair away, Score score, Format format) {
        this(date, home, away, score, format, Optional.empty());
    }
}
