package tiewright.event;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

/** What is kept beside the ledger because it must be erased on a date or is private to a club. A later one of the same subject replaces the earlier. */
public sealed interface PrivateNote {
    Kind kind();

    /** It says nothing: what was noted of its subject ends. */
    default boolean ends() {
        return false;
    }

    /** Every kind there is: a {@code switch} over it does not compile until a new one is handled. */
    enum Kind {
        PERSON_NAMED,
        HURT_MARKED,
        FORM_JUDGED,
        CHEMISTRY_JUDGED,
        TIE_WISH,
        PLAYER_WISHED,
        RUBBERS_PROMISED,
        HALF_LIFE_CHOSEN,
        FORECAST,
        PLAYER_FORGOTTEN,
        EVERYTHING_ERASED,
        SHEET_KEPT,
        SHEET_DROPPED,
        FILM_KEPT,
        FILM_DROPPED,
        GAME_GIVEN,
        GAME_TAKEN_BACK,
        PAST_GAME
    }

    record PersonNamed(PlayerId player, Directory.Person person) implements PrivateNote {
        public PersonNamed(PlayerId player, String name, OptionalInt bornYear) {
            this(player, new Directory.Person(name, bornYear));
        }

        @Override
        public Kind kind() {
            return Kind.PERSON_NAMED;
        }
    }

    /** Somebody was hurt or taken ill; for the own captain and officials. Said again the other way it ends. */
    record HurtMarked(PlayerId player, boolean hurt) implements PrivateNote {
        @Override
        public Kind kind() {
            return Kind.HURT_MARKED;
        }

        @Override
        public boolean ends() {
            return !hurt;
        }
    }

    /** A captain's judgement: rallies won per 100 above an even game, and its doubt. */
    record FormJudged(PlayerId player, OptionalDouble form, OptionalDouble sd) implements PrivateNote {
        @Override
        public Kind kind() {
            return Kind.FORM_JUDGED;
        }

        @Override
        public boolean ends() {
            return form.isEmpty() && sd.isEmpty();
        }
    }

    /** A captain's judgement of a pair, and the wish about it. */
    record ChemistryJudged(Pair pair, double extra, OptionalDouble sd, Optional<PairWish> wish) implements PrivateNote {
        @Override
        public Kind kind() {
            return Kind.CHEMISTRY_JUDGED;
        }

        @Override
        public boolean ends() {
            return extra == 0 && sd.isEmpty() && wish.isEmpty();
        }
    }

    /** All wishes of a captain for one tie: these must play, these must rest. */
    record TieWish(TieId tie, ClubId club, List<PlayerId> mustPlay, List<PlayerId> mustRest) implements PrivateNote {
        public TieWish {
            mustPlay = List.copyOf(mustPlay);
            mustRest = List.copyOf(mustRest);
        }

        /** What is wished of one player. */
        public Optional<PlayerWish> of(PlayerId player) {
            return mustPlay.contains(player)
                    ? Optional.of(PlayerWish.PLAY)
                    : Optional.of(PlayerWish.REST).filter(rest -> mustRest.contains(player));
        }

        /** The wishes with this one about one player, at the end of its list. */
        public TieWish with(PlayerWished one) {
            return new TieWish(tie, club, with(mustPlay, one, PlayerWish.PLAY), with(mustRest, one, PlayerWish.REST));
        }

        private static List<PlayerId> with(List<PlayerId> before, PlayerWished one, PlayerWish kind) {
            Stream<PlayerId> others = before.stream().filter(player -> !player.equals(one.player()));
            return Stream.concat(others, one.wish().filter(kind::equals).map(wish -> one.player()).stream())
                    .toList();
        }

        @Override
        public Kind kind() {
            return Kind.TIE_WISH;
        }

        @Override
        public boolean ends() {
            return mustPlay.isEmpty() && mustRest.isEmpty();
        }
    }

