package tiewright.http.film;

import java.util.Optional;
import tiewright.film.DropFilm;
import tiewright.film.KeepFilm;
import tiewright.http.visit.Door;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.plainfiles.FilmNotes;
import tiewright.plainfiles.PlainFile;

/** A captain gives what was noted from film, and takes it back. Private to the club: in no other page, plain export or log. */
final class FilmPage implements Page {
    static final String PATH = "/captain/film";

    @Override
    public void at(Routes routes) {
        routes.get(Door.NOTES, PATH, visit -> visit.show(screen(visit, GivenFilm.NOTHING, Tried.NOTHING)));
        routes.postInParts(Door.NOTES, PATH, FilmPage::give);
        routes.post(Door.NOTES, PATH + "/delete", FilmPage::delete);
        routes.get(Door.NOTES, PATH + "/games.csv", visit -> send(visit, PlainFile.GAMES));
        routes.get(Door.NOTES, PATH + "/rallies.csv", visit -> send(visit, PlainFile.RALLIES));
    }

    /** Everything that was given is kept, or nothing. */
    private static void give(Visit visit) {
        Form form = visit.form();
        GivenFilm given = GivenFilm.of(visit.ctx(), form);
        FilmNotes notes = given.read(FilmViews.known(visit.event()));
        given.refusals(notes.faults()).forEach(form::fault);
        visit.note(
                form,
                () -> new KeepFilm(
                        notes.games().stream()
                                .map(game -> game.keptFor(visit.club()))
                                .toList(),
                        Optional.empty()),
                PATH,
                tried -> screen(visit, given.with(notes.faults()), tried));
    }

    /** One game by its code; all of them only when that was ticked. */
    private static void delete(Visit visit) {
        Form form = visit.form();
        Optional<String> game = form.isTicked(FilmViews.ALL)
                ? Optional.empty()
                : form.must(form.wasAsked(FilmViews.GAME) ? FilmViews.GAME : FilmViews.ALL, form.maybe(FilmViews.GAME));
        visit.note(form, () -> new DropFilm(game), PATH, tried -> screen(visit, GivenFilm.NOTHING, tried));
    }

    private static void send(Visit visit, PlainFile file) {
        visit.ctx()
                .contentType("text/csv; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"" + file.fileName() + "\"")
                .result(FilmNotes.file(file, visit.hall().ledger().filmsOf(visit.club())));
    }

    private static Screen screen(Visit visit, GivenFilm given, Tried tried) {
        return Screen.of(
                "film",
                visit.words().say("page-film.film-notes", "club", visit.event().clubName(visit.club())),
                FilmViews.of(visit, given, tried));
    }
}
