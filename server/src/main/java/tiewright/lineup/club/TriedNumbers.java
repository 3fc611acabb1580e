package tiewright.lineup.club;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.rating.Assumptions;
import tiewright.rating.Backtest;
import tiewright.rating.Stated;

/**
 * Would these numbers have been right for a club? Earlier games that it knows, each forecast from games before it alone.
 *
 * @param all of them
 * @param ours those in which one of its players played
 * @param given earlier games there are
 * @param last what was assumed of the spreads for the last of them
 */
public record TriedNumbers(How all, How ours, int given, Assumptions last) {
    /** The latest: more take long and tell next to nothing more. */
    static final int MOST_GAMES = 500;

    private static final int STRETCHES = 8;
    private static final int LEAST_DAYS = 7;

    /** How it went. */
    public record How(OwnRecord record, AgainstCoin coin) {
        private static How of(List<OwnRecord.Scored> forecasts) {
            return new How(OwnRecord.of(forecasts), AgainstCoin.of(forecasts));
        }

        public AgainstCoin.Verdict verdict() {
            return coin.verdict(record.scored());
        }
    }

    /**
     * @param own the players of the club
     * @return empty where no game is left to forecast, or none to learn from
     */
    public static Optional<TriedNumbers> of(List<PrivateNote.PastGame> games, Set<PlayerId> own) {
        List<PrivateNote.PastGame> latest = games.stream()
                .sorted(Comparator.comparing(PrivateNote.PastGame::date).reversed())
                .limit(MOST_GAMES)
                .toList();
        return Backtest.of(latest, new Backtest.Stretches(Optional.empty(), days(latest)), Stated.nothing())
                .map(tried -> {
                    List<OwnRecord.Scored> all = new ArrayList<>();
                    List<OwnRecord.Scored> ours = new ArrayList<>();
                    for (Backtest.Line line : tried.lines()) {
                        OwnRecord.Scored scored = new OwnRecord.Scored(line.chance(), line.won(), line.byWins());
                        all.add(scored);
                        if (isOurs(line.game(), own)) {
                            ours.add(scored);
                        }
                    }
                    return new TriedNumbers(How.of(all), How.of(ours), games.size(), tried.last());
                });
    }

    /** Forecasts are made anew some eight times. */
    private static int days(List<PrivateNote.PastGame> latestFirst) {
        if (latestFirst.isEmpty()) {
            return LEAST_DAYS;
        }
        long span = ChronoUnit.DAYS.between(
                latestFirst.get(latestFirst.size() - 1).date(),
                latestFirst.get(0).date());
        return (int) Math.max(LEAST_DAYS, span / STRETCHES);
    }

    private static boolean isOurs(PrivateNote.PastGame game, Set<PlayerId> own) {
        return Stream.of(game.home1(), game.home2(), game.away1(), game.away2())
                .anyMatch(player -> own.stream().anyMatch(one -> one.code().equals(player)));
    }
}
