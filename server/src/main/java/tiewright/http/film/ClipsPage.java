package tiewright.http.film;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.film.CardCheck;
import tiewright.film.Clips;
import tiewright.film.Ending;
import tiewright.film.RallyKey;
import tiewright.film.Step;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.pieces.ReasonTable.Cell;
import tiewright.http.pieces.ReasonTable.Column;
import tiewright.http.pieces.Refusal;
import tiewright.http.views.AskedView;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Door;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.wording.FilmWords;

/** Where on film a kind of rally is. For the club's captain alone. */
final class ClipsPage implements Page {
    private static final String PATH = FilmPage.PATH + "/find";
    private static final String PLAYER = "player";
    private static final String ENDING = "ending";
    private static final String NOTED = "noted";

    @Override
    public void at(Routes routes) {
        routes.get(Door.NOTES, PATH, visit -> visit.show(clips(visit)));
    }

    /** The page with the rallies that this player ended so. */
    static String of(PlayerId player, Ending ending) {
        return PATH + "?" + PLAYER + "=" + player + "&" + ENDING + "=" + ending.code();
    }

    private static Screen clips(Visit visit) {
        Form form = Form.ofQuery(visit.ctx());
        Optional<PlayerId> player = player(visit, form);
        Optional<Ending> ending = Ending.parse(form.text(ENDING));
        Optional<RallyKey> noted = RallyKey.parse(form.text(NOTED));
        boolean isAsked = player.isPresent() || ending.isPresent() || noted.isPresent();
        FilmWords words = new FilmWords(visit.words());
        List<CardCheck> games = FilmCountsPage.games(visit);
        return Screen.of(
                "asked",
                visit.say(
                        "page-film.find-rallies-on-film", "club", visit.event().clubName(visit.club())),
                new AskedView(
                        Refusal.NONE,
                        FilmCountsPage.back(visit),
                        List.of(FilmCountsPage.small(visit)),
                        Optional.of(ask(visit, form, games)),
                        true,
                        isAsked ? List.of(found(visit, words, games, new Clips(player, ending, noted))) : List.of()));
    }

    private static Optional<PlayerId> player(Visit visit, Form form) {
        return visit.event().players().stream()
                .map(Player::id)
                .filter(one -> one.code().equals(form.text(PLAYER)))
                .findFirst();
    }

    private static AskedView.Ask ask(Visit visit, Form form, List<CardCheck> games) {
        return new AskedView.Ask(PATH, asked(visit, form, games), Button.main(visit.say("page-film.find-the-rallies")));
    }

    private static List<FormField> asked(Visit visit, Form form, List<CardCheck> games) {
        FilmWords words = new FilmWords(visit.words());
        Fields fields = Fields.of("", Tried.NOTHING);
        return List.of(
                fields.select(
                        PLAYER,
                        visit.say("page-film.who-ended-the-rally"),
                        visit.say("page-film.anybody"),
                        form.text(PLAYER),
                        players(visit, games)),
                fields.select(
                        ENDING,
                        visit.say("page-film.how-it-ended"),
                        visit.say("page-film.in-any-way"),
                        form.text(ENDING),
                        keys(words, true)),
                fields.select(
                        NOTED,
                        visit.say("page-film.what-else-is-noted-of"),
                        visit.say("page-film.anything"),
                        form.text(NOTED),
                        keys(words, false)));
    }

    /** Everybody of these games. */
    private static List<Option> players(Visit visit, List<CardCheck> games) {
        List<PlayerId> seen = games.stream()
                .flatMap(game -> game.game().start().players().stream())
                .distinct()
                .toList();
        return seen.stream()
                .map(one -> Option.of(one.code(), visit.event().name(one), false))
                .toList();
    }

    private static List<Option> keys(FilmWords words, boolean endings) {
        return Arrays.stream(RallyKey.values())
                .filter(key -> key != RallyKey.SERVER && endings == (key.note() == RallyKey.Note.ENDING))
                .map(key -> Option.of(
                        endings ? key.value() : key.code(), endings ? words.ending(key) : words.key(key), false))
                .toList();
    }

    private static WorkView.Section found(Visit visit, FilmWords words, List<CardCheck> games, Clips clips) {
        List<ReasonTable.Row> rows = rows(visit, words, games, clips);
        WorkView.Section section = WorkView.Section.of(
                "found",
                visit.say("page-film.found"),
                rows.size() == 1
                        ? visit.say("page-film.1-rally")
                        : visit.say("page-film.rallies", "rows", rows.size()));
        return rows.isEmpty()
                ? section
                : section.with(new ReasonTable("found", visit.say("page-film.found"), columns(visit), rows, ""));
    }

    private static List<ReasonTable.Row> rows(Visit visit, FilmWords words, List<CardCheck> games, Clips clips) {
        List<ReasonTable.Row> rows = new ArrayList<>();
        for (CardCheck game : games) {
            for (Step step : clips.in(game)) {
                rows.add(ReasonTable.Row.of(List.of(
                        Cell.of(game.game().code()),
                        Cell.of(step.note().detail().filmTime().orElse(visit.say("page-film.not-noted"))),
                        Cell.of(words.rally(step)))));
            }
        }
        return rows;
    }

    private static List<Column> columns(Visit visit) {
        return List.of(
                new Column(visit.say("page-film.game"), false),
                new Column(visit.say("page-film.on-film-at"), true),
                new Column(visit.say("page-film.rally"), false));
    }
}
