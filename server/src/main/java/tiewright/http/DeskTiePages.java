package tiewright.http;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import tiewright.desk.TakeBackCall;
import tiewright.desk.TakeBackCard;
import tiewright.event.Card;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.ExchangeId;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Sheet;
import tiewright.event.SheetKind;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.event.VisibleExchange;
import tiewright.http.pieces.Button;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.Option;
import tiewright.http.pieces.SelectField;
import tiewright.http.pieces.State;
import tiewright.http.pieces.TextField;
import tiewright.http.views.ActionForm;
import tiewright.http.views.DeskTieView;
import tiewright.sheet.ForfeitSide;
import tiewright.sheet.OpenSheets;
import tiewright.sheet.ReplacePair;
import tiewright.sheet.ReturnSheet;
import tiewright.sheet.SupplySide;

/** One tie at the desk: sheets, rulings for a missing side, calls, changes after the opening. */
final class DeskTiePages implements Page {
  private static final List<String> DOORS = List.of("injury", "illness", "no-show", "disqualified", "clerical");
  private static final State OPENED = new State(Mark.OPENED, "opened");

  @Override
  public void at(Routes routes) {
    String tie = "/desk/tie/{tie}";
    routes.get(Door.DESK, tie, visit -> visit.show(screen(visit, Tried.NOTHING)));
    routes.post(Door.DESK, tie + "/call", visit -> DeskPages.callNow(visit, tried -> screen(visit, tried)));
    routes.post(Door.DESK, tie + "/call-back", DeskTiePages::callBack);
    routes.post(Door.DESK, tie + "/card-back", DeskTiePages::cardBack);
    routes.post(Door.DESK, tie + "/open", visit -> act(visit, visit.form(), new OpenSheets(exchange(visit, visit.form()))));
    routes.post(Door.DESK, tie + "/return", DeskTiePages::giveBack);
    routes.post(Door.OFFICIALS, tie + "/supply", DeskTiePages::supply);
    routes.post(Door.OFFICIALS, tie + "/forfeit", DeskTiePages::forfeit);
    routes.post(Door.DESK, tie + "/replace", DeskTiePages::replace);
  }

  private static void act(Visit visit, Form form, Decision decision) {
    visit.attempt(form, () -> decision, "/desk/tie/" + visit.tie().id(), tried -> screen(visit, tried));
  }

  private static ExchangeId exchange(Visit visit, Form form) {
    return new ExchangeId(visit.tie().id(), SheetKind.parse(form.text("exchange")).orElse(SheetKind.RUBBERS));
  }

  private static ClubId club(Visit visit, String chosen) {
    Tie tie = visit.tie();
    Side side = chosen.equals("away") ? Side.AWAY : Side.HOME;
    return tie.club(side).orElseThrow(() -> new NotFound("The club of this side is not known yet."));
  }

  private static void callBack(Visit visit) {
    Form form = visit.form();
    String reason = form.mustText("call-back-reason");
    act(visit, form, new TakeBackCall(visit.tie().id(), form.maybe("rubber").flatMap(RubberNo::parse), reason));
  }

  private static void cardBack(Visit visit) {
    Form form = visit.form();
    String reason = form.mustText("card-back-reason");
    Optional<RubberNo> rubber = form.must("card-back-rubber", form.maybe("card-back-rubber").flatMap(RubberNo::parse));
    visit.attempt(form, () -> new TakeBackCard(visit.tie().id(), rubber.orElseThrow(), reason),
        "/desk/tie/" + visit.tie().id(), tried -> screen(visit, tried));
  }

  private static void giveBack(Visit visit) {
    Form form = visit.form();
    String reason = form.mustText("return-reason");
    act(visit, form, new ReturnSheet(exchange(visit, form), club(visit, form.text("side")), reason));
  }

