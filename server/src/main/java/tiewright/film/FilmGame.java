package tiewright.film;

import java.util.List;
import java.util.Optional;
import tiewright.event.RubberNo;
import tiewright.event.TieId;
import tiewright.rating.FilmedGame;
import tiewright.rating.FilmedGame.Served;
import tiewright.scoring.Score;
import tiewright.scoring.SideNo;

/**
 * A filmed game as it was charted.
 *
 * @param tie where it was played, if that was in this event
 * @param card what the notes say stood on the card, side one first
 * @param rallies in the order in which they were played
 */
public record FilmGame(
        String code,
        Optional<TieId> tie,
        Optional<RubberNo> rubber,
        Start start,
        Optional<Score> card,
        List<RallyNote> rallies) {
    public FilmGame {
        rallies = List.copyOf(rallies);
    }

    /** Rally by rally, with the card where there is one. */
    public Replay replay() {
        return card.map(end -> Replay.of(start, rallies, end)).orElseGet(() -> Replay.of(start, rallies));
    }

    /**
     * What the game tells of strengths: how many rallies each side served and won. After an unsure rally the same side is taken to
     * serve, unless the notes say more; nothing counts after the end.
     */
    public FilmedGame counted() {
        Replay replay = replay();
        Served one = Served.NONE;
        Served two = Served.NONE;
        for (Step step : replay.steps()) {
            if (step.isPlayed() && step.winner().isPresent()) {
                SideNo serving = step.serving().orElse(step.seen().serving());
                boolean won = step.winner().get() == serving;
                one = serving == SideNo.ONE ? one.and(won) : one;
                two = serving == SideNo.TWO ? two.and(won) : two;
            }
        }
        Optional<Score> end = replay.isOver() ? Optional.of(replay.score()) : Optional.empty();
        return new FilmedGame(
                tie,
                rubber,
                Optional.empty(),
                start.format(),
                start.pair(SideNo.ONE),
                start.pair(SideNo.TWO),
                card.or(() -> end),
                one,
                two);
    }
}
