package tiewright.http.film;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.film.CardCheck;
import tiewright.film.Counted;
import tiewright.film.GameCounts;
import tiewright.film.Measure;
import tiewright.film.RallyKey;
import tiewright.film.Step;
import tiewright.http.answers.ClubAnswers;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.FormField;
import tiewright.http.pieces.HiddenField;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.pieces.TextField;
import tiewright.http.views.NotingView;
import tiewright.http.visit.Fields;
import tiewright.http.visit.Form;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.wording.FilmWords;
import tiewright.wording.Words;

/** Makes the page on which a game is noted. */
final class NotingViews {
    private static final String NAME = "noting";
    private static final int LAST = 3;
    private static final Map<String, String> PLACE_WORDS = Map.of(
            "right_1",
            "page-film.1-ours-on-the-right",
            "left_1",
            "page-film.2-ours-on-the-left",
            "right_2",
            "page-film.3-theirs-on-their-right",
            "left_2",
            "page-film.4-theirs-on-their-left");
    private static final List<Measure> OF_PAIRS =
            List.of(Measure.RALLIES_WON, Measure.WON_SERVING, Measure.WON_RECEIVING);
    private static final List<Measure> OF_PLAYERS =
            List.of(Measure.WON_OWN_SERVE, Measure.EARNED, Measure.FORCED, Measure.GAVE);

    private final Visit visit;
    private final VisibleEvent event;
    private final Map<String, String> first;
    private final Tried tried;
    private final FilmWords words;

    NotingViews(Visit visit, Map<String, String> first, Tried tried) {
        this.visit = visit;
        this.event = visit.event();
        this.first = first;
        this.tried = tried;
        this.words = new FilmWords(visit.words());
    }