  private static void forfeit(Visit visit) {
    Form form = visit.form();
    String reason = form.mustText("forfeit-reason");
    String by = form.mustText("forfeit-by");
    act(visit, form, new ForfeitSide(exchange(visit, form), club(visit, form.text("forfeit-side")), reason, by));
  }

  private static void supply(Visit visit) {
    Form form = visit.form();
    String reason = form.mustText("supply-reason");
    String by = form.mustText("supply-by");
    ExchangeId id = exchange(visit, form);
    Optional<Sheet> sheet = SheetFields.sheet(form, rubbers(visit.event(), id.kind()));
    visit.attempt(form, () -> new SupplySide(id, club(visit, form.text("supply-side")), sheet.orElseThrow(), reason, by),
        "/desk/tie/" + visit.tie().id(), tried -> screen(visit, tried));
  }

  private static void replace(Visit visit) {
    Form form = visit.form();
    Optional<RubberNo> rubber = form.must("replace-rubber", form.maybe("replace-rubber").flatMap(RubberNo::parse));
    Optional<PlayerId> first = form.read("replace-first", "form.not-a-player", PlayerId::of);
    Optional<PlayerId> second = form.read("replace-second", "form.not-a-player", PlayerId::of);
    if (first.isPresent() != second.isPresent() || first.isPresent() && first.equals(second)) {
      form.fault(tiewright.event.Refusal.of("form.one-player-alone").with("rubber", form.text("replace-rubber")).at("replace-first"));
    }
    String by = form.mustText("replace-by");
    Optional<Pair> pair = form.isClean() && first.isPresent() ? Optional.of(Pair.of(first.get(), second.orElseThrow())) : Optional.empty();
    visit.attempt(
        form,
        () -> new ReplacePair(
            rubber.orElseThrow().isDecider() ? ExchangeId.decider(visit.tie().id()) : ExchangeId.sheets(visit.tie().id()),
            club(visit, form.text("replace-side")), rubber.get(), pair, form.text("replace-door"), by),
        "/desk/tie/" + visit.tie().id(), tried -> screen(visit, tried));
  }

  private static Screen screen(Visit visit, Tried tried) {
    Tie tie = visit.tie();
    VisibleEvent event = visit.event();
    TieViews views = new TieViews(event);
    List<DeskTieView.Exchange> exchanges = new ArrayList<>();
    for (SheetKind kind : SheetKind.values()) {
      if (kind == SheetKind.RUBBERS || event.progress(tie).awaitsDecider() || tie.isDeciderOpened()) {
        exchanges.add(exchange(visit, views, tie, new ExchangeId(tie.id(), kind), tried));
      }
    }
    List<String> calls = tie.calls().entrySet().stream()
        .map(call -> TieViews.rubber(call.getKey()) + ": court " + call.getValue().court() + ", called at "
            + Frames.said(event.clock(call.getValue().at())))
        .toList();
    return Screen.of("deskTie", "Desk: " + views.title(tie), new DeskTieView(
        views.card(tie), tried.refusal(), exchanges, calls, actions(visit, views, tie, tried), "/cards/" + tie.id()));
  }

  private static DeskTieView.Exchange exchange(Visit visit, TieViews views, Tie tie, ExchangeId id, Tried tried) {
    VisibleEvent event = visit.event();
    VisibleExchange exchange = event.exchange(id);
    List<DeskTieView.Side> sides = new ArrayList<>();
    for (Side side : Side.values()) {
      VisibleExchange.VisibleSide one = exchange.side(side);
      String asked = one.openingAsked() ? "asks to open now" : "";
      String at = exchange.isOpened() ? "" : one.sealedAt().map(moment -> "since " + Frames.said(event.clock(moment))).orElse("");
      sides.add(new DeskTieView.Side(
          views.side(tie, side), exchange.isOpened() ? OPENED : DeskPages.inOrNot(one),
          (at + (asked.isEmpty() || at.isEmpty() ? "" : ", ") + asked)));
    }
    String title = id.kind() == SheetKind.RUBBERS ? "Sheets" : "Pairs for the decider";
    String deadline = exchange.isOpened()
        ? "Opened at " + exchange.openedAt().map(at -> Frames.said(event.clock(at))).orElse("")
        : "Until " + exchange.deadline().map(at -> Frames.said(event.clock(at))).orElse("no time yet") + ". " + visit.answers().lateRule();
    return new DeskTieView.Exchange(title, deadline, sides,
        exchange.isOpened() || !tie.isReady() ? List.of() : sheetActions(visit, views, tie, id, exchange, tried));
  }

