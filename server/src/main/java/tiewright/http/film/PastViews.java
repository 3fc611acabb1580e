package tiewright.http.film;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tiewright.event.Player;
import tiewright.event.PrivateNote.PastGame;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.ClubAnswers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.ChoiceList;
import tiewright.http.pieces.GivenFile;
import tiewright.http.pieces.Option;
import tiewright.http.views.ActionForm;
import tiewright.http.views.PastView;
import tiewright.http.visit.Cautions;
import tiewright.http.visit.Tried;
import tiewright.wording.Words;

/** Makes the page of a club's own earlier games. */
final class PastViews {
    static final String GAME = "game";
    static final String ALL = "all";
    /** Sent with the form that takes all back, ticked or not. */
    static final String EVERY = "every";

    private static final String BACK = PastPage.PATH + "/take-back";

    private final VisibleEvent event;
    private final List<ClubAnswers.OwnGame> games;

    PastViews(VisibleEvent event, List<ClubAnswers.OwnGame> games) {
        this.event = event;
        this.games = games;
    }

    PastView page(ActionForm one, GivenFile field, Tried tried) {
        return new PastView(
                tried.refusal(),
                Cautions.with(cautions(), event),
                kept(),
                one,
                games.isEmpty() ? List.of() : List.of(some(tried), all(tried)),
                new PastView.Many(
                        field,
                        PastPage.PATH,
                        Button.other(Words.of(event).say("page-film.keep-these-games")),
                        FilmViews.players(event)));
    }

    private String kept() {
        if (games.isEmpty()) {
            return Words.of(event).say("page-film.no-earlier-games-of-your");
        }
        Words words = Words.of(event);
        return Stream.of(
                        words.say("page-film.one-kept", "count", games.size()),
                        words.say("page-film.earlier-rest-on", "count", games.size()),
                        words.say(
                                "page-film.known-already",
                                "known",
                                games.stream()
                                        .filter(ClubAnswers.OwnGame::known)
                                        .count()))
                .filter(sentence -> !sentence.isEmpty())
                .collect(Collectors.joining(" "));
    }

    private ActionForm some(Tried tried) {
        List<Option> options = games.stream()
                .map(own -> new Option(
                        Integer.toString(own.kept().number()),
                        line(own.kept().game()),
                        own.known() ? Words.of(event).say("page-film.on-the-list-for-everybody") : "",
                        tried.isChosen(GAME, Integer.toString(own.kept().number()), false),
                        false))
                .toList();
        return ActionForm.of(
                        "some", BACK, "", Button.other(Words.of(event).say("page-film.take-back-the-ticked-games")))
                .asking(new ChoiceList(
                        GAME, Words.of(event).say("page-film.by-day"), "", tried.error(GAME), true, options));
    }

    private ActionForm all(Tried tried) {
        Words words = Words.of(event);
        return ActionForm.of("every", BACK, "", Button.stop(words.say("page-film.take-back-every")))
                .sending(EVERY, "yes")
                .asking(new ChoiceList(
                        ALL,
                        words.say("page-film.given-again"),
                        "",
                        tried.error(ALL),
                        true,
                        List.of(Option.of("yes", words.say("page-film.every-game"), false))));
    }

    private String line(PastGame game) {
        return Words.of(event)
                .say(
                        "page-film.and-v-and",
                        "date",
                        game.date(),
                        "home1",
                        name(game.home1()),
                        "home2",
                        name(game.home2()),
                        "away1",
                        name(game.away1()),
                        "away2",
                        name(game.away2()),
                        "score",
                        game.score(),
                        "format",
                        game.format().code());
    }

    /** Of a player of the event the name; whoever is a stranger to it is called as the file does. */
    private String name(String code) {
        return event.players().stream()
                .map(Player::id)
                .filter(id -> id.code().equals(code))
                .map(event::name)
                .findFirst()
                .orElse(code);
    }

    private List<String> cautions() {
        return List.of(
                Words.of(event).say("page-film.small-samples-describes-past-results"),
                Words.of(event).say("page-film.for-your-club-alone-no"));
    }
}
