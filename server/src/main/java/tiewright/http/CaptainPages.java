package tiewright.http;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.ExchangeId;
import tiewright.event.Tie;
import tiewright.event.TieProgress;
import tiewright.event.VisibleEvent;
import tiewright.event.VisibleExchange;
import tiewright.http.pieces.Countdown;
import tiewright.http.views.CaptainView;

/** A captain's ties: what is due, and the way to each sheet, proposal and decider. */
final class CaptainPages implements Page {

  @Override
  public void at(Routes routes) {
    routes.get(Door.CAPTAIN, "/captain", visit ->
        visit.show(Screen.of("captain", visit.event().clubName(visit.club()) + ": my ties", view(visit))));
  }

  private static CaptainView view(Visit visit) {
    VisibleEvent event = visit.event();
    TieViews views = new TieViews(event);
    List<Countdown> countdowns = new ArrayList<>();
    List<CaptainView.Mine> mine = new ArrayList<>();
    for (Tie tie : NowPage.sorted(event.tiesOf(visit.club()))) {
      countdowns(visit, views, tie).forEach(countdowns::add);
      mine.add(new CaptainView.Mine(views.line(tie), todo(visit, tie)));
    }
    boolean read = event.conditionsRead(visit.club()) >= event.conditionsVersion();
    Optional<String> unread = read || event.conditionsVersion() == 0
        ? Optional.empty()
        : Optional.of("Read version " + event.conditionsVersion() + " of the conditions of play and tick that you did.");
    return new CaptainView(countdowns, mine, unread, "/club/" + visit.club());
  }

  /** One for each sheet of the club that is not in yet, and has a deadline ahead. */
  static List<Countdown> countdowns(Visit visit, TieViews views, Tie tie) {
    List<Countdown> countdowns = new ArrayList<>();
    for (ExchangeId id : List.of(ExchangeId.sheets(tie.id()), ExchangeId.decider(tie.id()))) {
      VisibleExchange exchange = visit.event().exchange(id);
      boolean in = tie.sideOf(visit.club()).filter(side -> exchange.side(side).in()).isPresent();
      if (!in && !exchange.isOpened() && tie.isReady() && exchange.deadline().isPresent()
          && !visit.event().progress(tie).finished()) {
        String what = id.equals(ExchangeId.sheets(tie.id())) ? "Sheet for " : "Pair for the decider of ";
        countdowns.add(new Countdown(
            what + views.title(tie) + ": seal it by " + Frames.said(visit.event().clock(exchange.deadline().get())),
            exchange.deadline().get(), "The deadline has passed: see the desk."));
      }
    }
    return countdowns;
  }

  private static List<CaptainView.Todo> todo(Visit visit, Tie tie) {
    TieProgress progress = visit.event().progress(tie);
    List<CaptainView.Todo> todo = new ArrayList<>();
    if (!tie.isReady() || progress.finished() && !tie.cards().isEmpty()) {
      return todo;
    }
    if (!tie.isOpened()) {
      boolean in = isIn(visit, tie, ExchangeId.sheets(tie.id()));
      todo.add(new CaptainView.Todo(in ? "My sealed sheet" : "Name the pairs", "/captain/sheet/" + tie.id(), !in));
      todo.add(new CaptainView.Todo("Proposal", "/captain/proposal/" + tie.id(), false));
    } else {
      todo.add(new CaptainView.Todo("Enter a score", "/cards/" + tie.id(), false));
    }
    if (!tie.isDeciderOpened() && visit.answers().hasDecider()) {
      boolean wanted = progress.awaitsDecider();
      boolean in = isIn(visit, tie, ExchangeId.decider(tie.id()));
      if (wanted) {
        todo.add(new CaptainView.Todo("Who could play it", "/captain/proposal/" + tie.id(), false));
      }
      todo.add(new CaptainView.Todo(
          in ? "My sealed pair for a decider" : wanted ? "Name the pair for the decider" : "Seal a pair for a decider, should it come to one",
          "/captain/decider/" + tie.id(), wanted && !in));
    }
    return todo;
  }

  private static boolean isIn(Visit visit, Tie tie, ExchangeId id) {
    return tie.sideOf(visit.club()).filter(side -> visit.event().exchange(id).side(side).in()).isPresent();
  }
}