  private static List<ActionForm> sheetActions(
      Visit visit, TieViews views, Tie tie, ExchangeId id, VisibleExchange exchange, Tried tried) {
    String path = "/desk/tie/" + tie.id();
    List<ActionForm> actions = new ArrayList<>();
    if (isReady(exchange.home()) && isReady(exchange.away())) {
      actions.add(ActionForm.of("open-" + id.kind().code(), path + "/open", "Open both", Button.main("Open both sheets now"))
          .sending("exchange", id.kind().code())
          .saying("The tool opens by itself at the deadline when both are in, unless a neutral person was named."));
    }
    List<Option> in = sides(views, tie, side -> exchange.side(side).in());
    if (!in.isEmpty()) {
      actions.add(ActionForm.of("return", path + "/return", "Give a sheet back unseen", Button.other("Give it back"))
          .sending("exchange", id.kind().code())
          .choosing(SelectField.of("side", "Whose", "", in))
          .asking(text("return-reason", "Why", tried)));
    }
    List<Option> missing = sides(views, tie, side -> !exchange.side(side).in() && exchange.side(side).ruled().isEmpty());
    if (!missing.isEmpty() && exchange.past() && isOfficialOf(visit)) {
      actions.add(supply(visit.event(), tie, id, missing, tried));
      actions.add(ActionForm.of("forfeit", path + "/forfeit", "A side without a sheet: forfeit it by a ruling",
              Button.stop("Give the rubbers to the other club"))
          .sending("exchange", id.kind().code())
          .saying("A person decides this, not the clock. Then both sides open.")
          .choosing(SelectField.of("forfeit-side", "Whose", "", missing))
          .asking(text("forfeit-reason", "Reason in the words of the conditions", tried), text("forfeit-by", "Decided by (name)", tried)));
    }
    return actions;
  }

  private static boolean isReady(VisibleExchange.VisibleSide side) {
    return side.ruled().isPresent() || side.in() && side.atDesk();
  }

  private static boolean isOfficialOf(Visit visit) {
    return visit.role() == Role.ORGANISER || visit.role() == Role.REFEREE;
  }

  private static List<Option> sides(TieViews views, Tie tie, java.util.function.Predicate<Side> which) {
    return java.util.stream.Stream.of(Side.values()).filter(which)
        .map(side -> Option.of(side.code(), views.side(tie, side), false)).toList();
  }

  private static ActionForm supply(VisibleEvent event, Tie tie, ExchangeId id, List<Option> missing, Tried tried) {
    ActionForm form = ActionForm.of(
            "supply", "/desk/tie/" + tie.id() + "/supply", "A side without a sheet: supply it by a ruling",
            Button.other("Supply this sheet"))
        .sending("exchange", id.kind().code())
        .saying("The names are open to you: fill it as the conditions say, then both sides open.")
        .choosing(SelectField.of("supply-side", "Whose", "", missing));
    for (RubberNo rubber : rubbers(event, id.kind())) {
      for (String seat : List.of("first", "second")) {
        String field = SheetFields.field(rubber, seat);
        form = form.choosing(SelectField.of(
            field, TieViews.rubber(rubber) + ", " + (seat.equals("first") ? "player" : "partner"), "Nobody",
            squads(event, tie, tried.value(field, ""))));
      }
    }
    return form.asking(text("supply-reason", "Reason in the words of the conditions", tried), text("supply-by", "Decided by (name)", tried));
  }

