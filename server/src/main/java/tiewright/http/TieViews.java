package tiewright.http;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.Card;
import tiewright.event.ClubId;
import tiewright.event.ExchangeId;
import tiewright.event.How;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.event.RubberScore;
import tiewright.event.Side;
import tiewright.event.SlotSource;
import tiewright.event.Stage;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.event.TieProgress;
import tiewright.event.VisibleEvent;
import tiewright.event.VisibleExchange;
import tiewright.http.pieces.CardView;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.Moved;
import tiewright.http.pieces.SheetView;
import tiewright.http.pieces.State;
import tiewright.http.pieces.TieLine;
import tiewright.scoring.Score;

/** Ties as one viewer may see them: in one line, as a card, as two sheets. */
final class TieViews {
  private final VisibleEvent event;
  private final Map<TieId, String> expected;

  TieViews(VisibleEvent event) {
    this(event, Map.of());
  }

  /** @param expected when ties are likely to begin, in words */
  TieViews(VisibleEvent event, Map<TieId, String> expected) {
    this.event = event;
    this.expected = expected;
  }

  /** When the tie is likely to begin; empty where nothing can be said. */
  String expected(Tie tie) {
    return expected.getOrDefault(tie.id(), "");
  }

  String title(Tie tie) {
    return side(tie, Side.HOME) + " v " + side(tie, Side.AWAY);
  }

  /** The club, or where it will come from. */
  String side(Tie tie, Side side) {
    return tie.club(side).map(event::clubName).orElseGet(() -> tie.slot(side).from().map(this::source).orElse(""));
  }

  String source(SlotSource source) {
    return switch (source.kind()) {
      case POOL_PLACE -> ordinal(source.place()) + " of pool " + source.of();
      case WINNER -> "winner of " + source.of();
      case LOSER -> "loser of " + source.of();
    };
  }

  static String ordinal(int place) {
    boolean teen = place % 100 >= 11 && place % 100 <= 13;
    String ending = teen ? "th" : switch (place % 10) {
      case 1 -> "st";
      case 2 -> "nd";
      case 3 -> "rd";
      default -> "th";
    };
    return place + ending;
  }

  /** Pool and round, or the round of the knockout. */
  String stage(Tie tie) {
    if (tie.stage() == Stage.POOL) {
      return "Pool " + tie.pool().orElse("") + ", round " + tie.round();
    }
    long sameRound = event.ties().stream()
        .filter(other -> other.stage() == Stage.KNOCKOUT && other.round() == tie.round() && !isForLosers(other))
        .count();
    if (isForLosers(tie)) {
      return "Tie for third place";
    }
    return sameRound == 1 ? "Final" : (sameRound == 2 ? "Semi-final " : sameRound == 4 ? "Quarter-final " : "Knockout ") + tie.id();
  }

  static boolean isForLosers(Tie tie) {
    return tie.home().from().filter(source -> source.kind() == SlotSource.Kind.LOSER).isPresent();
  }

  String when(Tie tie) {
    return tie.start().map(Frames::said).orElse("no time yet");
  }

  String where(Tie tie) {
    List<String> courts = event.order().courts(tie);
    return courts.isEmpty() ? "" : (courts.size() == 1 ? "Court " : "Courts ") + String.join(", ", courts);
  }

  TieLine line(Tie tie) {
    return line(tie, "/tie/" + tie.id(), "Tie " + tie.id());
  }

  TieLine line(Tie tie, String href, String words) {
    TieProgress progress = event.progress(tie);
    boolean begun = !progress.rubbers().isEmpty();
    Optional<Moved> moved = new Changes(event).last(tie);
    return new TieLine(
        side(tie, Side.HOME),
        begun ? Integer.toString(progress.won(Side.HOME)) : "",
        side(tie, Side.AWAY),
        begun ? Integer.toString(progress.won(Side.AWAY)) : "",
        progress.winner().map(side -> side == Side.HOME ? 1 : 2).orElse(0),
        when(tie), where(tie), state(tie), stage(tie) + onDuty(tie), href, words, moved.map(Moved::old).orElse(""), moved.map(Moved::why).orElse(""), expected(tie));
  }

  private String onDuty(Tie tie) {
    List<ClubId> umpires = event.order().umpires(tie.id());
    return umpires.isEmpty() ? "" : ", umpires: " + String.join(", ", umpires.stream().map(event::clubName).toList());
  }

  String pair(Optional<Pair> pair) {
    return String.join(" and ", names(pair));
  }

  State state(Tie tie) {
    TieProgress progress = event.progress(tie);
    if (!progress.held().isEmpty()) {
      return new State(Mark.HELD, "two cards differ");
    }
    if (!tie.stopped().isEmpty()) {
      return new State(Mark.HELD, "play stopped");
    }
    if (progress.finished() && !progress.rubbers().isEmpty()) {
      return new State(Mark.FINAL, progress.winner().map(side -> side(tie, side) + " won").orElse("drawn"));
    }
    if (progress.awaitsDecider()) {
      return tie.isDeciderOpened() ? new State(Mark.PLAYING, "decider") : new State(Mark.HELD, "level: decider to be named");
    }
    if (!tie.calls().isEmpty()) {
      return new State(Mark.PLAYING, "on court");
    }
    if (!progress.rubbers().isEmpty()) {
      return new State(Mark.PLAYING, "being played");
    }
    if (tie.isOpened()) {
      return new State(Mark.OPENED, "sheets opened");
    }
    return beforeOpening(tie);
  }