    /** A captain's wish about one player in one tie; empty ends it. */
    record PlayerWished(TieId tie, ClubId club, PlayerId player, Optional<PlayerWish> wish) implements PrivateNote {
        @Override
        public Kind kind() {
            return Kind.PLAYER_WISHED;
        }

        @Override
        public boolean ends() {
            return wish.isEmpty();
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

        @Override
        public Kind kind() {
            return Kind.RUBBERS_PROMISED;
        }

        @Override
        public boolean ends() {
            return rubbers == 0;
        }
    }

    /** How older games count for the own club: one of so many days counts half; without a number each counts the same. */
    record HalfLifeChosen(ClubId club, OptionalInt days) implements PrivateNote {
        public HalfLifeChosen {
            if (days.isPresent() && days.getAsInt() < 1) {
                throw new IllegalArgumentException("a half-life is a day or more, not " + days.getAsInt());
            }
        }

        @Override
        public Kind kind() {
            return Kind.HALF_LIFE_CHOSEN;
        }

        @Override
        public boolean ends() {
            return days.isEmpty();
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

        @Override
        public Kind kind() {
            return Kind.FORECAST;
        }
    }

    /**
     * Everything private goes, whatever table it lies in.
     *
     * @param kept what stays of names: first names and initials, or nobody
     */
    record EverythingErased(Directory kept) implements PrivateNote {
        @Override
        public Kind kind() {
            return Kind.EVERYTHING_ERASED;
        }
    }

    /**
     * What a club noted about one of its own goes at once, at the player's wish.
     *
     * @param films codes of the filmed games whose notes go as well
     */
    record PlayerForgotten(ClubId club, PlayerId player, List<String> films) implements PrivateNote {
        public PlayerForgotten {
            films = List.copyOf(films);
        }

        @Override
        public Kind kind() {
            return Kind.PLAYER_FORGOTTEN;
        }
    }

    /** A sheet to be kept encrypted until the opening. */
    record SheetKept(ExchangeId exchange, ClubId club, Sheet sheet, String secret) implements PrivateNote {
        /** Says nothing of the sheet: what is printed or logged by mistake stays sealed. */
        @Override
        public String toString() {
            return "SheetKept[exchange=" + exchange + ", club=" + club + "]";
        }

        @Override
        public Kind kind() {
            return Kind.SHEET_KEPT;
        }
    }

    /** The kept ciphertext of a club's sheet is no longer needed. */
    record SheetDropped(ExchangeId exchange, ClubId club) implements PrivateNote {
        @Override
        public Kind kind() {
            return Kind.SHEET_DROPPED;
        }
    }

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

        @Override
        public Kind kind() {
            return Kind.FILM_KEPT;
        }
    }

    /** A club no longer wants its notes of a filmed game. */
    record FilmDropped(ClubId club, String game) implements PrivateNote {
        @Override
        public Kind kind() {
            return Kind.FILM_DROPPED;
        }

        @Override
        public boolean ends() {
            return true;
        }
    }

    /**
     * An earlier game that a club gives for itself alone.
     *
     * @param number a free one among the games of that club
     */
    record GameGiven(ClubId club, int number, PastGame game) implements PrivateNote {
        @Override
        public Kind kind() {
            return Kind.GAME_GIVEN;
        }

        /** Says nothing of the game: what is printed or logged by mistake stays with the club. */
        @Override
        public String toString() {
            return "GameGiven[club=" + club + "]";
        }
    }

    /** A club no longer keeps the earlier game of this number. */
    record GameTakenBack(ClubId club, int number) implements PrivateNote {
        @Override
        public Kind kind() {
            return Kind.GAME_TAKEN_BACK;
        }

        @Override
        public boolean ends() {
            return true;
        }
    }

    /** An earlier game that feeds the ratings. Players are codes of the event or names unknown to it. */
    record PastGame(
            LocalDate date,
            String home1,
            String home2,
            String away1,
            String away2,
            Score score,
            Format format,
            Optional<OfRubber> rubber)
            implements PrivateNote {
        @Override
        public Kind kind() {
            return Kind.PAST_GAME;
        }
    }
}
