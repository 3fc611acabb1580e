package tiewright.lineup.club;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.How;
import tiewright.event.PrivateNote.Forecast;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.lineup.order.Habit;

/**
 * How good the forecasts for one club were, once it is known how it went.
 *
 * @param scored forecasts with a result
 * @param logLoss mean of minus the natural log of the chance given to what happened; a coin has log 2 = 0.693
 * @param brier mean squared distance of the chance from what happened, 1 or 0; a coin has 0.25
 * @param bands the forecasts in five bands of chance, empty ones left out
 * @param called where the captain's own ratings put somebody ahead
 * @param rightByRating of these, won by whom they put ahead
 * @param rightByForecast of these, won by whom the forecast put ahead
 */
public record OwnRecord(
        int scored,
        double logLoss,
        double brier,
        List<Band> bands,
        int called,
        int rightByRating,
        int rightByForecast) {
    /** Below this a score says nothing. */
    public static final int ENOUGH = 30;

    private static final int BANDS = 5;
    private static final double LEAST = 1e-9; // what was called impossible and happened costs 20.7, not everything

    public OwnRecord {
        bands = List.copyOf(bands);
    }

    /** A forecast and how it went. */
    public record Scored(double chance, boolean won, int byRating) {}

    /**
     * Forecasts of chances from {@code from} to {@code to}.
     *
     * @param low lower end of the exact 95 % interval of the share won (Clopper and Pearson)
     */
    public record Band(double from, double to, int forecasts, double meanChance, int won, double low, double high) {}

    public static OwnRecord of(List<Scored> forecasts) {
        double log = 0;
        double brier = 0;
        for (Scored one : forecasts) {
            log += logLoss(one);
            brier += Math.pow(one.chance() - (one.won() ? 1 : 0), 2);
        }
        int count = Math.max(1, forecasts.size());
        List<Scored> called =
                forecasts.stream().filter(one -> one.byRating() != 0).toList();
        int byRating = (int)
                called.stream().filter(one -> one.won() == one.byRating() > 0).count();
        int byForecast = (int) called.stream()
                .filter(one -> one.chance() != 0.5 && one.won() == one.chance() > 0.5)
                .count();
        return new OwnRecord(
                forecasts.size(), log / count, brier / count, bands(forecasts), called.size(), byRating, byForecast);
    }

    static double logLoss(Scored one) {
        return -Math.log(Math.max(LEAST, one.won() ? one.chance() : 1 - one.chance()));
    }

    private static List<Band> bands(List<Scored> forecasts) {
        List<Band> bands = new ArrayList<>();
        for (int i = 0; i < BANDS; i++) {
            double from = (double) i / BANDS;
            double to = (i + 1.0) / BANDS;
            boolean last = i == BANDS - 1;
            List<Scored> in = forecasts.stream()
                    .filter(one -> one.chance() >= from && (one.chance() < to || last))
                    .toList();
            if (!in.isEmpty()) {
                int won = (int) in.stream().filter(Scored::won).count();
                Habit share = new Habit(won, in.size());
                bands.add(new Band(
                        from,
                        to,
                        in.size(),
                        in.stream().mapToDouble(Scored::chance).average().orElseThrow(),
                        won,
                        share.low(),
                        share.high()));
            }
        }
        return bands;
    }

    /** How a forecast went; empty while it is open, and where nothing was played to its end. */
    public static Optional<Scored> scored(Event event, ClubId club, Forecast forecast) {
        return event.tie(forecast.tie())
                .flatMap(tie -> tie.sideOf(club)
                        .flatMap(side -> winner(event, tie, forecast)
                                .map(winner -> new Scored(forecast.chance(), winner == side, forecast.byRating()))));
    }

    private static Optional<Side> winner(Event event, Tie tie, Forecast forecast) {
        if (forecast.part().isEmpty()) {
            return event.progress(tie).winner();
        }
        return tie.card(forecast.part().get())
                .score(forecast.part().get())
                .filter(score -> score.how() == How.PLAYED)
                .flatMap(score -> score.winner());
    }
}
