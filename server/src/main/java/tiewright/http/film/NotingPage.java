package tiewright.http.film;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.film.FilmGame;
import tiewright.film.KeepFilm;
import tiewright.http.answers.ClubAnswers;
import tiewright.http.visit.Door;
import tiewright.http.visit.Form;
import tiewright.http.visit.NotFound;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.plainfiles.FilmNotes;

/** A captain types what happens while a film runs, and sees after each rally how it stands. Private to the club, as all film notes. */
final class NotingPage implements Page {
    static final String PATH = FilmPage.PATH + "/note";

    private static final String DO = "do";
    private static final String KEEP = "keep";

    /** Where a kept game is noted on. */
    static String at(String game) {
        return PATH + "?game=" + URLEncoder.encode(game, StandardCharsets.UTF_8);
    }

    @Override
    public void at(Routes routes) {
        routes.get(Door.NOTES, PATH, visit -> visit.show(screen(visit, first(visit), Tried.NOTHING)));
        routes.post(Door.NOTES, PATH, visit -> {
            if (visit.form().text(DO).equals(KEEP)) {
                keep(visit);
            } else {
                visit.show(screen(visit, Map.of(), Tried.again(visit.form())));
            }
        });
    }

    /** What stands in the form at first: a game that is kept, a rubber of the event, or nothing. */
    private static Map<String, String> first(Visit visit) {
        Form asked = Form.ofQuery(visit.ctx());
        if (asked.has(NotedGame.GAME)) {
            return kept(visit, asked.text(NotedGame.GAME));
        }
        Optional<Tie> tie = asked.read(NotedGame.TIE, "form.cell", TieId::of).flatMap(visit.event()::tie);
        Optional<RubberNo> rubber = RubberNo.parse(asked.text(NotedGame.RUBBER));
        return tie.isPresent() && rubber.isPresent()
                ? NotedGame.of(visit.event(), visit.club(), tie.get(), rubber.get())
                : NotedGame.nothing(visit.event());
    }

    private static Map<String, String> kept(Visit visit, String code) {
        FilmGame game = visit.ask(ClubAnswers::new).films().stream()
                .map(FilmNotes.Game::film)
                .filter(film -> film.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new NotFound(visit.words().say("page-film.no-game-is-kept-the", "value", code)));
        return NotedGame.of(game)
                .orElseThrow(() -> new NotFound(visit.words().say("page-film.the-notes-of-game-hold", "value", code)));
    }

    private static void keep(Visit visit) {
        Form form = visit.form();
        NotedGame noted = NotedGame.read(form, FilmViews.known(visit.event()));
        noted.faults().forEach(form::fault);
        if (form.isClean() && noted.game().isEmpty()) {
            visit.refuse(form, tried -> screen(visit, Map.of(), tried));
            return;
        }
        visit.note(
                form,
                () -> new KeepFilm(
                        List.of(FilmNotes.written(noted.game().orElseThrow()).keptFor(visit.club())),
                        Optional.of(form.text(NotedGame.WAS))),
                FilmPage.PATH,
                tried -> screen(visit, Map.of(), tried));
    }

    private static Screen screen(Visit visit, Map<String, String> first, Tried tried) {
        return Screen.of(
                "noting",
                visit.words()
                        .say(
                                "page-film.note-a-game-from-film",
                                "club",
                                visit.event().clubName(visit.club())),
                new NotingViews(visit, first, tried).page());
    }
}
