package tiewright.event;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import tiewright.event.PrivateNote.FilmKept;
import tiewright.event.PrivateNote.GameGiven;
import tiewright.event.PrivateNote.HurtMarked;
import tiewright.event.PrivateNote.PlayerWished;
import tiewright.event.PrivateNote.TieWish;

/**
 * Everything that one club has noted so far, as a private decision sees it.
 *
 * @param films in the order of the games' codes
 * @param games by day
 * @param hurt who of the squad is marked as hurt or ill
 */
public record Noted(ClubId club, ClubNotes notes, List<FilmKept> films, List<KeptGame> games, Set<PlayerId> hurt) {
    public Noted {
        films = List.copyOf(films);
        games = List.copyOf(games);
        hurt = Set.copyOf(hurt);
    }

    /** What stands where this note would be written; empty where nothing does. */
    public Optional<PrivateNote> instead(PrivateNote note) {
        return switch (note.kind()) {
            case FORM_JUDGED -> of(notes.forms().get(((PrivateNote.FormJudged) note).player()));
            case CHEMISTRY_JUDGED -> of(notes.chemistry().get(((PrivateNote.ChemistryJudged) note).pair()));
            case TIE_WISH -> of(notes.tieWishes().get(((TieWish) note).tie()));
            case PLAYER_WISHED -> wish((PlayerWished) note).map(wish -> wish);
            case RUBBERS_PROMISED -> of(notes.promises().get(((PrivateNote.RubbersPromised) note).player()));
            case HALF_LIFE_CHOSEN ->
                notes.halfLife().isPresent()
                        ? Optional.of(new PrivateNote.HalfLifeChosen(club, notes.halfLife()))
                        : Optional.empty();
            case HURT_MARKED ->
                Optional.of(((HurtMarked) note).player())
                        .filter(hurt::contains)
                        .map(player -> new HurtMarked(player, true));
            case FILM_KEPT -> film(((FilmKept) note).game());
            case FILM_DROPPED -> film(((PrivateNote.FilmDropped) note).game());
            case GAME_GIVEN -> game(((GameGiven) note).number());
            case GAME_TAKEN_BACK -> game(((PrivateNote.GameTakenBack) note).number());
            case PERSON_NAMED, FORECAST, PLAYER_FORGOTTEN, EVERYTHING_ERASED, SHEET_KEPT, SHEET_DROPPED, PAST_GAME ->
                Optional.empty();
        };
    }

    private static Optional<PrivateNote> of(@org.jspecify.annotations.Nullable PrivateNote note) {
        return Optional.ofNullable(note);
    }

    private Optional<PlayerWished> wish(PlayerWished note) {
        return Optional.ofNullable(notes.tieWishes().get(note.tie()))
                .flatMap(wishes -> wishes.of(note.player()))
                .map(wish -> new PlayerWished(note.tie(), club, note.player(), Optional.of(wish)));
    }

    private Optional<PrivateNote> film(String code) {
        return films.stream()
                .filter(film -> film.game().equals(code))
                .<PrivateNote>map(film -> film)
                .findFirst();
    }

    private Optional<PrivateNote> game(int number) {
        return games.stream()
                .filter(kept -> kept.number() == number)
                .<PrivateNote>map(kept -> new GameGiven(club, number, kept.game()))
                .findFirst();
    }
}
