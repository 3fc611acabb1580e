package tiewright.film;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import tiewright.event.ClubId;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.RubberScore;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.scoring.Awarded;
import tiewright.scoring.Format;
import tiewright.scoring.Score;
import tiewright.scoring.SideNo;

/**
 * The score that counts for a rubber, as seen from a filmed game of it.
 *
 * @param games of the rubber, side one of the film first; a film is of one of them
 * @param retirer the side that did not go on
 */
public record OnCard(List<Score> games, Optional<SideNo> retirer) {
    static final OnCard NOTHING = new OnCard(List.of(), Optional.empty());

    public OnCard {
        games = List.copyOf(games);
    }

    /**
     * Turns the score round where side one of the film is the away side: by the pairs that were named, else by the clubs.
     *
     * @param score home side first
     */
    public static OnCard of(
            FilmGame film, Optional<Tie> tie, RubberScore score, Function<PlayerId, Optional<ClubId>> clubOf) {
        boolean turned = tie.isPresent() && isTurned(film, tie.get(), clubOf);
        Optional<SideNo> retirer = score.how().isRetirement()
                ? score.how()
                        .missing()
                        .map(side -> side == Side.HOME ? SideNo.ONE : SideNo.TWO)
                        .map(side -> turned ? side.other() : side)
                : Optional.empty();
        return new OnCard(
                score.games().stream()
                        .map(game -> turned ? game.swapped() : game)
                        .toList(),
                retirer);
    }

    private static boolean isTurned(FilmGame film, Tie tie, Function<PlayerId, Optional<ClubId>> clubOf) {
        Optional<Tie.OpenedRubber> named =
                film.rubber().flatMap(rubber -> Optional.ofNullable(tie.opened().get(rubber)));
        Pair one = film.start().pair(SideNo.ONE);
        Pair two = film.start().pair(SideNo.TWO);
        if (named.flatMap(Tie.OpenedRubber::home).filter(one::equals).isPresent()
                || named.flatMap(Tie.OpenedRubber::away).filter(two::equals).isPresent()) {
            return false;
        }
        if (named.flatMap(Tie.OpenedRubber::home).filter(two::equals).isPresent()
                || named.flatMap(Tie.OpenedRubber::away).filter(one::equals).isPresent()) {
            return true;
        }
        return clubOf.apply(one.first())
                .flatMap(tie::sideOf)
                .filter(side -> side == Side.AWAY)
                .isPresent();
    }

    /** Rallies that lead to this score fit what counts: as it is, or made up for the side that goes on after a retirement. */
    boolean fits(Format format, Score rallies) {
        return games.contains(rallies)
                || retirer.isPresent()
                        && !format.isOver(rallies)
                        && games.contains(Awarded.lifted(format, rallies, retirer.get()));
    }
}
