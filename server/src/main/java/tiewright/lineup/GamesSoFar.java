package tiewright.lineup;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.event.Codes;
import tiewright.event.Event;
import tiewright.event.How;
import tiewright.event.Pair;
import tiewright.event.PrivateNote;
import tiewright.event.RubberNo;
import tiewright.event.RubberScore;
import tiewright.event.Tie;
import tiewright.rating.PastGame;
import tiewright.scoring.Format;
import tiewright.scoring.Legality;
import tiewright.scoring.Score;

/**
 * The games that tell something of strengths: those brought along and those finished in this event. Left out is what was not
 * played to its end, and what cannot be a game of four people under its format.
 */
final class GamesSoFar {
  private GamesSoFar() {}

  static List<PastGame> of(Event event, List<PrivateNote.PastGame> past) {
    List<PastGame> games = new ArrayList<>();
    past.forEach(game -> brought(game).ifPresent(games::add));
    event.about().ifPresent(about -> event.ties().values().forEach(tie -> played(event, tie, about.date(), games)));
    return games;
  }

  private static Optional<PastGame> brought(PrivateNote.PastGame game) {
    List<String> names = List.of(game.home1(), game.home2(), game.away1(), game.away2());
    if (!names.stream().allMatch(Codes::isCode) || names.stream().distinct().count() < names.size()) {
      return Optional.empty();
    }
    return game(
        game.date(), Pair.of(game.home1(), game.home2()), Pair.of(game.away1(), game.away2()), game.score(), game.format());
  }

  private static void played(Event event, Tie tie, LocalDate date, List<PastGame> games) {
    tie.opened().forEach((rubber, opened) -> {
      Optional<RubberScore> score = tie.card(rubber).score(rubber).filter(any -> any.how() == How.PLAYED);
      if (opened.home().isPresent() && opened.away().isPresent()) {
        Stream<Score> scores = score.stream().flatMap(any -> any.games().stream());
        scores.forEach(points ->
            game(date, opened.home().get(), opened.away().get(), points, format(event, rubber)).ifPresent(games::add));
      }
    });
  }

  private static Format format(Event event, RubberNo rubber) {
    return rubber.isDecider() ? event.conditions().deciderScoring() : event.conditions().scoring();
  }

  private static Optional<PastGame> game(LocalDate date, Pair home, Pair away, Score score, Format format) {
    boolean ended = Legality.game(format, score).isEmpty();
    boolean apart = !home.has(away.first()) && !home.has(away.second());
    return ended && apart ? Optional.of(new PastGame(date, home, away, score, format)) : Optional.empty();
  }
}
