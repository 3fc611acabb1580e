package tiewright.rating;

import java.time.LocalDate;
import java.util.Optional;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.event.SameGame;
import tiewright.event.TieId;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

/**
 * A filmed game as far as it tells of strengths: how many rallies each side served, and how many of them it won.
 *
 * @param tie where it was played, if that was in this event
 * @param played the day, if it is known
 * @param card the score of the card or, without one, the score to which the rallies led if they finished the game
 */
public record FilmedGame(
        Optional<TieId> tie,
        Optional<RubberNo> rubber,
        Optional<LocalDate> played,
        Format format,
        Pair one,
        Pair two,
        Optional<Score> card,
        Served byOne,
        Served byTwo) {

    /** Rallies that one side served, and won of these. */
    public record Served(int rallies, int won) {
        public static final Served NONE = new Served(0, 0);

        public Served {
            if (won < 0 || won > rallies) {
                throw new IllegalArgumentException(won + " rallies won of " + rallies);
            }
        }

        /** One rally more. */
        public Served and(boolean wonIt) {
            return new Served(rallies + 1, won + (wonIt ? 1 : 0));
        }
    }

    public FilmedGame {
        if (one.has(two.first()) || one.has(two.second())) {
            throw new IllegalArgumentException("a player stands on both sides: " + one + " v " + two);
        }
    }

    FilmedGame on(LocalDate day) {
        return new FilmedGame(tie, rubber, Optional.of(day), format, one, two, card, byOne, byTwo);
    }

    /** Rallies that somebody won. */
    public int rallies() {
        return byOne.rallies() + byTwo.rallies();
    }

    /** The same four people in the same pairs, whoever was named first. */
    boolean isBetween(Pair home, Pair away) {
        return one.equals(home) && two.equals(away) || one.equals(away) && two.equals(home);
    }

    /** The card of a game between these pairs reads so. */
    boolean reads(Pair home, Score score) {
        return card.filter(points -> (one.equals(home) ? points : points.swapped()).equals(score))
                .isPresent();
    }

    /** What it is known by if it was played on that day; empty without a card. */
    Optional<SameGame> same(LocalDate day) {
        return card.map(score -> SameGame.of(day, one, two, score));
    }
}
