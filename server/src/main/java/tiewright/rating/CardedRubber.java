package tiewright.rating;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.event.Event;
import tiewright.event.How;
import tiewright.event.Pair;
import tiewright.event.RubberNo;
import tiewright.event.SameGame;
import tiewright.event.SetUpFact;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

/**
 * A rubber of the day with both pairs known.
 *
 * @param scores of its games, home points first; none before it was played to its end
 */
record CardedRubber(
        TieId tie, RubberNo rubber, LocalDate date, Pair home, Pair away, List<Score> scores, Format format) {
    /** In the order of the ties. */
    static List<CardedRubber> of(Event event) {
        return event.ties().values().stream()
                .flatMap(tie -> of(event, tie, day(event)))
                .toList();
    }

    /** The day of the event; an event that was not described yet has one that is nobody's. */
    static LocalDate day(Event event) {
        return event.about().map(SetUpFact.EventDescribed::date).orElse(LocalDate.EPOCH);
    }

    private static Stream<CardedRubber> of(Event event, Tie tie, LocalDate date) {
        return tie.opened().entrySet().stream()
                .filter(opened -> opened.getValue().home().isPresent()
                        && opened.getValue().away().isPresent())
                .map(opened -> new CardedRubber(
                        tie.id(),
                        opened.getKey(),
                        date,
                        opened.getValue().home().get(),
                        opened.getValue().away().get(),
                        scores(tie, opened.getKey()),
                        opened.getKey().isDecider()
                                ? event.conditions().deciderScoring()
                                : event.conditions().scoring()));
    }

    private static List<Score> scores(Tie tie, RubberNo rubber) {
        return tie.card(rubber)
                .score(rubber)
                .filter(any -> any.how() == How.PLAYED)
                .map(any -> any.games())
                .orElse(List.of());
    }

    /** What each of its games is known by. */
    List<SameGame> same() {
        return scores.stream()
                .map(score -> SameGame.of(date, home, away, score))
                .toList();
    }

    /** Where the notes of a film name the rubber it is that; where they name the tie alone, the one with its pairs. */
    boolean isOn(FilmedGame film) {
        return film.tie().equals(Optional.of(tie))
                && film.rubber().map(rubber::equals).orElseGet(() -> film.isBetween(home, away));
    }
}
