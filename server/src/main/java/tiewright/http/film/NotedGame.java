package tiewright.http.film;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.Pair;
import tiewright.event.Refusal;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.film.FilmGame;
import tiewright.film.RallyKeys;
import tiewright.film.Start;
import tiewright.http.visit.Form;
import tiewright.plainfiles.FilmNotes;
import tiewright.scoring.Score;

/**
 * A game as it is typed into the form: the columns of games.csv by their names, who serves first by number, the rallies in keys.
 *
 * @param game as far as it can be read; the rallies before the first one that cannot
 * @param faults each beside its field
 */
record NotedGame(Optional<FilmGame> game, List<Refusal> faults) {
    static final String GAME = "game";
    static final String TIE = "tie";
    static final String RUBBER = "rubber";
    static final String FORMAT = "format";
    static final String FIRST = "first_server";
    static final List<String> PLACES = List.of("right_1", "left_1", "right_2", "left_2");
    static final String CARD_1 = "card_1";
    static final String CARD_2 = "card_2";
    static final String RALLIES = "rallies";
    /** Under which name the game is kept already. */
    static final String WAS = "was";

    static final int MOST_RALLIES = 500;

    static Map<String, String> nothing(VisibleEvent event) {
        return Map.of(FORMAT, event.conditions().scoring().code(), FIRST, "1");
    }

    /** A rubber with the own side first, filled in as far as its sheets are open and its card is in. */
    static Map<String, String> of(VisibleEvent event, ClubId club, Tie tie, RubberNo rubber) {
        Side own = tie.sideOf(club).orElse(Side.HOME);
        Map<String, String> values = new HashMap<>(nothing(event));
        values.putAll(Map.of(
                GAME,
                tie.id() + "-" + rubber,
                TIE,
                tie.id().code(),
                RUBBER,
                rubber.toString(),
                FORMAT,
                (rubber.isDecider()
                                ? event.conditions().deciderScoring()
                                : event.conditions().scoring())
                        .code()));
        Optional.ofNullable(tie.opened().get(rubber)).ifPresent(named -> {
            named.pair(own).ifPresent(pair -> put(values, pair, 0));
            named.pair(own.other()).ifPresent(pair -> put(values, pair, 2));
        });
        card(event, tie, rubber)
                .map(game -> own == Side.HOME ? game : game.swapped())
                .ifPresent(game -> {
                    values.put(CARD_1, Integer.toString(game.home()));
                    values.put(CARD_2, Integer.toString(game.away()));
                });
        return values;
    }

    /** What the card says of a rubber of one game that was played. */
    private static Optional<Score> card(VisibleEvent event, Tie tie, RubberNo rubber) {
        return event.progress(tie).rubbers().stream()
                .filter(score -> score.rubber().equals(rubber)
                        && score.games().size() == 1
                        && !score.how().isWalkover())
                .findFirst()
                .map(score -> score.games().get(0));
    }

    private static void put(Map<String, String> values, Pair pair, int from) {
        values.put(PLACES.get(from), pair.first().code());
        values.put(PLACES.get(from + 1), pair.second().code());
    }

    /** A kept game; empty where its notes hold a word without a key. */
    static Optional<Map<String, String>> of(FilmGame game) {
        Start start = game.start();
        return RallyKeys.write(game.rallies(), start).map(keys -> {
            Map<String, String> values = values(game, keys);
            PLACES.forEach(place ->
                    values.put(place, start.players().get(PLACES.indexOf(place)).code()));
            return values;
        });
    }

    private static Map<String, String> values(FilmGame game, String keys) {
        Start start = game.start();
        return new HashMap<>(Map.of(
                GAME,
                game.code(),
                WAS,
                game.code(),
                TIE,
                game.tie().map(Object::toString).orElse(""),
                RUBBER,
                game.rubber().map(RubberNo::toString).orElse(""),
                FORMAT,
                start.format().code(),
                RALLIES,
                keys,
                FIRST,
                Integer.toString(start.players().indexOf(start.firstServer()) + 1),
                CARD_1,
                game.card().map(card -> Integer.toString(card.home())).orElse(""),
                CARD_2,
                game.card().map(card -> Integer.toString(card.away())).orElse("")));
    }

    static NotedGame read(Form form, FilmNotes.Known event) {
        List<Refusal> faults = new ArrayList<>();
        List<String> needed = new ArrayList<>(List.of(GAME, FORMAT, FIRST));
        needed.addAll(PLACES);
        needed.stream()
                .filter(field -> !form.has(field))
                .forEach(field -> faults.add(Refusal.of("form.missing").at(field)));
        if (!faults.isEmpty()) {
            return new NotedGame(Optional.empty(), faults);
        }
        FilmNotes about = FilmNotes.ofCells(column -> column.equals(FIRST) ? first(form) : form.text(column), event);
        about.faults()
                .forEach(fault -> faults.add(
                        Refusal.of("form.cell").with("reason", fault.reason()).at(fault.column())));
        return faults.isEmpty() ? rallies(form, about.games().get(0).film()) : new NotedGame(Optional.empty(), faults);
    }

    /** The code of whoever stands where the first serve comes from. */
    private static String first(Form form) {
        int place = "1234".indexOf(form.text(FIRST));
        return place < 0 || form.text(FIRST).length() != 1 ? form.text(FIRST) : form.text(PLACES.get(place));
    }

    private static NotedGame rallies(Form form, FilmGame about) {
        RallyKeys.Typed typed = RallyKeys.read(form.text(RALLIES), about.start());
        List<Refusal> faults = new ArrayList<>(
                typed.faults().stream().map(fault -> fault.at(RALLIES)).toList());
        if (typed.rallies().size() > MOST_RALLIES) {
            faults.add(Refusal.of("form.rallies-too-many")
                    .with("most", MOST_RALLIES)
                    .with("typed", typed.rallies().size())
                    .at(RALLIES));
        }
        return new NotedGame(
                Optional.of(new FilmGame(
                        about.code(), about.tie(), about.rubber(), about.start(), about.card(), typed.upToFault())),
                faults);
    }
}