  private State beforeOpening(Tie tie) {
    VisibleExchange exchange = event.exchange(ExchangeId.sheets(tie.id()));
    boolean home = exchange.home().in();
    boolean away = exchange.away().in();
    if (home && away) {
      return new State(Mark.SEALED, "both sheets in");
    }
    if (home || away) {
      return new State(Mark.SEALED, side(tie, home ? Side.HOME : Side.AWAY) + ": sheet in");
    }
    return exchange.deadline().isPresent() && tie.isReady()
        ? new State(Mark.PLAIN, "sheets until " + Frames.said(event.clock(exchange.deadline().get())))
        : State.NONE;
  }

  /** The card with everything that counts so far. */
  CardView card(Tie tie) {
    TieProgress progress = event.progress(tie);
    List<CardView.Row> rows = new ArrayList<>();
    rubbers(tie).forEach(rubber -> rows.add(row(tie, rubber, progress)));
    return new CardView(
        title(tie), stage(tie) + ", " + when(tie) + (where(tie).isEmpty() ? "" : ", " + where(tie)), state(tie),
        side(tie, Side.HOME), side(tie, Side.AWAY), rows, "Rubbers won",
        progress.rubbers().isEmpty() ? "" : Integer.toString(progress.won(Side.HOME)),
        progress.rubbers().isEmpty() ? "" : Integer.toString(progress.won(Side.AWAY)),
        "Signed for " + side(tie, Side.HOME), "Signed for " + side(tie, Side.AWAY));
  }

  /** The rubbers of the conditions, and the decider once it is needed or the conditions can lead to one. */
  List<RubberNo> rubbers(Tie tie) {
    List<RubberNo> all = new ArrayList<>(RubberNo.upTo(event.conditions().rubbers()));
    if (event.progress(tie).deciderNeeded()) {
      all.add(RubberNo.DECIDER);
    }
    return all;
  }

  static String rubber(RubberNo rubber) {
    return rubber.isDecider() ? "Decider" : "Rubber " + rubber;
  }

  private CardView.Row row(Tie tie, RubberNo rubber, TieProgress progress) {
    Optional<RubberScore> score = progress.rubbers().stream().filter(one -> one.rubber().equals(rubber)).findFirst();
    Optional<Tie.OpenedRubber> pairs = Optional.ofNullable(tie.opened().get(rubber));
    return new CardView.Row(
        rubber(rubber),
        pairs.map(pair -> names(pair.home())).orElse(List.of("", "")),
        pairs.map(pair -> names(pair.away())).orElse(List.of("", "")),
        score.map(one -> points(one, Side.HOME)).orElse(""),
        score.map(one -> points(one, Side.AWAY)).orElse(""),
        score.flatMap(RubberScore::winner).map(side -> side == Side.HOME ? 1 : 2).orElse(0),
        score.map(one -> how(tie, one.how())).orElse(held(tie, rubber)));
  }

  private List<String> names(Optional<Pair> pair) {
    return pair.map(two -> List.of(event.name(two.first()), event.name(two.second()))).orElse(List.of("no pair"));
  }

  private static String points(RubberScore score, Side side) {
    return score.games().stream()
        .map(game -> Integer.toString(side == Side.HOME ? game.home() : game.away()))
        .reduce((one, other) -> one + " " + other)
        .orElse("");
  }

  private String held(Tie tie, RubberNo rubber) {
    if (tie.stopped().containsKey(rubber)) {
      return "stopped since " + Frames.said(event.clock(tie.stopped().get(rubber)));
    }
    return tie.card(rubber).standing() == Card.Standing.HELD ? "held: two cards differ" : "";
  }

  /** How a rubber ended, in words that name the club; empty for one that was simply played. */
  String how(Tie tie, How how) {
    String home = side(tie, Side.HOME);
    String away = side(tie, Side.AWAY);
    return switch (how) {
      case PLAYED -> "";
      case RETIRED_HOME -> home + " retired";
      case RETIRED_AWAY -> away + " retired";
      case WALKOVER_HOME -> "walkover: " + home + " did not play";
      case WALKOVER_AWAY -> "walkover: " + away + " did not play";
      case VOID -> "void";
    };
  }

  static String score(List<Score> games) {
    return games.stream().map(game -> game.home() + "-" + game.away()).reduce((one, other) -> one + ", " + other).orElse("");
  }

  /** The two sheets: covered until both are open. */
  List<SheetView> sheets(Tie tie) {
    return List.of(sheet(tie, Side.HOME), sheet(tie, Side.AWAY));
  }

  private SheetView sheet(Tie tie, Side side) {
    VisibleExchange exchange = event.exchange(ExchangeId.sheets(tie.id()));
    String title = side(tie, side);
    if (tie.isOpened()) {
      List<SheetView.Row> rows = tie.opened().entrySet().stream()
          .map(one -> sheetRow(one.getKey(), one.getValue().pair(side)))
          .toList();
      String at = exchange.openedAt().map(moment -> "opened at " + Frames.said(event.clock(moment))).orElse("");
      return new SheetView(title, new State(Mark.OPENED, "opened"), at, rows, "");
    }
    boolean in = exchange.side(side).in();
    String until = exchange.deadline().map(at -> "both open at " + Frames.said(event.clock(at))).orElse("no time yet");
    return new SheetView(
        title, in ? new State(Mark.SEALED, "in") : new State(Mark.PLAIN, "not in"), until, List.of(), "");
  }

  private SheetView.Row sheetRow(RubberNo rubber, Optional<Pair> pair) {
    return new SheetView.Row(
        rubber(rubber),
        pair.map(two -> event.name(two.first())).orElse("no pair"),
        pair.map(two -> event.name(two.second())).orElse(""),
        "");
  }

  boolean isOf(Tie tie, Optional<ClubId> club) {
    return club.filter(tie::has).isPresent();
  }
}
