package tiewright.http.film;

import io.javalin.http.Context;
import java.util.List;
import java.util.stream.Stream;
import tiewright.event.Refusal;
import tiewright.http.pieces.GivenFile;
import tiewright.http.visit.Form;
import tiewright.plainfiles.FilmNotes;
import tiewright.plainfiles.FolderFault;
import tiewright.plainfiles.PlainFile;
import tiewright.wording.Words;

/**
 * The two files of film notes as they were given.
 *
 * @param faults what is wrong with them, as far as that is known
 */
record GivenFilm(GivenText games, GivenText rallies, List<FolderFault> faults) {
    static final GivenFilm NOTHING =
            new GivenFilm(GivenText.nothing(PlainFile.GAMES), GivenText.nothing(PlainFile.RALLIES), List.of());

    static GivenFilm of(Context ctx, Form form) {
        return new GivenFilm(
                GivenText.of(ctx, form, PlainFile.GAMES), GivenText.of(ctx, form, PlainFile.RALLIES), List.of());
    }

    /** The games, or what is wrong in either file. */
    FilmNotes read(FilmNotes.Known event) {
        FilmNotes notes = FilmNotes.read(games.text(), rallies.text(), event);
        return new FilmNotes(
                notes.games(),
                both().flatMap(file -> file.faults(notes.faults()).stream()).toList());
    }

    GivenFilm with(List<FolderFault> found) {
        return new GivenFilm(games, rallies, List.copyOf(found));
    }

    List<Refusal> refusals(List<FolderFault> found) {
        return both().flatMap(file -> file.refusal(found).stream()).toList();
    }

    List<GivenFile> fields(Words words) {
        return both().map(file -> file.field(faults, words)).toList();
    }

    private Stream<GivenText> both() {
        return Stream.of(games, rallies);
    }
}
