package tiewright.rating;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Codes;
import tiewright.event.Event;
import tiewright.event.OfRubber;
import tiewright.event.Pair;
import tiewright.event.PrivateNote;
import tiewright.event.SameGame;
import tiewright.scoring.Format;
import tiewright.scoring.Legality;
import tiewright.scoring.Score;

/**
 * Brings the evidence together, each game once. Left out is what was not played to its end, what cannot be a game of four people
 * under its format, the score of a game that is there on film, and an earlier game that is in truth one of a card of the day.
 */
final class Gathering {
    private final List<FilmedGame> unmatched = new ArrayList<>();
    private final List<FilmedGame> films = new ArrayList<>();
    private final List<PastGame> cards = new ArrayList<>();
    private final List<PastGame> before = new ArrayList<>();
    private final List<SameGame> ofToday = new ArrayList<>();
    private final LocalDate today;

    private Gathering(List<FilmedGame> films, LocalDate today) {
        films.stream().filter(film -> film.rallies() > 0).forEach(unmatched::add);
        this.today = today;
    }

    static Evidence of(Event event, Earlier earlier, Ageing ageing) {
        Gathering gathering = new Gathering(earlier.films(), CardedRubber.day(event));
        CardedRubber.of(event).forEach(gathering::today);
        SameGame.beyond(gathering.ofToday, earlier.results(), SameGame::of)
                .forEach(game -> brought(game).ifPresent(gathering::earlier));
        gathering.unmatched.forEach(
                film -> gathering.films.add(film.played().isPresent() ? film : film.on(gathering.today)));
        return new Evidence(gathering.cards, gathering.before, gathering.films, ageing, earlier.stated());
    }

    private void today(CardedRubber rubber) {
        List<Score> scores = new ArrayList<>(rubber.scores());
        ofToday.addAll(rubber.same());
        unmatched.stream().filter(rubber::isOn).toList().forEach(film -> {
            scores.stream()
                    .filter(score -> film.reads(rubber.home(), score))
                    .findFirst()
                    .or(() -> scores.stream().findFirst())
                    .ifPresentOrElse(scores::remove, () -> film.same(today).ifPresent(ofToday::add));
            take(film, today);
        });
        Optional<String> together = rubber.scores().size() > 1
                ? Optional.of("card " + rubber.tie() + " " + rubber.rubber())
                : Optional.empty();
        scores.forEach(score -> game(today, rubber.home(), rubber.away(), score, rubber.format())
                .map(game -> game.in(together))
                .ifPresent(cards::add));
    }

    /** A film of an earlier game has the same pairs and score; one that names a tie can only be of the day. */
    private void earlier(PastGame game) {
        Optional<FilmedGame> film = unmatched.stream()
                .filter(any -> any.tie().isEmpty() || game.date().equals(today))
                .filter(any -> any.isBetween(game.home(), game.away()) && any.reads(game.home(), game.score()))
                .findFirst();
        film.ifPresentOrElse(same -> take(same, game.date()), () -> before.add(game));
    }

    private void take(FilmedGame film, LocalDate day) {
        unmatched.remove(film);
        films.add(film.on(day));
    }

    /** A game as evidence; empty where it is none. */
    static Optional<PastGame> brought(PrivateNote.PastGame game) {
        List<String> names = List.of(game.home1(), game.home2(), game.away1(), game.away2());
        if (!names.stream().allMatch(Codes::isCode) || names.stream().distinct().count() < names.size()) {
            return Optional.empty();
        }
        return game(game.date(), Rubbers.home(game), Rubbers.away(game), game.score(), game.format())
                .map(one -> one.in(game.rubber()
                        .filter(OfRubber::hasSeveralGames)
                        .map(rubber -> game.date() + " " + rubber.match())));
    }

    private static Optional<PastGame> game(LocalDate date, Pair home, Pair away, Score score, Format format) {
        boolean ended = Legality.game(format, score).isEmpty();
        boolean apart = !home.has(away.first()) && !home.has(away.second());
        return ended && apart ? Optional.of(new PastGame(date, home, away, score, format)) : Optional.empty();
    }
}
