package tiewright.http.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tiewright.conditions.RetirementScore;
import tiewright.desk.CorrectCard;
import tiewright.desk.Correction;
import tiewright.desk.Echo;
import tiewright.desk.RecordCard;
import tiewright.event.Card;
import tiewright.event.CorrectionChoice;
import tiewright.event.Decision;
import tiewright.event.How;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.Answers;
import tiewright.http.answers.DisputeAnswers;
import tiewright.http.pieces.HiddenField;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.State;
import tiewright.http.pieces.TextField;
import tiewright.http.views.CardFormView;
import tiewright.http.views.CardsView;
import tiewright.http.views.TieCardsView;
import tiewright.http.visit.Addresses;
import tiewright.http.visit.CardFields;
import tiewright.http.visit.ClosedDoor;
import tiewright.http.visit.Door;
import tiewright.http.visit.Form;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TiePapers;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Tried;
import tiewright.http.visit.Visit;
import tiewright.scoring.Score;

/** From a card to a score: one rubber at a time, the winner said in words before it counts. */
final class CardPages implements Page {
    private static final Map<RetirementScore, String> RETIRED = Map.of(
            RetirementScore.KEEP_POINTS,
            "points kept, the other side lifted",
            RetirementScore.ZERO,
            "to nil",
            RetirementScore.AS_IT_STOOD,
            "as it stood");

    @Override
    public void at(Routes routes) {
        routes.get(Door.CARDS, "/cards", visit -> visit.show(Screen.of("cards", "Enter a card", all(visit.event()))));
        routes.get(
                Door.CARDS_OR_CAPTAIN,
                "/cards/{tie}",
                visit -> visit.show(Screen.of(
                        "tieCards",
                        "Card: " + new TieViews(visit.event()).title(visit.tie()),
                        tie(visit, visit.tie()))));
        routes.get(
                Door.CARDS_OR_CAPTAIN, "/cards/{tie}/{rubber}", visit -> visit.show(form(visit, false, Tried.NOTHING)));
        routes.post(Door.CARDS_OR_CAPTAIN, "/cards/{tie}/{rubber}", visit -> enter(visit, false));
        routes.get(Door.DESK, "/cards/{tie}/{rubber}/correct", visit -> visit.show(form(visit, true, Tried.NOTHING)));
        routes.post(Door.DESK, "/cards/{tie}/{rubber}/correct", visit -> enter(visit, true));
    }

    private static CardsView all(VisibleEvent event) {
        TieViews views = new TieViews(event);
        List<Tie> ties =
                TieOrder.sorted(event.ties().stream().filter(Tie::isReady).toList());
        return new CardsView(
                ties.stream()
                        .filter(tie -> !event.progress(tie).finished())
                        .map(tie -> views.line(tie, "/cards/" + tie.id(), "Enter"))
                        .toList(),
                ties.stream()
                        .filter(tie -> event.progress(tie).finished())
                        .map(tie -> views.line(tie, "/cards/" + tie.id(), "Look"))
                        .toList());
    }

    private static TieCardsView tie(Visit visit, Tie tie) {
        mayEnter(visit, tie);
        TieViews views = new TieViews(visit.event());
        List<TieCardsView.Rubber> rubbers = views.rubbers(tie).stream()
                .map(rubber -> {
                    Card card = tie.card(rubber);
                    boolean settled = card.standing() != Card.Standing.EMPTY
                            && visit.role().isOfficial();
                    return new TieCardsView.Rubber(
                            TieViews.rubber(rubber),
                            "/cards/" + tie.id() + "/" + rubber + (settled ? "/correct" : ""),
                            settled
                                    ? (card.standing() == Card.Standing.HELD ? "Settle from the card" : "Correct")
                                    : "Enter this rubber",
                            state(card),
                            entries(visit, tie, rubber),
                            Door.COURT.opensFor(visit.role())
                                            && StopPages.stoppable(visit.event(), tie)
                                                    .contains(rubber)
                                    ? List.of(StopPages.press(tie, rubber))
                                    : List.of(),
                            visit.role().isOfficial() && card.standing() != Card.Standing.EMPTY
                                    ? LogPage.of(tie, rubber)
                                    : "",
                            Door.OFFICIALS.opensFor(visit.role()) && card.standing() != Card.Standing.EMPTY
                                    ? Addresses.correction(tie, rubber)
                                    : "");
                })
                .toList();
        return new TieCardsView(new TiePapers(visit.event()).card(tie), rubbers);
    }

