package tiewright.http.desk;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
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
import tiewright.http.visit.CardFields;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.scoring.Score;

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

    CardScreen(Visit visit, Tie tie, Tried tried) {
        this.visit = visit;
        this.tie = tie;
        this.rubber = visit.rubber();
        this.views = new TieViews(visit.event());
        this.tried = tried;
    }

    /**
     * @param correcting the entry settles a card that is held, or corrects one
     * @param back where somebody goes who leaves it
     */
    Screen screen(boolean correcting, String back) {
        CardFormView view = new CardFormView(
                "/cards/" + tie.id() + "/" + rubber + (correcting ? "/correct" : ""),
                side(Side.HOME),
                side(Side.AWAY),
                new CardFormView.Asked(
                        CardFields.fields(visit.event(), views, tie, tried),
                        CardFields.how(views, tie, tried),
                        correcting ? Optional.of(reason()) : Optional.empty(),
                        correcting ? "" : differing()),
                tried.refusal(),
                confirm(),
                new TieCards(visit, tie).entries(rubber),
                back);
        return Screen.of("cardForm", TieViews.rubber(rubber) + ": " + views.title(tie), view);
    }

    /** Who just typed the second reading, and whoever comes to the card, reads that the two differ and what happens now. */
    private String differing() {
        Card card = tie.card(rubber);
        return card.standing() != Card.Standing.HELD
                ? ""
                : visit.words()
                        .say(
                                "page-desk.readings-differ",
                                "readings",
                                card.inForce().stream()
                                        .map(Card.Entry::games)
                                        .distinct()
                                        .map(TieViews::score)
                                        .collect(Collectors.joining(" / ")));
    }

    private CardFormView.Side side(Side side) {
        return new CardFormView.Side(
                views.side(tie, side),
                opened().map(two -> views.pair(two.pair(side))).orElse(""));
    }

    private Optional<Tie.OpenedRubber> opened() {
        return Optional.ofNullable(tie.opened().get(rubber));
    }

    private TextField reason() {
        return TextField.of(
                        "reason",
                        TextField.Kind.LINE,
                        visit.words().say("page-desk.what-the-card-shows-and"),
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
                .map(echo -> confirm(echo, retired(games, how)));
    }

    /** Each published way to count a rubber that was given up; the one of the conditions is what will count. */
    private String retired(List<Score> games, How how) {
        RetirementScore chosen = visit.event().conditions().retirementScore();
        String ways = visit.ask(Answers::new).retirements(rubber, games, how).entrySet().stream()
                .map(way -> (way.getKey() == chosen ? "by the conditions " : "")
                        + visit.words().say(Objects.requireNonNull(RETIRED.get(way.getKey()))) + " "
                        + TieViews.score(way.getValue()))
                .collect(Collectors.joining("; "));
        return ways.isEmpty() ? "" : " How it counts: " + ways + ".";
    }

    private CardFormView.Confirm confirm(Echo echo, String retired) {
        String who = echo.winner()
                .map(side -> views.side(tie, side))
                .orElse(visit.words().say("page-desk.nobody"));
        String pair = echo.winner()
                .flatMap(side -> opened().map(two -> " (" + views.pair(two.pair(side)) + ")"))
                .orElse("");
        boolean away = echo.winner().filter(Side.AWAY::equals).isPresent();
        String score = echo.games().isEmpty()
                ? visit.words().say("page-desk.without-play")
                : TieViews.score(
                        away ? echo.games().stream().map(Score::swapped).toList() : echo.games());
        String mark = echo.how() == How.PLAYED ? "" : ", " + CardFields.howWords(views, tie, echo.how());
        return new CardFormView.Confirm(
                visit.words()
                        .say(
                                "page-desk.won",
                                "who",
                                who,
                                "pair",
                                pair,
                                "score",
                                score,
                                "mark",
                                mark,
                                "retired",
                                retired),
                visit.words().say("page-desk.won-record", "who", who, "score", score),
                typed());
    }

    /** What was typed goes along until it is confirmed. */
    private List<HiddenField> typed() {
        return CardFields.names(visit.event()).stream()
                .map(name -> new HiddenField(name, tried.typed().text(name)))
                .toList();
    }
}
