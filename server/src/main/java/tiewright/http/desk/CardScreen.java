package tiewright.http.desk;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tiewright.conditions.RetirementScore;
import tiewright.desk.Echo;
import tiewright.event.Card;
import tiewright.event.How;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.http.answers.Answers;
import tiewright.http.pieces.HiddenField;
import tiewright.http.pieces.TextField;
import tiewright.http.views.CardFormView;
import tiewright.http.visit.ByRuling;
import tiewright.http.visit.CardFields;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.scoring.Score;
import tiewright.wording.Words;

/** The form of one rubber, and the winner said in words before the numbers count. */
final class CardScreen {
    private static final Map<RetirementScore, String> RETIRED = Map.of(
            RetirementScore.KEEP_POINTS,
            "page-desk.points-kept-the-other-side",
            RetirementScore.ZERO,
            "page-desk.to-nil",
            RetirementScore.AS_IT_STOOD,
            "page-desk.as-it-stood");

    private final Visit visit;
    private final Tie tie;
    private final RubberNo rubber;
    private final TieViews views;
    private final Tried tried;
    private final CardWords words;

    CardScreen(Visit visit, Tie tie, Tried tried) {
        this.visit = visit;
        this.tie = tie;
        this.rubber = visit.rubber();
        this.views = new TieViews(visit.event());
        this.tried = tried;
        this.words = new CardWords(visit, tie, rubber);
    }

    /**
     * @param correcting the entry settles a card that is held, or corrects one
     * @param back where somebody goes who leaves it
     */
    Screen screen(boolean correcting, String back) {
        CardFormView view = new CardFormView(
                "/cards/" + tie.id() + "/" + rubber + (correcting ? "/correct" : ""),
                Stream.of(Side.values()).map(this::side).toList(),
                new CardFormView.Asked(
                        CardFields.fields(visit.event(), views, tie, tried),
                        CardFields.how(views, tie, tried),
                        correcting ? ByRuling.all(visit, tried, reason()) : List.of(),
                        correcting ? "" : differing()),
                words.pad(),
                tried.refusal(),
                confirm(),
                new TieCards(visit, tie).entries(rubber),
                back);
        return Screen.of("cardForm", words.title(), view);
    }

    /** Who just typed the second reading, and whoever comes to the card, reads that the two differ and what happens now. */
    private String differing() {
        Card card = tie.card(rubber);
        return card.standing() != Card.Standing.HELD
                ? ""
                : visit.say(
                        "page-desk.readings-differ",
                        "readings",
                        card.inForce().stream()
                                .map(Card.Entry::games)
                                .distinct()
                                .map(TieViews::score)
                                .collect(Collectors.joining(" / ")));
    }

    private CardFormView.Side side(Side side) {
        String club = views.side(tie, side);
        return new CardFormView.Side(
                side.code(),
                club,
                words.pair(side).orElse(""),
                words.won(side),
                visit.say("page-desk.won-record", "who", club, "score", "{score}"));
    }

    private TextField reason() {
        return TextField.of(
                        "reason",
                        TextField.Kind.LINE,
                        visit.say("page-desk.what-the-card-shows-and"),
                        tried.value("reason", ""))
                .withError(tried.error("reason"))
                .mustBeFilled()
                .withMaxLength(300);
    }

    /** The winner by these numbers, in words; empty while numbers are still asked for. */
    private Optional<CardFormView.Confirm> confirm() {
        if (tried.isNothing() || !tried.refusal().problems().isEmpty()) {
            return Optional.empty();
        }
        How how = How.parse(tried.typed().text("how")).orElse(How.PLAYED);
        List<Score> games = CardFields.games(visit.event(), tried.typed(), how);
        return visit.ask(Answers::new)
                .echo(tie.id(), rubber, games, how)
                .map(echo -> confirm(echo, how.isRetirement() ? games : echo.games(), retired(games, how)));
    }

    /** Each published way to count a rubber that was given up; the one of the conditions is what will count. */
    private String retired(List<Score> games, How how) {
        RetirementScore chosen = visit.event().conditions().retirementScore();
        Map<RetirementScore, List<Score>> ways = visit.ask(Answers::new).retirements(rubber, games, how);
        if (!ways.containsKey(chosen)) {
            return "";
        }
        String others = ways.keySet().stream()
                .filter(way -> way != chosen)
                .map(way -> counts("page-desk.counts", way, ways))
                .collect(Collectors.joining(", "));
        return counts("page-desk.how-it-counts", chosen, ways)
                + (others.isEmpty() ? "" : " " + visit.say("page-desk.other-ways", "ways", others));
    }

    private String counts(String key, RetirementScore way, Map<RetirementScore, List<Score>> ways) {
        return visit.say(
                key,
                "way",
                visit.say(Objects.requireNonNull(RETIRED.get(way))),
                "score",
                TieViews.score(Objects.requireNonNull(ways.get(way))));
    }

    /** @param shown what the card shows: of a rubber that was given up, not what it counts for */
    private CardFormView.Confirm confirm(Echo echo, List<Score> shown, String retired) {
        Words say = visit.words();
        String score = shown.isEmpty() ? say.say("page-desk.without-play") : CardWords.score(shown, echo.winner());
        String sentence = say.say(
                echo.how() == How.PLAYED ? "page-desk.won" : "page-desk.won-otherwise",
                "who",
                echo.winner().map(words::clubAndPair).orElse(say.say("page-desk.nobody")),
                "score",
                score,
                "how",
                CardFields.howWords(views, tie, echo.how()));
        return new CardFormView.Confirm(
                Stream.of(sentence, retired, words.then(echo.winner()))
                        .filter(part -> !part.isEmpty())
                        .collect(Collectors.joining(" ")),
                say.say(
                        "page-desk.won-record",
                        "who",
                        echo.winner().map(side -> views.side(tie, side)).orElse(say.say("page-desk.nobody")),
                        "score",
                        score),
                typed());
    }

    /** What was typed goes along until it is confirmed. */
    private List<HiddenField> typed() {
        return Stream.concat(CardFields.names(visit.event()).stream(), Stream.of(ByRuling.FIELD))
                .filter(name -> !name.equals(ByRuling.FIELD) || tried.typed().has(name))
                .map(name -> new HiddenField(name, tried.typed().text(name)))
                .toList();
    }
}