    static State state(Card card) {
        return switch (card.standing()) {
            case EMPTY -> State.NONE;
            case RECORDED -> new State(Mark.PLAIN, "entered once");
            case CONFIRMED -> new State(Mark.KEPT, "confirmed by a second entry");
            case HELD -> new State(Mark.HELD, "held: two entries differ");
            case SETTLED -> new State(Mark.KEPT, "settled from the card");
        };
    }

    /** Captains enter and see cards of their own ties only. */
    private static void mayEnter(Visit visit, Tie tie) {
        if (visit.role() == Role.CAPTAIN && !tie.has(visit.club())) {
            throw new ClosedDoor(Door.CARDS);
        }
    }

    /** Everything entered for the rubber, oldest first: who, when received, what; nothing is ever dropped. */
    private static List<String> entries(Visit visit, Tie tie, RubberNo rubber) {
        TieViews views = new TieViews(visit.event());
        List<String> lines = new ArrayList<>();
        for (Card.Entry entry : tie.card(rubber).entries()) {
            String what = entry.takenBack()
                    ? "taken back"
                    : (TieViews.score(entry.games()) + " " + views.how(tie, entry.how())).strip();
            lines.add(HallClock.said(visit.event().clock(entry.receivedAt())) + ", "
                    + entry.by().name() + ": " + (entry.settles() ? "settled as " : "") + what
                    + (entry.reason().isEmpty() ? "" : " (" + entry.reason() + ")"));
        }
        return lines;
    }

    private static void enter(Visit visit, boolean correcting) {
        Tie tie = visit.tie();
        mayEnter(visit, tie);
        RubberNo rubber = visit.rubber();
        Form form = visit.form();
        How how = How.parse(form.text("how")).orElse(How.PLAYED);
        List<Score> games = CardFields.games(visit.event(), form, how);
        String reason = correcting ? form.mustText("reason") : "";
        Decision decision = correcting
                ? new CorrectCard(tie.id(), rubber, games, how, reason)
                : new RecordCard(tie.id(), rubber, games, how);
        if (form.isClean() && !form.isTicked("confirmed")) {
            if (correcting && isBuiltOn(visit, new Correction(tie.id(), rubber, games, how))) {
                visit.go(Addresses.correction(tie, rubber) + "?" + CardFields.query(visit.event(), form));
                return;
            }
            visit.wouldRefuse(decision).forEach(form::fault);
            if (form.isClean()) {
                visit.show(form(visit, correcting, Tried.again(form)));
                return;
            }
        }
        visit.attempt(form, () -> decision, next(visit, tie), tried -> form(visit, correcting, tried));
    }

    /** Others have gone on from the score, and this person may decide what becomes of it. */
    private static boolean isBuiltOn(Visit visit, Correction correction) {
        return Door.OFFICIALS.opensFor(visit.role())
                && visit.ask(DisputeAnswers::new).faults(correction).isEmpty()
                && visit.ask(DisputeAnswers::new)
                        .impact(correction, CorrectionChoice.REPLAY)
                        .reachesOthers();
    }

    private static String next(Visit visit, Tie tie) {
        return visit.role() == Role.CAPTAIN ? "/tie/" + tie.id() : "/cards/" + tie.id();
    }

