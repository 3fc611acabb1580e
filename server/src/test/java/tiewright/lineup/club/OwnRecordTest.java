package tiewright.lineup.club;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Event;
import tiewright.event.How;
import tiewright.event.PrivateNote.Forecast;
import tiewright.event.RubberNo;
import tiewright.event.TieId;
import tiewright.lineup.club.OwnRecord.Scored;
import tiewright.rating.Earlier;

/** What the forecasts of the advice were worth. */
class OwnRecordTest {
    private static final ClubId N = ClubId.of("N");

    /** G. Brier, Monthly Weather Review 78, 1950 (his sum over both classes is double), and the mean log loss, recomputed. */
    @Test
    void scores_as_the_published_definitions_do() {
        OwnRecord record =
                OwnRecord.of(List.of(new Scored(0.7, true, 1), new Scored(0.6, false, -1), new Scored(0.9, true, 0)));
        assertThat(record.brier()).isCloseTo(0.153333, within(1e-6));
        assertThat(record.logLoss()).isCloseTo(0.459442, within(1e-6));
        assertThat(record.called()).isEqualTo(2);
        assertThat(record.rightByRating()).isEqualTo(2);
        assertThat(record.rightByForecast()).isEqualTo(1);
    }

    @Test
    void a_coin_scores_log_two_and_a_quarter() {
        OwnRecord record = OwnRecord.of(List.of(new Scored(0.5, true, 0), new Scored(0.5, false, 0)));
        assertThat(record.logLoss()).isCloseTo(Math.log(2), within(1e-12));
        assertThat(record.brier()).isEqualTo(0.25);
        assertThat(record.called()).isZero();
    }

    @Test
    void bands_hold_each_forecast_once_the_sure_ones_too() {
        OwnRecord record = OwnRecord.of(List.of(
                new Scored(0, false, 0),
                new Scored(0.2, true, 0),
                new Scored(0.39, false, 0),
                new Scored(0.8, true, 0),
                new Scored(1, true, 0)));
        assertThat(record.bands()).extracting(OwnRecord.Band::forecasts).containsExactly(1, 2, 2);
        assertThat(record.bands()).extracting(OwnRecord.Band::won).containsExactly(0, 1, 2);
        assertThat(record.bands()).allSatisfy(band -> assertThat(band.low()).isLessThanOrEqualTo(band.high()));
        assertThat(OwnRecord.of(List.of()).bands()).isEmpty();
    }

    @Test
    void an_opening_makes_a_forecast_of_the_tie_and_of_each_rubber() {
        Event event = Days.oneTie().opened("A1").event();
        List<Forecast> forecasts = Forecasts.of(
                event,
                event.tie(TieId.of("A1")).orElseThrow(),
                ClubKnows.of(N, List.of(), Earlier.of(List.of())),
                false);
        assertThat(forecasts)
                .extracting(Forecast::part)
                .containsExactly(
                        Optional.empty(),
                        Optional.of(RubberNo.of(1)),
                        Optional.of(RubberNo.of(2)),
                        Optional.of(RubberNo.of(3)),
                        Optional.of(RubberNo.of(4)));
        assertThat(forecasts)
                .allSatisfy(forecast -> assertThat(forecast.chance()).isCloseTo(0.5, within(1e-9)));
        assertThat(forecasts.get(0).givenAway()).isCloseTo(0, within(1e-9));
    }

    @Test
    void only_what_was_played_is_scored() {
        Event event = Days.oneTie()
                .opened("A1")
                .cards("A1", "11-2", "3-11")
                .card("A1", "3", "11-0", How.WALKOVER_AWAY)
                .event();
        assertThat(scored(event, "1")).contains(new Scored(0.6, true, 1));
        assertThat(scored(event, "2")).contains(new Scored(0.6, false, 1));
        assertThat(scored(event, "3")).isEmpty();
        assertThat(scored(event, "4")).isEmpty();
        assertThat(OwnRecord.scored(event, N, new Forecast(TieId.of("A1"), N, Optional.empty(), 0.6, 1, 0)))
                .isEmpty();
    }

    private static Optional<Scored> scored(Event event, String rubber) {
        return OwnRecord.scored(event, N, new Forecast(TieId.of("A1"), N, RubberNo.parse(rubber), 0.6, 1, 0));
    }
}
