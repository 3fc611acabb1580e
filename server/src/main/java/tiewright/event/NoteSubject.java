package tiewright.event;

import java.util.List;
import java.util.Optional;
import tiewright.event.PrivateNote.ChemistryJudged;
import tiewright.event.PrivateNote.FilmDropped;
import tiewright.event.PrivateNote.FilmKept;
import tiewright.event.PrivateNote.Forecast;
import tiewright.event.PrivateNote.FormJudged;
import tiewright.event.PrivateNote.GameGiven;
import tiewright.event.PrivateNote.GameTakenBack;
import tiewright.event.PrivateNote.HurtMarked;
import tiewright.event.PrivateNote.PlayerForgotten;
import tiewright.event.PrivateNote.PlayerWished;
import tiewright.event.PrivateNote.RubbersPromised;
import tiewright.event.PrivateNote.TieWish;

/**
 * The one thing that a club's note is about: a later note of the same subject takes the place of the earlier. Two captains who
 * note different subjects are not in each other's way.
 *
 * @param what which one of its kind: codes, with a comma between where two are needed
 * @param players whom it is about, two at most
 */
public record NoteSubject(Kind kind, String what, List<PlayerId> players) {
    public NoteSubject {
        players = List.copyOf(players);
    }

    public enum Kind {
        FORM,
        PAIR,
        WISH,
        PROMISE,
        HALF_LIFE,
        HURT,
        FILM,
        GAME,
        FORECAST,
        PLAYER
    }

    /** The subject of a note; empty where it is no club's to note. */
    public static Optional<NoteSubject> of(PrivateNote note) {
        return switch (note.kind()) {
            case HURT_MARKED -> about(Kind.HURT, ((HurtMarked) note).player());
            case FORM_JUDGED -> about(Kind.FORM, ((FormJudged) note).player());
            case CHEMISTRY_JUDGED -> pair(((ChemistryJudged) note).pair());
            case TIE_WISH -> called(Kind.WISH, ((TieWish) note).tie().code());
            case PLAYER_WISHED -> wish((PlayerWished) note);
            case RUBBERS_PROMISED -> about(Kind.PROMISE, ((RubbersPromised) note).player());
            case HALF_LIFE_CHOSEN -> called(Kind.HALF_LIFE, "");
            case FORECAST -> forecast((Forecast) note);
            case PLAYER_FORGOTTEN ->
                called(Kind.PLAYER, ((PlayerForgotten) note).player().code());
            case FILM_KEPT -> called(Kind.FILM, ((FilmKept) note).game());
            case FILM_DROPPED -> called(Kind.FILM, ((FilmDropped) note).game());
            case GAME_GIVEN -> called(Kind.GAME, Integer.toString(((GameGiven) note).number()));
            case GAME_TAKEN_BACK -> called(Kind.GAME, Integer.toString(((GameTakenBack) note).number()));
            case PERSON_NAMED, EVERYTHING_ERASED, SHEET_KEPT, SHEET_DROPPED, PAST_GAME -> Optional.empty();
        };
    }

    /** Whether a change of the other subject bears on this one: the same, or one of its players was forgotten. */
    public boolean isTouchedBy(NoteSubject changed) {
        return changed.kind == Kind.PLAYER
                ? players.stream().anyMatch(player -> player.code().equals(changed.what))
                : kind == changed.kind && what.equals(changed.what);
    }

    private static Optional<NoteSubject> about(Kind kind, PlayerId player) {
        return Optional.of(new NoteSubject(kind, player.code(), List.of(player)));
    }

    private static Optional<NoteSubject> called(Kind kind, String what) {
        return Optional.of(new NoteSubject(kind, what, List.of()));
    }

    private static Optional<NoteSubject> pair(Pair pair) {
        return Optional.of(new NoteSubject(Kind.PAIR, pair.first() + "," + pair.second(), pair.players()));
    }

    private static Optional<NoteSubject> wish(PlayerWished wish) {
        return Optional.of(new NoteSubject(Kind.WISH, wish.tie() + "," + wish.player(), List.of(wish.player())));
    }

    private static Optional<NoteSubject> forecast(Forecast forecast) {
        return called(
                Kind.FORECAST,
                forecast.tie() + forecast.part().map(part -> "," + part).orElse(""));
    }
}
