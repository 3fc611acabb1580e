package tiewright.http.film;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tiewright.event.Pair;
import tiewright.event.Player;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.ClubAnswers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.ChoiceList;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Option;
import tiewright.http.views.ActionForm;
import tiewright.http.views.FilmView;
import tiewright.http.visit.Cautions;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.plainfiles.FilmNotes;
import tiewright.rating.FilmedGame;
import tiewright.wording.FilmWords;
import tiewright.wording.Words;

/** Makes the page of film notes. */
final class FilmViews {
    static final String GAME = "game";
    static final String ALL = "all";

    private FilmViews() {}

    static List<String> cautions(Words words) {
        return Stream.of("tell-who-is-filmed", "small-samples", "for-your-club-alone")
                .map(code -> words.say("page-film.caution." + code))
                .toList();
    }

    /** What film notes may name: players and ties of the event. */
    static FilmNotes.Known known(VisibleEvent event) {
        return new FilmNotes.Known(
                event.players().stream().map(Player::id).toList(),
                event.ties().stream().map(Tie::id).toList(),
                event.conditions());
    }

    static FilmView of(Visit visit, GivenFilm given, Tried tried) {
        VisibleEvent event = visit.event();
        List<FilmNotes.Game> games = visit.ask(ClubAnswers::new).films();
        return new FilmView(
                tried.refusal(),
                Cautions.with(cautions(visit.words()), event),
                kept(visit.words(), games),
                IntStream.range(0, games.size())
                        .mapToObj(i -> game(visit, i, games.get(i)))
                        .toList(),
                games.isEmpty() ? List.of() : List.of(all(visit.words(), tried)),
                given.fields(visit.words()),
                FilmPage.PATH,
                Button.main(visit.say("page-film.keep-these-film-notes")),
                codes(event));
    }

    private static String kept(Words words, List<FilmNotes.Game> games) {
        int rallies =
                games.stream().mapToInt(game -> game.film().counted().rallies()).sum();
        return games.isEmpty()
                ? words.say("page-film.nothing-kept-yet")
                : words.say("page-film.kept", "games", games.size(), "rallies", rallies);
    }

    private static FilmView.Game game(Visit visit, int number, FilmNotes.Game game) {
        List<String> lines = lines(visit, game);
        boolean hasKeys = NotedGame.of(game.film()).isPresent();
        if (!hasKeys) {
            lines.add(visit.say("page-film.its-notes-hold-words-for"));
        }
        List<NavLink> goOn = hasKeys
                ? List.of(new NavLink(
                        NotingPage.at(game.code()),
                        visit.say("page-film.go-on-noting-game", "game", game.code()),
                        false))
                : List.of();
        return new FilmView.Game(title(visit, game), lines, goOn, remove(visit.words(), number, game.code()));
    }

    private static List<String> lines(Visit visit, FilmNotes.Game game) {
        VisibleEvent event = visit.event();
        FilmedGame counted = game.film().counted();
        List<String> lines = new ArrayList<>();
        lines.add(visit.say(
                "page-film.v",
                "one",
                pair(event, counted.one()),
                "two",
                pair(event, counted.two()),
                "format",
                counted.format().code()));
        lines.add(won(visit, game));
        List<String> conflicts = new FilmWords(visit.words())
                .conflicts(visit.ask(ClubAnswers::new).checked(game.film()));
        lines.addAll(conflicts);
        if (!conflicts.isEmpty()) {
            lines.add(visit.say("page-film.a-rally-is-missing-noted"));
        }
        return lines;
    }

    private static String won(Visit visit, FilmNotes.Game game) {
        FilmedGame counted = game.film().counted();
        return visit.say(
                "page-film.on-film-that-somebody-won",
                "rallies",
                counted.rallies(),
                "score",
                game.film().replay().score());
    }

    /** Its code, and the rubber of this event that it was. */
    private static String title(Visit visit, FilmNotes.Game game) {
        FilmedGame counted = game.film().counted();
        return visit.say(
                "page-film.game-2",
                "game",
                game.code(),
                "of",
                counted.tie().isEmpty()
                        ? "none"
                        : counted.rubber().isEmpty()
                                ? "tie"
                                : counted.rubber().get().isDecider() ? "decider" : "rubber",
                "tie",
                counted.tie().map(Object::toString).orElse(""),
                "rubber",
                counted.rubber().map(Object::toString).orElse(""));
    }

    private static String pair(VisibleEvent event, Pair pair) {
        return Words.say(
                event, "page-film.and", "first", event.name(pair.first()), "second", event.name(pair.second()));
    }

    private static ActionForm remove(Words words, int number, String game) {
        return ActionForm.of(
                        "delete-" + number,
                        FilmPage.PATH + "/delete",
                        "",
                        Button.other(words.say("page-film.delete-game", "game", game)))
                .sending(GAME, game);
    }

    private static ActionForm all(Words words, Tried tried) {
        return ActionForm.of(
                        "delete-all",
                        FilmPage.PATH + "/delete",
                        words.say("page-film.delete-every-game"),
                        Button.stop(words.say("page-film.delete-all-film-notes")))
                .asking(new ChoiceList(
                        ALL,
                        words.say("page-film.deleted-notes-are-gone"),
                        "",
                        tried.error(ALL),
                        true,
                        List.of(Option.of("yes", words.say("page-film.delete-the-notes-of-every-game"), false))));
    }

    private static List<String> codes(VisibleEvent event) {
        List<String> lines = new ArrayList<>(players(event));
        lines.add(Words.say(
                event,
                "page-film.ties",
                "ties",
                event.ties().stream().map(tie -> tie.id().code()).collect(Collectors.joining(", "))));
        return lines;
    }

    /** The codes that files may name players by, a club a line. */
    static List<String> players(VisibleEvent event) {
        return event.clubs().stream()
                .map(club -> club.name() + ": "
                        + event.squad(club.id()).stream()
                                .map(player -> player.id() + " " + event.name(player.id()))
                                .collect(Collectors.joining(", ")))
                .toList();
    }
}