  /** The players of both clubs, each with its club. */
  private static List<Option> squads(VisibleEvent event, Tie tie, String chosen) {
    return java.util.stream.Stream.of(Side.values())
        .flatMap(side -> tie.club(side).stream())
        .flatMap(club -> event.squad(club).stream())
        .map(player -> Option.of(
            player.id().code(), event.name(player.id()) + ", " + event.clubName(player.club()), player.id().code().equals(chosen)))
        .toList();
  }

  static List<RubberNo> rubbers(VisibleEvent event, SheetKind kind) {
    return kind == SheetKind.DECIDER
        ? List.of(RubberNo.DECIDER)
        : java.util.stream.IntStream.rangeClosed(1, event.conditions().rubbers()).mapToObj(RubberNo::of).toList();
  }

  private static List<ActionForm> actions(Visit visit, TieViews views, Tie tie, Tried tried) {
    VisibleEvent event = visit.event();
    String path = "/desk/tie/" + tie.id();
    List<ActionForm> actions = new ArrayList<>();
    if (tie.isOpened() && !event.progress(tie).finished()) {
      if (tie.calls().isEmpty() && tie.cards().isEmpty()) {
        actions.add(DeskPages.call(event, tie, Optional.empty()));
      }
      event.progress(tie).left().forEach(rubber -> actions.add(DeskPages.call(event, tie, Optional.of(rubber))));
    }
    if (!tie.calls().isEmpty()) {
      actions.add(ActionForm.of("call-back", path + "/call-back", "Take a call back", Button.other("Take it back"))
          .choosing(SelectField.of("rubber", "Which", "The whole tie", rubberOptions(tie.calls(), tried.value("rubber", ""))))
          .asking(text("call-back-reason", "Why", tried)));
    }
    SortedMap<RubberNo, Card> cards = tie.cards();
    if (!cards.isEmpty()) {
      actions.add(ActionForm.of("card-back", path + "/card-back", "Take a score back: the rubber was not played", Button.stop("Take it back"))
          .choosing(SelectField.of("card-back-rubber", "Which", "Choose a rubber", rubberOptions(cards, tried.value("card-back-rubber", ""))))
          .asking(text("card-back-reason", "Why", tried)));
    }
    if (tie.isOpened() && !event.progress(tie).finished()) {
      actions.add(replace(event, views, tie, tried));
    }
    return actions;
  }

  private static ActionForm replace(VisibleEvent event, TieViews views, Tie tie, Tried tried) {
    return ActionForm.of("replace", "/desk/tie/" + tie.id() + "/replace", "Change a pair after the opening", Button.other("Change the pair"))
        .saying("Only through a door that the conditions open. Everybody sees who approved it, nobody more than the door's name.")
        .choosing(
            SelectField.of("replace-side", "Whose", "", sides(views, tie, side -> true)),
            SelectField.of("replace-rubber", "Rubber", "Choose a rubber", rubberOptions(tie.opened(), tried.value("replace-rubber", ""))),
            SelectField.of("replace-first", "Player", "Nobody", squads(event, tie, tried.value("replace-first", ""))),
            SelectField.of("replace-second", "Partner", "Nobody", squads(event, tie, tried.value("replace-second", ""))),
            SelectField.of("replace-door", "Through which door", "",
                DOORS.stream().map(door -> Option.of(door, door, door.equals(tried.value("replace-door", "")))).toList()))
        .asking(text("replace-by", "Approved by (name)", tried));
  }

  private static List<Option> rubberOptions(SortedMap<RubberNo, ?> of, String chosen) {
    return of.keySet().stream().map(no -> Option.of(no.toString(), TieViews.rubber(no), no.toString().equals(chosen))).toList();
  }

  private static TextField text(String id, String label, Tried tried) {
    return TextField.of(id, TextField.Kind.LINE, label, tried.value(id, "")).withError(tried.error(id)).withMaxLength(300);
  }
}
