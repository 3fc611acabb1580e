package tiewright.rating;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import tiewright.event.PrivateNote;

/**
 * Would the numbers have been right? Games are forecast one stretch of days after another, each from games before the first day of
 * its stretch and from nothing else, and held against what came.
 *
 * @param lines forecasts in the order in which the games were given
 * @param last the assumptions of the last stretch
 */
public record Backtest(List<Line> lines, Assumptions last) {
    public Backtest {
        lines = List.copyOf(lines);
    }

    /**
     * One game.
     *
     * @param chance that the side named first wins it
     * @param match the rubber whose last game this is, where that is known and decided
     * @param byWins 1 where the players named first had won the larger share of their games before, -1 the smaller
     */
    public record Line(PrivateNote.PastGame game, double chance, boolean won, Optional<Whole> match, int byWins) {}

    /** A rubber of several games: the chance of the side named first in the row of the last one, before its first game. */
    public record Whole(double chance, boolean won) {}

    /**
     * When forecasts begin and how often they are made anew.
     *
     * @param from empty = the day of the first game after a third of them
     * @param every days, 1 or more
     */
    public record Stretches(Optional<LocalDate> from, int every) {
        public Stretches {
            if (every < 1) {
                throw new IllegalArgumentException("a stretch of " + every + " days");
            }
        }

        private LocalDate start(List<PrivateNote.PastGame> games) {
            return from.orElseGet(() -> games.stream()
                    .map(PrivateNote.PastGame::date)
                    .sorted()
                    .skip(games.size() / 3)
                    .findFirst()
                    .orElseThrow());
        }

        /** The places of the games to forecast, by the first day of their stretch. */
        private Map<LocalDate, List<Integer>> by(LocalDate start, List<PrivateNote.PastGame> games) {
            Map<LocalDate, List<Integer>> asked = new TreeMap<>();
            for (int i = 0; i < games.size(); i++) {
                long day = ChronoUnit.DAYS.between(start, games.get(i).date());
                if (day >= 0) {
                    asked.computeIfAbsent(start.plusDays(day - day % every), any -> new ArrayList<>())
                            .add(i);
                }
            }
            return asked;
        }
    }

    /** Empty where no game is left to forecast, or none to learn from. */
    public static Optional<Backtest> of(List<PrivateNote.PastGame> games, Stretches stretches, Stated stated) {
        if (games.isEmpty()) {
            return Optional.empty();
        }
        LocalDate start = stretches.start(games);
        Map<LocalDate, List<Integer>> asked = stretches.by(start, games);
        if (asked.isEmpty() || games.stream().noneMatch(game -> game.date().isBefore(start))) {
            return Optional.empty();
        }
        Rubbers rubbers = new Rubbers(games);
        Map<Integer, Line> lines = new TreeMap<>();
        Assumptions last = Assumptions.of(stated, false);
        for (Map.Entry<LocalDate, List<Integer>> stretch : asked.entrySet()) {
            KnownBefore before = KnownBefore.of(games, stretch.getKey(), stated);
            last = before.assumptions();
            stretch.getValue().forEach(i -> lines.put(i, line(games.get(i), before, rubbers.endedAt(i))));
        }
        return Optional.of(new Backtest(List.copyOf(lines.values()), last));
    }

    private static Line line(PrivateNote.PastGame game, KnownBefore before, Optional<Rubbers.Ended> rubber) {
        return new Line(
                game,
                before.chance(game),
                game.score().home() > game.score().away(),
                rubber.map(ended -> new Whole(before.chance(game, ended.bestOf()), ended.homeWon())),
                before.aheadByWins(game));
    }
}
