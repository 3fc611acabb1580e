package tiewright.http;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import tiewright.desk.CorrectCard;
import tiewright.desk.RecordCard;
import tiewright.event.Card;
import tiewright.event.Decision;
import tiewright.event.How;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.RubberScore;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.ChoiceList;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.State;
import tiewright.http.pieces.TextField;
import tiewright.http.views.CardFormView;
import tiewright.http.views.CardsView;
import tiewright.http.views.TieCardsView;
import tiewright.scoring.Score;

/** From a card to a score: one rubber at a time, the winner said in words before it counts. */
final class CardPages implements Page {

  @Override
  public void at(Routes routes) {
    routes.get(Door.CARDS, "/cards", visit -> visit.show(Screen.of("cards", "Enter a card", all(visit.event()))));
    routes.get(Door.CARDS_OR_CAPTAIN, "/cards/{tie}", visit ->
        visit.show(Screen.of("tieCards", "Card: " + new TieViews(visit.event()).title(visit.tie()), tie(visit, visit.tie()))));
    routes.get(Door.CARDS_OR_CAPTAIN, "/cards/{tie}/{rubber}", visit -> visit.show(form(visit, false, Tried.NOTHING)));
    routes.post(Door.CARDS_OR_CAPTAIN, "/cards/{tie}/{rubber}", visit -> enter(visit, false));
    routes.get(Door.DESK, "/cards/{tie}/{rubber}/correct", visit -> visit.show(form(visit, true, Tried.NOTHING)));
    routes.post(Door.DESK, "/cards/{tie}/{rubber}/correct", visit -> enter(visit, true));
  }

  private static CardsView all(VisibleEvent event) {
    TieViews views = new TieViews(event);
    List<Tie> ties = NowPage.sorted(event.ties().stream().filter(Tie::isReady).toList());
    return new CardsView(
        ties.stream().filter(tie -> !event.progress(tie).finished()).map(tie -> views.line(tie, "/cards/" + tie.id(), "Enter")).toList(),
        ties.stream().filter(tie -> event.progress(tie).finished()).map(tie -> views.line(tie, "/cards/" + tie.id(), "Look")).toList());
  }

  private static TieCardsView tie(Visit visit, Tie tie) {
    mayEnter(visit, tie);
    TieViews views = new TieViews(visit.event());
    List<TieCardsView.Rubber> rubbers = views.rubbers(tie).stream().map(rubber -> {
      Card card = tie.card(rubber);
      boolean settled = card.standing() != Card.Standing.EMPTY && visit.role().isOfficial();
      return new TieCardsView.Rubber(
          TieViews.rubber(rubber),
          "/cards/" + tie.id() + "/" + rubber + (settled ? "/correct" : ""),
          settled ? (card.standing() == Card.Standing.HELD ? "Settle from the card" : "Correct") : "Enter this rubber",
          state(card), entries(visit, tie, rubber));
    }).toList();
    return new TieCardsView(views.card(tie), rubbers);
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
    List<String> lines = new ArrayList<>();
    for (Card.Entry entry : tie.card(rubber).entries()) {
      String what = entry.takenBack() ? "taken back" : (TieViews.score(entry.games()) + " " + TieViews.how(entry.how())).strip();
      lines.add(Frames.said(visit.event().clock(entry.receivedAt())) + ", " + entry.by().name() + ": "
          + (entry.settles() ? "settled as " : "") + what + (entry.reason().isEmpty() ? "" : " (" + entry.reason() + ")"));
    }
    return lines;
  }

  private static RubberNo rubber(Visit visit) {
    return RubberNo.parse(visit.path("rubber"))
        .orElseThrow(() -> new NotFound("A tie has no rubber \"" + visit.path("rubber") + "\"."));
  }

  private static void enter(Visit visit, boolean correcting) {
    Tie tie = visit.tie();
    mayEnter(visit, tie);
    RubberNo rubber = rubber(visit);
    Form form = visit.form();
    How how = How.parse(form.text("how")).orElse(How.PLAYED);
    List<Score> games = games(visit.event(), form, how);
    String reason = correcting ? form.mustText("reason") : "";
    Decision decision = correcting
        ? new CorrectCard(tie.id(), rubber, games, how, reason)
        : new RecordCard(tie.id(), rubber, games, how);
    if (form.isClean() && !form.isTicked("confirmed")) {
      visit.wouldRefuse(decision).forEach(form::fault);
      if (form.isClean()) {
        visit.show(form(visit, correcting, Tried.again(form)));
        return;
      }
    }
    visit.attempt(form, () -> decision, next(visit, tie), tried -> form(visit, correcting, tried));
  }

  private static String next(Visit visit, Tie tie) {
    return visit.role() == Role.CAPTAIN ? "/tie/" + tie.id() : "/cards/" + tie.id();
  }

