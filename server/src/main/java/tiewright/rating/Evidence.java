package tiewright.rating;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import tiewright.event.Event;

/**
 * What the ratings are made from, each game once: final scores, and rallies of filmed games.
 *
 * @param cards games of the day of which only the final score is known
 * @param earlier games of earlier days of which only the final score is known
 * @param films games with their rallies; none of them is among the others
 * @param stated what of the assumptions is stated
 */
public record Evidence(
        List<PastGame> cards, List<PastGame> earlier, List<FilmedGame> films, Ageing ageing, Stated stated) {
    public Evidence {
        cards = List.copyOf(cards);
        earlier = List.copyOf(earlier);
        films = List.copyOf(films);
    }

    /** Without a card of the day, the assumptions as plain as can be. */
    public Evidence(List<PastGame> games, List<FilmedGame> films, Ageing ageing) {
        this(List.of(), games, films, ageing, Stated.plain());
    }

    /** Final scores only, all counting the same. */
    public static Evidence of(List<PastGame> games) {
        return new Evidence(games, List.of(), Ageing.none());
    }

    /**
     * Everything known at this moment: earlier games, the cards of today that count, and film, which stands for the score of
     * the same game.
     */
    public static Evidence of(Event event, Earlier earlier, Ageing ageing) {
        return Gathering.of(event, earlier, ageing);
    }

    /** The day of the event, from which the age of a game is counted; without one every game counts the same. */
    public static Ageing ageing(Event event, OptionalInt halfLife) {
        return event.about().map(about -> new Ageing(about.date(), halfLife)).orElse(Ageing.none());
    }

    /** Every game of which only the final score is known, those of the day first. */
    public List<PastGame> games() {
        return Stream.concat(cards.stream(), earlier.stream()).toList();
    }

    /** The day of the event, or that of the last game if it is later. */
    LocalDate latest() {
        return Stream.concat(
                        Stream.of(ageing.today()),
                        Stream.concat(
                                games().stream().map(PastGame::date),
                                films.stream().flatMap(film -> film.played().stream())))
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** So many of the games, the latest of which only the score is known, then films. */
    Evidence latest(int most) {
        List<PastGame> games = games().stream()
                .sorted(Comparator.comparing(PastGame::date).reversed())
                .limit(most)
                .toList();
        List<FilmedGame> filmed =
                films.stream().limit(most - (long) games.size()).toList();
        return new Evidence(List.of(), games, filmed, ageing, stated);
    }

    double weight(LocalDate played) {
        return ageing.weight(played);
    }

    /** Games, each once. */
    public int size() {
        return cards.size() + earlier.size() + films.size();
    }

    /** Rallies seen on film. */
    public int rallies() {
        return films.stream().mapToInt(FilmedGame::rallies).sum();
    }

    public Basis basis() {
        return new Basis(cards.size(), earlier.size(), films.size(), rallies());
    }
}
