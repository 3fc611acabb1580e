package tiewright.http.film;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import tiewright.event.Pair;
import tiewright.event.Player;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.HiddenField;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.TextField;
import tiewright.http.views.NotingView;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.wording.Words;

/** Makes the page on which a game is noted. */
final class NotingViews {
    private static final String NAME = "noting";
    private static final Map<String, String> PLACE_WORDS = Map.of(
            "right_1",
            "page-film.1-ours-on-the-right",
            "left_1",
            "page-film.2-ours-on-the-left",
            "right_2",
            "page-film.3-theirs-on-their-right",
            "left_2",
            "page-film.4-theirs-on-their-left");
    private final Visit visit;
    private final VisibleEvent event;
    private final Map<String, String> first;
    private final Tried tried;

    NotingViews(Visit visit, Map<String, String> first, Tried tried) {
        this.visit = visit;
        this.event = visit.event();
        this.first = first;
        this.tried = tried;
    }

    NotingView page() {
        NotedGame noted = NotedGame.read(tried.isNothing() ? Form.of(first) : tried.typed(), FilmViews.known(event));
        boolean isGameOpen = noted.game().isEmpty()
                || noted.faults().stream().anyMatch(fault -> !fault.field().equals(NotedGame.RALLIES))
                || !tried.refusal().problems().isEmpty();
        return new NotingView(
                tried.refusal(),
                head(noted),
                FilmViews.cautions(visit.words()),
                fill(),
                new NotingView.Game(game(), isGameOpen),
                new NotingView.Sent(NotingPage.PATH, kept(), rallies(), buttons()),
                new NotingKeys(visit).of(noted),
                new NotingStands(visit).of(noted));
    }

    private NotingView.Head head(NotedGame noted) {
        Words words = visit.words();
        String code = value(NotedGame.GAME);
        return new NotingView.Head(
                code.isEmpty() ? words.say("page-film.a-game") : words.say("page-film.game-called", "game", code),
                words.say(
                        "page-film.so-many-noted",
                        "count",
                        noted.game().map(game -> game.rallies().size()).orElse(0)),
                noted.game()
                        .map(game -> game.start().players())
                        .map(four -> words.say(
                                "page-film.two-against-two",
                                "one",
                                event.name(four.get(0)),
                                "two",
                                event.name(four.get(1)),
                                "three",
                                event.name(four.get(2)),
                                "four",
                                event.name(four.get(3))))
                        .orElse(words.say("page-film.who-plays-first")));
    }

    private List<Button> buttons() {
        return List.of(
                Button.main(Words.say(event, "page-film.keep-this-game")).sending("do", "keep"),
                Button.other(Words.say(event, "page-film.show-how-it-stands")).sending("do", "read"));
    }

    private String kept() {
        return "noting-"
                + String.join(
                        "-",
                        value(NotedGame.WAS),
                        first.getOrDefault(NotedGame.TIE, ""),
                        first.getOrDefault(NotedGame.RUBBER, ""));
    }

    private String value(String field) {
        return tried.value(field, first.getOrDefault(field, ""));
    }

    private String filled(Tie tie, RubberNo rubber, Pair home, Pair away) {
        return visit.say(
                "page-film.fill-in",
                "tie",
                tie.id(),
                "kind",
                rubber.isDecider() ? "decider" : "rubber",
                "rubber",
                rubber,
                "home",
                visit.words().said(home),
                "away",
                visit.words().said(away));
    }

    private List<NavLink> fill() {
        List<NavLink> links = new ArrayList<>();
        for (Tie tie : TieOrder.sorted(event.tiesOf(visit.club()))) {
            tie.opened().forEach((rubber, named) -> {
                if (named.home().isPresent() && named.away().isPresent()) {
                    links.add(new NavLink(
                            NotingPage.PATH + "?tie=" + tie.id() + "&rubber=" + rubber,
                            filled(tie, rubber, named.home().get(), named.away().get()),
                            false));
                }
            });
        }
        return links;
    }

    private List<FormField> game() {
        List<Option> players = players();
        List<FormField> fields = new ArrayList<>();
        fields.add(new HiddenField(Fields.FORM, NAME));
        fields.add(new HiddenField(NotedGame.WAS, value(NotedGame.WAS)));
        fields.add(line(NotedGame.GAME, Words.say(event, "page-film.a-short-name-for-this"))
                .withHint(Words.say(event, "page-film.letters-digits-and-hyphens-such")));
        NotedGame.PLACES.forEach(place -> fields.add(fields().select(
                        place,
                        Words.say(event, Objects.requireNonNull(PLACE_WORDS.get(place))),
                        Words.say(event, "page-film.choose-the-player"),
                        first.getOrDefault(place, ""),
                        players)));
        fields.add(firstServer());
        fields.add(line(NotedGame.FORMAT, Words.say(event, "page-film.scoring"))
                .withHint(Words.say(event, "page-film.such-as-side-out-11")));
        fields.add(number(NotedGame.CARD_1, Words.say(event, "page-film.points-of-ours-on-the")));
        fields.add(number(NotedGame.CARD_2, Words.say(event, "page-film.points-of-theirs-on-the")));
        fields.add(tie());
        fields.add(line(NotedGame.RUBBER, Words.say(event, "page-film.rubber-1-or-above-d")));
        return fields;
    }

    private FormField tie() {
        return fields().select(
                        NotedGame.TIE,
                        Words.say(event, "page-film.tie-if-it-was-played"),
                        Words.say(event, "page-film.none-of-today"),
                        first.getOrDefault(NotedGame.TIE, ""),
                        event.ties().stream()
                                .map(tie ->
                                        Option.of(tie.id().code(), visit.ties().title(tie), false))
                                .toList());
    }

    private FormField firstServer() {
        return fields().select(
                        NotedGame.FIRST,
                        Words.say(event, "page-film.who-serves-first"),
                        "",
                        first.getOrDefault(NotedGame.FIRST, "1"),
                        IntStream.rangeClosed(1, 4)
                                .mapToObj(number -> Option.of(
                                        "" + number, Words.say(event, "page-film.player", "value", number), false))
                                .toList())
                .withHint(Words.say(event, "page-film.whoever-serves-first-stands-on"));
    }

    /** Own players first. */
    private List<Option> players() {
        return event.players().stream()
                .sorted(Comparator.comparing((Player player) -> !player.club().equals(visit.club()))
                        .thenComparing(player -> event.clubName(player.club())))
                .map(player -> Option.of(
                        player.id().code(), event.name(player.id()) + ", " + event.clubName(player.club()), false))
                .toList();
    }

    private Fields fields() {
        return Fields.of(NAME, tried);
    }

    private TextField line(String id, String label) {
        return fields().line(id, label, first.getOrDefault(id, ""));
    }

    private TextField number(String id, String label) {
        return fields().text(id, TextField.Kind.NUMBER, label, first.getOrDefault(id, ""));
    }

    private TextField rallies() {
        return fields().text(
                        NotedGame.RALLIES,
                        TextField.Kind.LONG,
                        Words.say(event, "page-film.the-rallies-a-line-each"),
                        first.getOrDefault(NotedGame.RALLIES, ""));
    }
}
