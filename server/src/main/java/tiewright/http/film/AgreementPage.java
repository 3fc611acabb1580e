package tiewright.http.film;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tiewright.film.Agreement;
import tiewright.film.FilmGame;
import tiewright.http.answers.ClubAnswers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.NavLink;
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
import tiewright.plainfiles.FilmNotes;
import tiewright.wording.FilmWords;

/** Whether two who noted the same game saw the same: what they do not agree on is not worth counting. */
final class AgreementPage implements Page {
    static final String PATH = FilmPage.PATH + "/agreement";

    private static final String ONE = "one";
    private static final String OTHER = "other";

    @Override
    public void at(Routes routes) {
        routes.get(Door.NOTES, PATH, visit -> {
            List<FilmGame> games = visit.ask(ClubAnswers::new).films().stream()
                    .map(FilmNotes.Game::film)
                    .toList();
            Form form = Form.ofQuery(visit.ctx());
            Optional<FilmGame> one = game(games, form.text(ONE));
            Optional<FilmGame> other = game(games, form.text(OTHER));
            visit.show(screen(
                    visit,
                    games,
                    form,
                    one.isPresent() && other.isPresent() ? answer(visit, one.get(), other.get()) : List.of()));
        });
    }

    private static Optional<FilmGame> game(List<FilmGame> games, String code) {
        return games.stream().filter(game -> game.code().equals(code)).findFirst();
    }

    private static Screen screen(Visit visit, List<FilmGame> games, Form form, List<WorkView.Section> answer) {
        return Screen.of(
                "asked",
                visit.say(
                        "page-film.do-two-watchers-agree", "club", visit.event().clubName(visit.club())),
                new AskedView(
                        Refusal.NONE,
                        new NavLink(FilmPage.PATH, visit.say("page-film.back-to-the-film-notes"), false),
                        List.of(
                                visit.say("page-film.two-people-note-the-same"),
                                visit.say("page-film.both-notes-count-in-form")),
                        Optional.of(ask(visit, games, form)),
                        true,
                        answer));
    }

    private static AskedView.Ask ask(Visit visit, List<FilmGame> games, Form form) {
        List<Option> options = games.stream()
                .map(game -> Option.of(game.code(), game.code(), false))
                .toList();
        Fields fields = Fields.of("", Tried.NOTHING);
        return new AskedView.Ask(
                PATH,
                List.of(
                        fields.select(
                                ONE,
                                visit.say("page-film.one-persons-notes"),
                                visit.say("page-film.choose-a-game"),
                                form.text(ONE),
                                options),
                        fields.select(
                                OTHER,
                                visit.say("page-film.the-others-notes-of-the"),
                                visit.say("page-film.choose-a-game"),
                                form.text(OTHER),
                                options)),
                Button.main(visit.say("page-film.compare-them")));
    }

    private static List<WorkView.Section> answer(Visit visit, FilmGame one, FilmGame other) {
        FilmWords words = new FilmWords(visit.words());
        if (one.code().equals(other.code())
                || !one.start().players().containsAll(other.start().players())) {
            return List.of(WorkView.Section.of("agreement", "", words.cannotCompare(one, other)));
        }
        Agreement agreement = Agreement.of(one, other);
        List<ReasonTable.Row> rows = new ArrayList<>();
        for (Agreement.Field field : agreement.fields()) {
            rows.add(row(visit, words, field));
        }
        return List.of(WorkView.Section.of("agreement", visit.say("page-film.agreement"), words.compared(agreement))
                .with(new ReasonTable(
                        "agreement",
                        visit.say("page-film.agreement"),
                        List.of(
                                new Column(visit.say("page-film.what"), false),
                                new Column(visit.say("page-film.the-same"), true),
                                new Column(visit.say("page-film.kappa"), true),
                                new Column(visit.say("page-film.what-it-is-worth"), false)),
                        rows,
                        visit.say("page-film.kappa-is-1-where-they"))));
    }

    private static ReasonTable.Row row(Visit visit, FilmWords words, Agreement.Field field) {
        return ReasonTable.Row.of(List.of(
                Cell.of(words.what(field.what())),
                Cell.of(visit.say(
                        "page-film.of",
                        "same",
                        field.kappa().same(),
                        "kappa",
                        field.kappa().of())),
                Cell.of(
                        field.kappa().value().isPresent()
                                ? String.format(
                                        Locale.ROOT,
                                        "%.2f",
                                        field.kappa().value().getAsDouble())
                                : "none"),
                Cell.of(words.worth(field))));
    }
}