    private static Screen form(Visit visit, boolean correcting, Tried tried) {
        Tie tie = visit.tie();
        mayEnter(visit, tie);
        RubberNo rubber = visit.rubber();
        TieViews views = new TieViews(visit.event());
        Optional<Tie.OpenedRubber> pairs = Optional.ofNullable(tie.opened().get(rubber));
        String path = "/cards/" + tie.id() + "/" + rubber + (correcting ? "/correct" : "");
        CardFormView view = new CardFormView(
                path,
                views.side(tie, Side.HOME),
                pairs.map(two -> views.pair(two.home())).orElse(""),
                views.side(tie, Side.AWAY),
                pairs.map(two -> views.pair(two.away())).orElse(""),
                CardFields.fields(visit.event(), views, tie, tried),
                CardFields.how(views, tie, tried),
                correcting
                        ? Optional.of(TextField.of(
                                        "reason",
                                        TextField.Kind.LINE,
                                        "What the card shows, and why this is entered",
                                        tried.value("reason", ""))
                                .withError(tried.error("reason"))
                                .mustBeFilled()
                                .withMaxLength(300))
                        : Optional.empty(),
                tried.refusal(),
                confirm(visit, views, tie, rubber, tried),
                entries(visit, tie, rubber),
                next(visit, tie));
        return Screen.of("cardForm", TieViews.rubber(rubber) + ": " + views.title(tie), view);
    }

    /** The winner by these numbers, in words; empty while numbers are still asked for. */
    private static Optional<CardFormView.Confirm> confirm(
            Visit visit, TieViews views, Tie tie, RubberNo rubber, Tried tried) {
        if (tried.isNothing() || !tried.refusal().problems().isEmpty()) {
            return Optional.empty();
        }
        How how = How.parse(tried.typed().text("how")).orElse(How.PLAYED);
        List<HiddenField> fields = CardFields.names(visit.event()).stream()
                .map(name -> new HiddenField(name, tried.typed().text(name)))
                .toList();
        return visit.ask(Answers::new)
                .echo(tie.id(), rubber, CardFields.games(visit.event(), tried.typed(), how), how)
                .map(echo -> confirm(
                        views,
                        tie,
                        echo,
                        retired(visit, rubber, CardFields.games(visit.event(), tried.typed(), how), how),
                        fields));
    }

    /** Each published way to count a rubber that was given up; the one of the conditions is what will count. */
    private static String retired(Visit visit, RubberNo rubber, List<Score> games, How how) {
        RetirementScore chosen = visit.event().conditions().retirementScore();
        String ways = visit.ask(Answers::new).retirements(rubber, games, how).entrySet().stream()
                .map(way -> (way.getKey() == chosen ? "by the conditions " : "") + RETIRED.get(way.getKey()) + " "
                        + TieViews.score(way.getValue()))
                .collect(Collectors.joining("; "));
        return ways.isEmpty() ? "" : " How it counts: " + ways + ".";
    }

    private static CardFormView.Confirm confirm(
            TieViews views, Tie tie, Echo echo, String retired, List<HiddenField> fields) {
        String who = echo.winner().map(side -> views.side(tie, side)).orElse("Nobody");
        String pair = echo.winner()
                .flatMap(side ->
                        Optional.ofNullable(tie.opened().get(echo.rubber())).map(two -> two.pair(side)))
                .map(two -> " (" + views.pair(two) + ")")
                .orElse("");
        boolean away = echo.winner().filter(Side.AWAY::equals).isPresent();
        String score = echo.games().isEmpty()
                ? "without play"
                : TieViews.score(
                        away ? echo.games().stream().map(Score::swapped).toList() : echo.games());
        String mark = echo.how() == How.PLAYED ? "" : ", " + CardFields.howWords(views, tie, echo.how());
        return new CardFormView.Confirm(
                who + pair + " won " + score + mark + "." + retired, who + " won " + score + ": record", fields);
    }
}
