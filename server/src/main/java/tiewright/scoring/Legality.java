package tiewright.scoring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.scoring.ScoreFault.Kind;

/**
 * Which scores can be: of a finished game, of a game cut short by a retirement, of a rubber of several games.
 *
 * <p>A finished game is legal when the winner has exactly the points that end the game against the loser's points. That is the set
 * of final scores that play can reach, in side-out and rally scoring alike; serve-last leaves it as it is, because the side at
 * game point only has to win the serve first.
 */
public final class Legality {
    private Legality() {}

    /** Can a game end so? Empty = yes. */
    public static Optional<ScoreFault> game(Format format, Score score) {
        int winner = Math.max(score.home(), score.away());
        int loser = Math.min(score.home(), score.away());
        Optional<ScoreFault> tooLong = pastTheEnd(format, score);
        if (tooLong.isPresent()) {
            return tooLong;
        }
        if (winner == loser) {
            return fault(Kind.LEVEL, score, format.target());
        }
        if (winner < format.target()) {
            return fault(Kind.NOBODY_REACHED_TARGET, score, format.target());
        }
        int needed = format.winningScoreAgainst(loser);
        return winner == needed ? Optional.empty() : fault(Kind.NOT_TWO_AHEAD, score, needed);
    }

    /** Can an unfinished game stand so, when somebody retires? Empty = yes. */
    public static Optional<ScoreFault> retired(Format format, Score asItStood) {
        Optional<ScoreFault> tooLong = pastTheEnd(format, asItStood);
        if (tooLong.isPresent() || !format.isOver(asItStood)) {
            return tooLong;
        }
        return fault(Kind.ALREADY_WON, asItStood, Math.max(asItStood.home(), asItStood.away()));
    }

    /** Points that nobody can have because the game was over before: also the loser's share of it. */
    private static Optional<ScoreFault> pastTheEnd(Format format, Score score) {
        int leader = Math.max(score.home(), score.away());
        int other = Math.min(score.home(), score.away());
        if (leader > format.mostPoints()) {
            return fault(format.byOne() ? Kind.WENT_ON_TOO_LONG : Kind.OVER_CAP, score, format.mostPoints());
        }
        if (!format.isOpenEnded() && other >= format.mostPoints()) { // level at the end: the other side had won before
            return fault(Kind.WENT_ON_TOO_LONG, score, format.mostPoints());
        }
        int end = format.winningScoreAgainst(other);
        return leader > end ? fault(Kind.WENT_ON_TOO_LONG, score, end) : Optional.empty();
    }

    /**
     * Can a rubber of one or more games end so? Every fault, games in order; empty = yes.
     *
     * @param bestOf games in a rubber, odd; the first side with the majority wins and no game follows
     */
    public static List<ScoreFault> rubber(Format format, int bestOf, List<Score> games) {
        List<ScoreFault> faults = new ArrayList<>();
        Tally tally = new Tally(bestOf);
        for (Score game : games) {
            int number = tally.played() + 1;
            game(format, game).map(found -> found.inGame(number)).ifPresent(faults::add);
            tally.add(game).ifPresent(faults::add);
        }
        boolean winnerUnknown = faults.stream().anyMatch(found -> found.kind() == Kind.LEVEL);
        if (!tally.isDecided() && !winnerUnknown) {
            faults.add(new ScoreFault(Kind.TOO_FEW_GAMES, games.size() + 1, new Score(0, 0), tally.missing()));
        }
        return List.copyOf(faults);
    }

    /**
     * Can a rubber stand so when somebody retires? All games but the last are finished, the last may be, and nobody has the majority yet.
     * Every fault; empty = yes.
     */
    public static List<ScoreFault> retiredRubber(Format format, int bestOf, List<Score> asItStood) {
        List<ScoreFault> faults = new ArrayList<>();
        Tally tally = new Tally(bestOf);
        for (Score game : asItStood) {
            int number = tally.played() + 1;
            boolean cutShort = number == asItStood.size() && !format.isOver(game);
            (cutShort ? retired(format, game) : game(format, game))
                    .map(found -> found.inGame(number))
                    .ifPresent(faults::add);
            (cutShort ? tally.addUnfinished(game) : tally.add(game)).ifPresent(faults::add);
        }
        if (tally.isDecided() && faults.isEmpty()) {
            Score last = asItStood.get(asItStood.size() - 1);
            faults.add(new ScoreFault(Kind.ALREADY_WON, asItStood.size(), last, Math.max(last.home(), last.away())));
        }
        return List.copyOf(faults);
    }

    /**
     * Can a table hold these games for a rubber that {@code retirer} did not finish? Either as it stood, or made up to a
     * finished rubber that the other side wins (see {@link Awarded#lifted}). Every fault; empty = yes.
     */
    public static List<ScoreFault> retiredForTheTable(Format format, int bestOf, List<Score> games, SideNo retirer) {
        if (retiredRubber(format, bestOf, games).isEmpty()) {
            return List.of();
        }
        List<ScoreFault> faults = rubber(format, bestOf, games);
        int wonByRetirer = (int) games.stream()
                .filter(game -> retirer.pointsIn(game) > retirer.other().pointsIn(game))
                .count();
        if (faults.isEmpty() && wonByRetirer > bestOf / 2) {
            return List.of(
                    new ScoreFault(Kind.RETIRER_AHEAD_AT_END, games.size(), games.get(games.size() - 1), wonByRetirer));
        }
        return faults;
    }

    private static Optional<ScoreFault> fault(Kind kind, Score score, int number) {
        return Optional.of(new ScoreFault(kind, 1, score, number));
    }
}