    NotingView page() {
        NotedGame noted = NotedGame.read(tried.isNothing() ? Form.of(first) : tried.typed(), FilmViews.known(event));
        boolean isGameOpen = noted.game().isEmpty()
                || noted.faults().stream().anyMatch(fault -> !fault.field().equals(NotedGame.RALLIES))
                || !tried.refusal().problems().isEmpty();
        return new NotingView(
                tried.refusal(),
                FilmViews.CAUTIONS,
                NotingPage.PATH,
                kept(),
                fill(),
                game(),
                isGameOpen,
                rallies(),
                endings(),
                players(noted),
                keys(),
                stands(noted),
                List.of(
                        Button.main(Words.of(event).say("page-film.keep-this-game"))
                                .sending("do", "keep"),
                        Button.other(Words.of(event).say("page-film.show-how-it-stands"))
                                .sending("do", "read")));
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

    private List<NavLink> fill() {
        List<NavLink> links = new ArrayList<>();
        for (Tie tie : TieOrder.sorted(event.tiesOf(visit.club()))) {
            tie.opened().forEach((rubber, named) -> {
                if (named.home().isPresent() && named.away().isPresent()) {
                    links.add(new NavLink(
                            NotingPage.PATH + "?tie=" + tie.id() + "&rubber=" + rubber,
                            tie.id() + (rubber.isDecider() ? ", decider: " : ", rubber " + rubber + ": ")
                                    + visit.words().said(named.home().get()) + " v "
                                    + visit.words().said(named.away().get()),
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
        fields.add(line(NotedGame.GAME, Words.of(event).say("page-film.a-short-name-for-this"))
                .withHint(Words.of(event).say("page-film.letters-digits-and-hyphens-such")));
        NotedGame.PLACES.forEach(place -> fields.add(fields().select(
                        place,
                        Words.of(event).say(Objects.requireNonNull(PLACE_WORDS.get(place))),
                        Words.of(event).say("page-film.choose-the-player"),
                        first.getOrDefault(place, ""),
                        players)));
        fields.add(fields().select(
                        NotedGame.FIRST,
                        Words.of(event).say("page-film.who-serves-first"),
                        "",
                        first.getOrDefault(NotedGame.FIRST, "1"),
                        IntStream.rangeClosed(1, 4)
                                .mapToObj(number -> Option.of(
                                        "" + number, Words.of(event).say("page-film.player", "value", number), false))
                                .toList())
                .withHint(Words.of(event).say("page-film.whoever-serves-first-stands-on")));
        fields.add(line(NotedGame.FORMAT, Words.of(event).say("page-film.scoring"))
                .withHint(Words.of(event).say("page-film.such-as-side-out-11")));
        fields.add(number(NotedGame.CARD_1, Words.of(event).say("page-film.points-of-ours-on-the")));
        fields.add(number(NotedGame.CARD_2, Words.of(event).say("page-film.points-of-theirs-on-the")));
        fields.add(fields().select(
                        NotedGame.TIE,
                        Words.of(event).say("page-film.tie-if-it-was-played"),
                        Words.of(event).say("page-film.none-of-today"),
                        first.getOrDefault(NotedGame.TIE, ""),
                        event.ties().stream()
                                .map(tie ->
                                        Option.of(tie.id().code(), visit.ties().title(tie), false))
                                .toList()));
        fields.add(line(NotedGame.RUBBER, Words.of(event).say("page-film.rubber-1-or-above-d")));
        return fields;
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
                        Words.of(event).say("page-film.the-rallies-a-line-each"),
                        first.getOrDefault(NotedGame.RALLIES, ""));
    }

    private List<NotingView.Key> endings() {
        return Arrays.stream(RallyKey.values())
                .filter(key -> key.note() == RallyKey.Note.ENDING)
                .map(key -> new NotingView.Key(Character.toString(key.key()), words.ending(key)))
                .toList();
    }

    private List<NotingView.Group> keys() {
        return List.of(
                group(Words.of(event).say("page-film.how-it-ended"), true, RallyKey.Note.ENDING, RallyKey.Note.WHERE),
                group(
                        Words.of(event).say("page-film.first-balls"),
                        false,
                        RallyKey.Note.SERVE,
                        RallyKey.Note.RETURN,
                        RallyKey.Note.THIRD),
                group(
                        Words.of(event).say("page-film.pair-play-calls-breaks"),
                        false,
                        RallyKey.Note.SIGNAL,
                        RallyKey.Note.CALL,
                        RallyKey.Note.CALL_END,
                        RallyKey.Note.MARK,
                        RallyKey.Note.SERVER));
    }

    private NotingView.Group group(String title, boolean isFirst, RallyKey.Note... notes) {
        return new NotingView.Group(
                title,
                isFirst,
                Arrays.stream(RallyKey.values())
                        .filter(key -> List.of(notes).contains(key.note()))
                        .map(key -> new NotingView.Key(Character.toString(key.key()), words.key(key)))
                        .toList());
    }

    private List<NotingView.Key> players(NotedGame noted) {
        Function<Integer, String> name = number -> noted.game()
                .map(game -> event.name(game.start().players().get(number - 1)))
                .orElse(Words.of(event).say("page-film.player", "value", number));
        return IntStream.rangeClosed(1, 4)
                .mapToObj(number -> new NotingView.Key("" + number, name.apply(number)))
                .toList();
    }

    private NotingView.Stands stands(NotedGame noted) {
        List<String> faults = new ArrayList<>(noted.faults().stream()
                .filter(fault -> fault.field().equals(NotedGame.RALLIES))
                .map((Refusal fault) -> visit.words().sentence(fault))
                .toList());
        if (noted.game().isEmpty()) {
            return new NotingView.Stands(
                    faults, List.of(Words.of(event).say("page-film.say-who-plays-then-it")), List.of());
        }
        CardCheck check = visit.ask(ClubAnswers::new).checked(noted.game().get());
        if (check.replay().isOver()
                || check.beyondCard().isPresent()
                || check.firstImpossible().isPresent()) {
            faults.addAll(words.conflicts(check));
        }
        List<String> lines = new ArrayList<>(words.stands(check.replay()));
        List<Step> steps = check.replay().steps();
        steps.subList(Math.max(0, steps.size() - LAST), steps.size()).forEach(step -> lines.add(words.rally(step)));
        List<Counted> counts = GameCounts.of(check);
        return new NotingView.Stands(
                faults,
                lines,
                steps.isEmpty()
                        ? List.of()
                        : List.of(
                                table("noted-pairs", Words.of(event).say("page-film.pairs"), OF_PAIRS, counts),
                                table("noted-players", Words.of(event).say("page-film.players"), OF_PLAYERS, counts)));
    }

    /** A row for each pair or player, a column for each count: how many of how many. */
    private ReasonTable table(String id, String caption, List<Measure> measures, List<Counted> counts) {
        List<List<PlayerId>> all = counts.stream()
                .filter(count -> measures.contains(count.measure()))
                .map(Counted::who)
                .distinct()
                .toList();
        List<ReasonTable.Column> columns = new ArrayList<>(List.of(new ReasonTable.Column(caption, false)));
        measures.forEach(measure -> columns.add(new ReasonTable.Column(words.measure(measure), true)));
        List<ReasonTable.Row> rows = all.stream()
                .map(who -> {
                    List<ReasonTable.Cell> cells = new ArrayList<>(List.of(
                            ReasonTable.Cell.of(who.stream().map(event::name).collect(Collectors.joining(" and ")))));
                    measures.forEach(measure -> cells.add(ReasonTable.Cell.of(count(counts, who, measure))));
                    return ReasonTable.Row.of(cells);
                })
                .toList();
        return new ReasonTable(id, caption, columns, rows, "");
    }

    private static String count(List<Counted> counts, List<PlayerId> who, Measure measure) {
        return counts.stream()
                .filter(one -> one.measure() == measure
                        && one.who().equals(who)
                        && one.outOf().orElse(0) > 0)
                .findFirst()
                .map(one -> one.value() + " of " + one.outOf().getAsInt())
                .orElse("none");
    }
}
