package tiewright.http.film;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tiewright.event.Pair;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.film.Rota;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.ChoiceList;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.pieces.ReasonTable.Cell;
import tiewright.http.pieces.ReasonTable.Column;
import tiewright.http.views.AskedView;
import tiewright.http.views.WorkView;
import tiewright.http.visit.Door;
import tiewright.http.visit.Form;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.wording.FilmWords;

/** A practice rota for those of the squad who come. */
final class RotaPage implements Page {
    static final String PATH = "/captain/rota";

    private static final String WHO = "who";

    @Override
    public void at(Routes routes) {
        routes.get(Door.NOTES, PATH, visit -> {
            Form form = Form.ofQuery(visit.ctx());
            List<PlayerId> who = who(visit, form);
            if (who.size() < Rota.LEAST || who.size() > Rota.MOST) {
                form.fault(Refusal.of("film.rota-number")
                        .with("least", Rota.LEAST)
                        .with("most", Rota.MOST)
                        .with("players", who.size())
                        .at(WHO));
                visit.refuse(form, tried -> screen(visit, who, tried));
            } else {
                visit.show(screen(visit, who, Tried.NOTHING));
            }
        });
    }

    /** Those who are ticked, all of the squad at first; in the order of the squad. */
    private static List<PlayerId> who(Visit visit, Form form) {
        List<String> ticked = form.texts(WHO);
        return visit.event().squad(visit.club()).stream()
                .map(Player::id)
                .filter(player -> ticked.isEmpty() || ticked.contains(player.code()))
                .toList();
    }

    private static Screen screen(Visit visit, List<PlayerId> who, Tried tried) {
        return Screen.of(
                "asked",
                visit.say("page-film.practice-rota", "club", visit.event().clubName(visit.club())),
                new AskedView(
                        tried.refusal(),
                        new NavLink(FilmPage.PATH, visit.say("page-film.back-to-the-film-notes"), false),
                        List.of(visit.say("page-film.who-always-plays-with-the")),
                        Optional.of(new AskedView.Ask(
                                PATH,
                                List.of(asked(visit, who, tried)),
                                Button.main(visit.say("page-film.make-the-rota")))),
                        false,
                        Rota.of(who)
                                .map(rota -> List.of(rounds(visit, rota, who)))
                                .orElse(List.of())));
    }

    private static ChoiceList asked(Visit visit, List<PlayerId> who, Tried tried) {
        return new ChoiceList(
                WHO,
                visit.say("page-film.who-comes-to-practice"),
                "",
                tried.error(WHO),
                true,
                visit.event().squad(visit.club()).stream()
                        .map(player -> Option.of(
                                player.id().code(), visit.event().name(player.id()), who.contains(player.id())))
                        .toList());
    }

    private static WorkView.Section rounds(Visit visit, Rota rota, List<PlayerId> who) {
        Map<Integer, List<Rota.Game>> rounds = rota.games().stream()
                .collect(Collectors.groupingBy(Rota.Game::round, LinkedHashMap::new, Collectors.toList()));
        boolean somebodyRests = rounds.values().stream()
                .anyMatch(games -> !resting(visit, games, who).isEmpty());
        List<Column> columns = columns(visit, somebodyRests);
        List<ReasonTable.Row> rows = new ArrayList<>();
        rounds.forEach((round, games) -> {
            for (Rota.Game game : games) {
                List<Cell> cells = new ArrayList<>(
                        Stream.of(round + ", " + game.court(), said(visit, game.one()), said(visit, game.two()))
                                .map(Cell::of)
                                .toList());
                if (somebodyRests) {
                    cells.add(Cell.of(game.court() == 1 ? resting(visit, games, who) : ""));
                }
                rows.add(ReasonTable.Row.of(cells));
            }
        });
        return WorkView.Section.of(
                        "rota", visit.say("page-film.rota"), new FilmWords(visit.words()).evenness(rota, who.size()))
                .with(new ReasonTable("rota", visit.say("page-film.rota"), columns, rows, ""));
    }

    private static List<Column> columns(Visit visit, boolean somebodyRests) {
        List<Column> columns = new ArrayList<>(List.of(
                new Column(visit.say("page-film.round-court"), false),
                new Column(visit.say("page-film.pair"), false),
                new Column(visit.say("page-film.against"), false)));
        if (somebodyRests) {
            columns.add(new Column(visit.say("page-film.rests"), false));
        }
        return columns;
    }

    private static String said(Visit visit, Pair pair) {
        return visit.words().said(pair);
    }

    private static String resting(Visit visit, List<Rota.Game> games, List<PlayerId> who) {
        return who.stream()
                .filter(player -> games.stream()
                        .noneMatch(game -> game.one().has(player) || game.two().has(player)))
                .map(visit.event()::name)
                .collect(Collectors.joining(", "));
    }
}
