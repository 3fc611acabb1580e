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
        Optional<PlayerId> player = visit.event().players().stream()
                .map(Player::id)
                .filter(one -> one.code().equals(form.text(PLAYER)))
                .findFirst();
        Optional<Ending> ending = Ending.parse(form.text(ENDING));
        Optional<RallyKey> noted = RallyKey.parse(form.text(NOTED));
        boolean isAsked = player.isPresent() || ending.isPresent() || noted.isPresent();
        FilmWords words = new FilmWords(visit.words());
        List<CardCheck> games = FilmCountsPage.games(visit);
        List<PlayerId> seen = games.stream()
                .flatMap(game -> game.game().start().players().stream())
                .distinct()
                .toList();
        Fields fields = Fields.of("", Tried.NOTHING);
        AskedView.Ask ask = new AskedView.Ask(
                PATH,
                List.of(
                        fields.select(
                                PLAYER,
                                visit.words().say("page-film.who-ended-the-rally"),
                                visit.words().say("page-film.anybody"),
                                form.text(PLAYER),
                                seen.stream()
                                        .map(one -> Option.of(
                                                one.code(), visit.event().name(one), false))
                                        .toList()),
                        fields.select(
                                ENDING,
                                visit.words().say("page-film.how-it-ended"),
                                visit.words().say("page-film.in-any-way"),
                                form.text(ENDING),
                                keys(words, true)),
                        fields.select(
                                NOTED,
                                visit.words().say("page-film.what-else-is-noted-of"),
                                visit.words().say("page-film.anything"),
                                form.text(NOTED),
                                keys(words, false))),
                Button.main(visit.words().say("page-film.find-the-rallies")));
        return Screen.of(
                "asked",
                visit.words()
                        .say(
                                "page-film.find-rallies-on-film",
                                "club",
                                visit.event().clubName(visit.club())),
                new AskedView(
                        Refusal.NONE,
                        FilmCountsPage.back(visit),
                        List.of(FilmCountsPage.small(visit)),
                        Optional.of(ask),
                        isAsked ? visit.words().say("page-film.show-the-rallies") : "",
                        !isAsked,
                        isAsked ? List.of(found(visit, words, games, new Clips(player, ending, noted))) : List.of()));
    }

    private static List<Option> keys(FilmWords words, boolean endings) {
        return Arrays.stream(RallyKey.values())
                .filter(key -> key != RallyKey.SERVER && endings == (key.note() == RallyKey.Note.ENDING))
                .map(key -> Option.of(
                        endings ? key.value() : key.code(), endings ? words.ending(key) : words.key(key), false))
                .toList();
    }

    private static WorkView.Section found(Visit visit, FilmWords words, List<CardCheck> games, Clips clips) {
        List<ReasonTable.Row> rows = new ArrayList<>();
        for (CardCheck game : games) {
            for (Step step : clips.in(game)) {
                rows.add(ReasonTable.Row.of(List.of(
                        Cell.of(game.game().code()),
                        Cell.of(step.note()
                                .detail()
                                .filmTime()
                                .orElse(visit.words().say("page-film.not-noted"))),
                        Cell.of(words.rally(step)))));
            }
        }
        WorkView.Section section = WorkView.Section.of(
                "found",
                visit.words().say("page-film.found"),
                rows.size() == 1
                        ? visit.words().say("page-film.1-rally")
                        : visit.words().say("page-film.rallies", "rows", rows.size()));
        return rows.isEmpty()
                ? section
                : section.with(new ReasonTable(
                        "found",
                        visit.words().say("page-film.found"),
                        List.of(
                                new Column(visit.words().say("page-film.game"), false),
                                new Column(visit.words().say("page-film.on-film-at"), true),
                                new Column(visit.words().say("page-film.rally"), false)),
                        rows,
                        ""));
    }
}
