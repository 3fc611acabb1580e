package tiewright.rating;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Codes;
import tiewright.event.Event;
import tiewright.event.How;
import tiewright.event.Pair;
import tiewright.event.PrivateNote;
import tiewright.event.RubberNo;
import tiewright.event.SetUpFact;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.scoring.Format;
import tiewright.scoring.Legality;
import tiewright.scoring.Score;

/**
 * Brings the evidence together. Left out is what was not played to its end, what cannot be a game of four people under its
 * format, and the score of a game that is there on film.
 */
final class Gathering {
  private final List<FilmedGame> unmatched = new ArrayList<>();
  private final List<FilmedGame> films = new ArrayList<>();
  private final List<PastGame> games = new ArrayList<>();
  private final LocalDate today;

  private Gathering(List<FilmedGame> films, LocalDate today) {
    films.stream().filter(film -> film.rallies() > 0).forEach(unmatched::add);
    this.today = today;
  }

  static Evidence of(Event event, Earlier earlier, Ageing ageing) {
    LocalDate today = event.about().map(SetUpFact.EventDescribed::date).orElse(ageing.today());
    Gathering gathering = new Gathering(earlier.films(), today);
    event.ties().values().forEach(tie -> gathering.today(event, tie));
    earlier.results().forEach(game -> brought(game).ifPresent(gathering::earlier));
    gathering.unmatched.forEach(film -> gathering.films.add(film.played().isPresent() ? film : film.on(today)));
    return new Evidence(gathering.games, gathering.films, ageing);
  }

  private void today(Event event, Tie tie) {
    tie.opened().forEach((rubber, opened) -> {
      if (opened.home().isPresent() && opened.away().isPresent()) {
        Pair home = opened.home().get();
        List<Score> scores = new ArrayList<>(tie.card(rubber).score(rubber).filter(any -> any.how() == How.PLAYED)
            .map(any -> any.games()).orElse(List.of()));
        filmed(tie.id(), rubber, home, opened.away().get()).forEach(film -> {
          scores.stream().filter(score -> film.reads(home, score)).findFirst().or(() -> scores.stream().findFirst())
              .ifPresent(scores::remove);
          take(film, today);
        });
        scores.forEach(score ->
            game(today, home, opened.away().get(), score, format(event, rubber)).ifPresent(games::add));
      }
    });
  }

  /** The films of a rubber; where the notes name the tie alone, those with its pairs. */
  private List<FilmedGame> filmed(TieId tie, RubberNo rubber, Pair home, Pair away) {
    return unmatched.stream()
        .filter(film -> film.tie().filter(tie::equals).isPresent())
        .filter(film -> film.rubber().map(rubber::equals).orElseGet(() -> film.isBetween(home, away)))
        .toList();
  }

  /** A film without a tie is of an earlier game if that has the same pairs and score. */
  private void earlier(PastGame game) {
    Optional<FilmedGame> film = unmatched.stream()
        .filter(any -> any.tie().isEmpty() && any.isBetween(game.home(), game.away()) && any.reads(game.home(), game.score()))
        .findFirst();
    film.ifPresentOrElse(same -> take(same, game.date()), () -> games.add(game));
  }

  private void take(FilmedGame film, LocalDate day) {
    unmatched.remove(film);
    films.add(film.on(day));
  }

  private static Optional<PastGame> brought(PrivateNote.PastGame game) {
    List<String> names = List.of(game.home1(), game.home2(), game.away1(), game.away2());
    if (!names.stream().allMatch(Codes::isCode) || names.stream().distinct().count() < names.size()) {
      return Optional.empty();
    }
    return game(
        game.date(), Pair.of(game.home1(), game.home2()), Pair.of(game.away1(), game.away2()), game.score(), game.format());
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
