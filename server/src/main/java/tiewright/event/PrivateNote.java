package tiewright.event;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

/** What is kept beside the ledger because it must be erased on a date or is private to a club. A later one of the same subject replaces the earlier. */
public sealed interface PrivateNote {

    record PersonNamed(PlayerId player, String name, OptionalInt bornYear) implements PrivateNote {}

    /** Somebody was hurt or taken ill; for the own captain and officials. Said again the other way it ends. */
    record HurtMarked(PlayerId player, boolean hurt) implements PrivateNote {}

    /** A captain's judgement: rallies won per 100 above an even game, and its doubt. */
    record FormJudged(PlayerId player, OptionalDouble form, OptionalDouble sd) implements PrivateNote {}

    /** A captain's judgement of a pair, and the wish about it. */
    record ChemistryJudged(Pair pair, double extra, OptionalDouble sd, Optional<PairWish> wish)
            implements PrivateNote {}

    enum PairWish {
        TOGETHER,
        APART
    }

    /** A captain's wish for one tie: these must play, these must rest. */
    record TieWish(TieId tie, ClubId club, List<PlayerId> mustPlay, List<PlayerId> mustRest) implements PrivateNote {
        public TieWish {
            mustPlay = List.copyOf(mustPlay);
            mustRest = List.copyOf(mustRest);
        }
    }

    /**
     * A captain's promise of playing time to one player.
     *
     * @param rubbers by the end of the day, at least; 0 takes it back
     */
    record RubbersPromised(PlayerId player, int rubbers) implements PrivateNote {
        public static final int MOST = 99;

        public RubbersPromised {
            if (rubbers < 0 || rubbers > MOST) {
                throw new IllegalArgumentException("a promise is 0 to " + MOST + " rubbers, not " + rubbers);
            }
        }
    }

    /**
     * How a captain lets older games count for the own club.
     *
     * @param days a game that is so many days old counts half; empty: every game counts the same
     */
    record HalfLifeChosen(ClubId club, OptionalInt days) implements PrivateNote {
        public HalfLifeChosen {
            if (days.isPresent() && days.getAsInt() < 1) {
                throw new IllegalArgumentException("a half-life is a day or more, not " + days.getAsInt());
            }
        }
    }

    /**
     * What the advice to one club expected when sheets were opened, to be scored once it is known how it went.
     *
     * @param part what is forecast; empty = the tie itself, before the other sheet was seen; else a rubber with both pairs known
     * @param chance that the club wins it
     * @param byRating whom the captain's own ratings alone put ahead: 1 the own side, -1 the other, 0 neither
     * @param givenAway of a tie: what the sheet named gave away against the best as rated
     */
    record Forecast(TieId tie, ClubId club, Optional<RubberNo> part, double chance, int byRating, double givenAway)
            implements PrivateNote {
        public Forecast {
            if (!(chance >= 0 && chance <= 1) || Math.abs(byRating) > 1 || !(givenAway >= 0)) {
                throw new IllegalArgumentException("no forecast is " + chance + ", " + byRating + ", " + givenAway);
            }
        }
    }

    /**
     * Everything private goes, whatever table it lies in.
     *
     * @param kept what stays of names: first names and initials, or nobody
     */
    record EverythingErased(Directory kept) implements PrivateNote {}

    /** A sheet to be kept encrypted until the opening. */
    record SheetKept(ExchangeId exchange, ClubId club, Sheet sheet, String secret) implements PrivateNote {
        /** Says nothing of the sheet: what is printed or logged by mistake stays sealed. */
        @Override
        public String toString() {
            return "SheetKept[exchange=" + exchange + ", club=" + club + "]";
        }
    }

    /** The kept ciphertext of a club's sheet is no longer needed. */
    record SheetDropped(ExchangeId exchange, ClubId club) implements PrivateNote {}

    /**
     * What a club noted from the film of a game; for that club alone. Given again it replaces the earlier notes of the game.
     *
     * @param about header and row of games.csv
     * @param rallies header and rows of rallies.csv
     */
    record FilmKept(ClubId club, String game, String about, String rallies) implements PrivateNote {
        public FilmKept {
            Codes.checked("game", game);
        }

        /** Says nothing of what was noted: what is printed or logged by mistake stays with the club. */
        @Override
        public String toString() {
            return "FilmKept[club=" + club + "]";
        }
    }

    /** A club no longer wants its notes of a filmed game. */
    record FilmDropped(ClubId club, String game) implements PrivateNote {}

    /** Earlier games that a club gives for itself alone; those that it keeps already are not kept twice. */
    record GamesGiven(ClubId club, List<PastGame> games) implements PrivateNote {
        public GamesGiven {
            games = List.copyOf(games);
        }

        /** Says nothing of the games: what is printed or logged by mistake stays with the club. */
        @Override
        public String toString() {
            return "GamesGiven[club=" + club + "]";
        }
    }

    /** A club no longer keeps the earlier game of this number. */
    record GameTakenBack(ClubId club, int number) implements PrivateNote {}

    /** An earlier game that feeds the ratings. Players are codes of the event or names unknown to it. */
    record PastGame(LocalDate date, String home1, String home2, String away1, String away2, Score score, Format format)
            implements PrivateNote {}
}
