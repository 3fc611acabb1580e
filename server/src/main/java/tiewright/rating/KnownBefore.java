package tiewright.rating;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import tiewright.event.OfRubber;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;

/** What was known on the morning of a day: strengths by the games before it, and who had won how many of them. */
final class KnownBefore {
    private final Strengths strengths;
    private final Map<PlayerId, Played> played = new HashMap<>();

    private record Played(int games, int won) {}

    private KnownBefore(Strengths strengths) {
        this.strengths = strengths;
    }

    static KnownBefore of(List<PrivateNote.PastGame> games, LocalDate day, Stated stated) {
        List<PastGame> known = games.stream()
                .filter(game -> game.date().isBefore(day))
                .flatMap(game -> Gathering.brought(game).stream())
                .toList();
        Ageing ageing = new Ageing(day, OptionalInt.empty());
        Evidence evidence = new Evidence(List.of(), known, List.of(), ageing, stated);
        KnownBefore before = new KnownBefore(Rating.fit(Prior.none(), evidence));
        known.forEach(before::count);
        return before;
    }

    private void count(PastGame game) {
        boolean homeWon = game.score().home() > game.score().away();
        game.home().players().forEach(player -> count(player, homeWon));
        game.away().players().forEach(player -> count(player, !homeWon));
    }

    private void count(PlayerId player, boolean won) {
        played.merge(
                player,
                new Played(1, won ? 1 : 0),
                (one, other) -> new Played(one.games() + other.games(), one.won() + other.won()));
    }

    Assumptions assumptions() {
        return strengths.assumptions();
    }

    /** Chance that the side named first wins this game; one of a rubber of several shares with the others what it shares. */
    double chance(PrivateNote.PastGame game) {
        Estimate edge = edge(game);
        boolean several = game.rubber().filter(OfRubber::hasSeveralGames).isPresent();
        double sd = several ? Math.hypot(edge.sd(), assumptions().shared()) : edge.sd();
        return strengths.chance(game.format(), 1, Estimate.of(edge.mean(), sd));
    }

    /** Chance that the side named first wins the whole rubber, before its first game. */
    double chance(PrivateNote.PastGame game, int bestOf) {
        return bestOf == 1 ? chance(game) : strengths.chance(game.format(), bestOf, edge(game));
    }

    private Estimate edge(PrivateNote.PastGame game) {
        return strengths.on(game.date()).edge(Rubbers.home(game), Rubbers.away(game));
    }

    /** Which side had won the larger share of its games: 1 home, -1 away, 0 where they are level. */
    int aheadByWins(PrivateNote.PastGame game) {
        return Double.compare(share(Rubbers.home(game)), share(Rubbers.away(game)));
    }

    /** A half where none was played. */
    private double share(Pair pair) {
        Played both = pair.players().stream()
                .map(player -> played.getOrDefault(player, new Played(0, 0)))
                .reduce(
                        new Played(0, 0),
                        (one, other) -> new Played(one.games() + other.games(), one.won() + other.won()));
        return both.games() == 0 ? 0.5 : (double) both.won() / both.games();
    }
}