  /** The games typed, in order; a game with one number missing is a fault, empty games at the end are none. */
  private static List<Score> games(VisibleEvent event, Form form, How how) {
    List<Score> games = new ArrayList<>();
    if (how.isWalkover() || how == How.VOID) {
      return games;
    }
    for (int game = 1; game <= event.conditions().bestOf(); game++) {
      OptionalInt home = form.number("home-" + game);
      OptionalInt away = form.number("away-" + game);
      if (home.isPresent() && away.isPresent() && home.getAsInt() >= 0 && away.getAsInt() >= 0) {
        games.add(Score.of(home.getAsInt(), away.getAsInt()));
      } else if (home.isPresent() || away.isPresent() || game == 1) {
        form.fault(Refusal.of("form.points-missing").with("game", game).at(home.isPresent() ? "away-" + game : "home-" + game));
      }
    }
    return games;
  }

  private static Screen form(Visit visit, boolean correcting, Tried tried) {
    Tie tie = visit.tie();
    mayEnter(visit, tie);
    RubberNo rubber = rubber(visit);
    TieViews views = new TieViews(visit.event());
    Optional<Tie.OpenedRubber> pairs = Optional.ofNullable(tie.opened().get(rubber));
    String path = "/cards/" + tie.id() + "/" + rubber + (correcting ? "/correct" : "");
    CardFormView view = new CardFormView(
        path,
        views.side(tie, Side.HOME), pairs.map(two -> views.pair(two.home())).orElse(""),
        views.side(tie, Side.AWAY), pairs.map(two -> views.pair(two.away())).orElse(""),
        fields(visit.event(), tried), how(views, tie, tried),
        correcting
            ? Optional.of(TextField.of("reason", TextField.Kind.LINE, "What the card shows, and why this is entered", tried.value("reason", ""))
                .withError(tried.error("reason")).mustBeFilled().withMaxLength(300))
            : Optional.empty(),
        tried.refusal(), confirm(visit, views, tie, rubber, tried), entries(visit, tie, rubber), next(visit, tie));
    return Screen.of("cardForm", TieViews.rubber(rubber) + ": " + views.title(tie), view);
  }

  private static List<CardFormView.Game> fields(VisibleEvent event, Tried tried) {
    List<CardFormView.Game> games = new ArrayList<>();
    int most = event.conditions().bestOf();
    for (int game = 1; game <= most; game++) {
      games.add(new CardFormView.Game(
          most == 1 ? "" : "Game " + game, points("home-" + game, "Home points", tried), points("away-" + game, "Away points", tried)));
    }
    return games;
  }

  private static TextField points(String id, String label, Tried tried) {
    return TextField.of(id, TextField.Kind.NUMBER, label, tried.value(id, "")).withError(tried.error(id)).withMaxLength(3);
  }

  private static ChoiceList how(TieViews views, Tie tie, Tried tried) {
    List<Option> options = Stream.of(How.values())
        .map(how -> Option.of(how.code(), howWords(views, tie, how), tried.isChosen("how", how.code(), how == How.PLAYED)))
        .toList();
    return ChoiceList.one("how", "How it ended", options)
        .withHint("For a walkover the points may stay empty: the conditions say how it counts.")
        .withError(tried.error("how"));
  }

  private static String howWords(TieViews views, Tie tie, How how) {
    return switch (how) {
      case PLAYED -> "Played to the end";
      case RETIRED_HOME -> views.side(tie, Side.HOME) + " retired";
      case RETIRED_AWAY -> views.side(tie, Side.AWAY) + " retired";
      case WALKOVER_HOME -> views.side(tie, Side.HOME) + " did not play (walkover)";
      case WALKOVER_AWAY -> views.side(tie, Side.AWAY) + " did not play (walkover)";
      case VOID -> "Void: neither side played";
    };
  }

  private static Optional<CardFormView.Confirm> confirm(Visit visit, TieViews views, Tie tie, RubberNo rubber, Tried tried) {
    if (tried.isNothing() || !tried.refusal().problems().isEmpty()) {
      return Optional.empty();
    }
    How how = How.parse(tried.typed().text("how")).orElse(How.PLAYED);
    List<Score> games = games(visit.event(), tried.typed(), how);
    Optional<Side> winner = how == How.VOID ? Optional.empty()
        : games.isEmpty() ? how.missing().map(Side::other) : new RubberScore(rubber, games, how).winner();
    String who = winner.map(side -> views.side(tie, side)).orElse("Nobody");
    String pair = winner.flatMap(side -> Optional.ofNullable(tie.opened().get(rubber)).flatMap(two -> two.pair(side)))
        .map(two -> " (" + views.pair(Optional.of(two)) + ")").orElse("");
    String score = games.isEmpty() ? "without play" : TieViews.score(winner.filter(Side.AWAY::equals).isPresent()
        ? games.stream().map(Score::swapped).toList() : games);
    String marked = TieViews.how(how).isEmpty() ? "" : ", " + howWords(views, tie, how);
    List<CardFormView.Hidden> fields = new ArrayList<>();
    for (String name : names(visit.event())) {
      fields.add(new CardFormView.Hidden(name, tried.typed().text(name)));
    }
    return Optional.of(new CardFormView.Confirm(
        who + pair + (winner.isPresent() ? " won " : " won: ") + score + marked + ".", who + " won " + score + ": record", fields));
  }

  private static List<String> names(VisibleEvent event) {
    List<String> names = new ArrayList<>(List.of("how", "reason"));
    for (int game = 1; game <= event.conditions().bestOf(); game++) {
      names.add("home-" + game);
      names.add("away-" + game);
    }
    return names;
  }
}
