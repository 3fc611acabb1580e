package tiewright.http.film;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import tiewright.event.ClubId;
import tiewright.event.PrivateNote;
import tiewright.event.PrivateNote.FilmDropped;
import tiewright.event.PrivateNote.FilmKept;
import tiewright.event.Refusal;
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

    private static final int MOST_GAMES = 200;

    @Override
    public void at(Routes routes) {
        routes.get(Door.CAPTAIN, PATH, visit -> visit.show(screen(visit, GivenFilm.NOTHING, Tried.NOTHING)));
        routes.postInParts(Door.CAPTAIN, PATH, FilmPage::give);
        routes.post(Door.CAPTAIN, PATH + "/delete", FilmPage::delete);
        routes.get(Door.CAPTAIN, PATH + "/games.csv", visit -> send(visit, PlainFile.GAMES));
        routes.get(Door.CAPTAIN, PATH + "/rallies.csv", visit -> send(visit, PlainFile.RALLIES));
    }

    /** Everything that was given is kept, or nothing. */
    private static void give(Visit visit) {
        Form form = visit.form();
        GivenFilm given = GivenFilm.of(visit.ctx(), form);
        FilmNotes notes = given.read(FilmViews.known(visit.event()));
        given.refusals(notes.faults()).forEach(form::fault);
        tooMany(visit, notes.games().stream().map(FilmNotes.Game::code).toList())
                .map(refusal -> refusal.at(PlainFile.GAMES.fileName()))
                .ifPresent(form::fault);
        if (!form.isClean()) {
            visit.refuse(form, tried -> screen(visit, given.with(notes.faults()), tried));
            return;
        }
        visit.hall()
                .ledger()
                .note(
                        visit.club(),
                        notes.games().stream()
                                .map(game -> game.keptFor(visit.club()))
                                .toList());
        visit.go(PATH);
    }

    /** The same where one game is given alone: it does not take the place of another one by mistake. */
    static Optional<Refusal> mayNotKeep(Visit visit, String game, String was) {
        return !game.equals(was) && kept(visit).contains(game)
                ? Optional.of(Refusal.of("form.film-there").with("game", game))
                : tooMany(visit, List.of(game));
    }

    private static Optional<Refusal> tooMany(Visit visit, List<String> more) {
        Set<String> codes = kept(visit);
        codes.addAll(more);
        return codes.size() > MOST_GAMES
                ? Optional.of(Refusal.of("form.film-too-many").with("most", MOST_GAMES))
                : Optional.empty();
    }

    private static Set<String> kept(Visit visit) {
        return visit.hall().ledger().filmsOf(visit.club()).stream()
                .map(FilmKept::game)
                .collect(Collectors.toSet());
    }

    /** One game by its code; all of them only when that was ticked. */
    private static void delete(Visit visit) {
        Form form = visit.form();
        ClubId club = visit.club();
        List<PrivateNote> dropped = new ArrayList<>();
        if (form.isTicked(FilmViews.ALL)) {
            visit.hall().ledger().filmsOf(club).forEach(film -> dropped.add(new FilmDropped(club, film.game())));
        } else {
            form.must(form.wasAsked(FilmViews.GAME) ? FilmViews.GAME : FilmViews.ALL, form.maybe(FilmViews.GAME))
                    .ifPresent(game -> dropped.add(new FilmDropped(club, game)));
        }
        if (!form.isClean()) {
            visit.refuse(form, tried -> screen(visit, GivenFilm.NOTHING, tried));
            return;
        }
        visit.hall().ledger().note(club, dropped);
        visit.go(PATH);
    }

    private static void send(Visit visit, PlainFile file) {
        visit.ctx()
                .contentType("text/csv; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"" + file.fileName() + "\"")
                .result(FilmNotes.file(file, visit.hall().ledger().filmsOf(visit.club())));
    }

    private static Screen screen(Visit visit, GivenFilm given, Tried tried) {
        return Screen.of(
                "film", visit.event().clubName(visit.club()) + ": film notes", FilmViews.of(visit, given, tried));
    }
}
