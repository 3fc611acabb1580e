package tiewright.lineup;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.event.Notes.captain;
import static tiewright.event.Notes.kept;
import static tiewright.event.Notes.nothing;
import static tiewright.event.Notes.refused;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Event;
import tiewright.event.PlayerId;
import tiewright.event.PlayerWish;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote.Forecast;
import tiewright.event.PrivateNote.PlayerWished;
import tiewright.event.PrivateNote.RubbersPromised;
import tiewright.event.SetUpFact;
import tiewright.event.TieId;

/** What a captain wishes and promises. */
class WishingTest {
    private static final ClubId N = ClubId.of("N");
    private static final TieId A1 = TieId.of("A1");
    private static final PlayerId N1 = PlayerId.of("N1");
    private static final Event DAY = Days.aDay()
            .clubs("N", "S", "W")
            .poolTie("A1", "A", 1, "N", "S")
            .poolTie("A2", "A", 2, "S", "W")
            .event();

    private static Event erased(String time) {
        return Days.aDay()
                .clubs("N", "S", "W")
                .poolTie("A1", "A", 1, "N", "S")
                .at(time)
                .fact(new SetUpFact.DataErased(new TreeMap<>()))
                .event();
    }

    private static PrivateDecision.Outcome asked(PrivateDecision decision) {
        return decision.decide(DAY, nothing("N"), captain("N"));
    }

    @Test
    void a_wish_is_about_one_own_player_in_one_own_tie() {
        for (Optional<PlayerWish> wish :
                List.of(Optional.of(PlayerWish.PLAY), Optional.of(PlayerWish.REST), Optional.<PlayerWish>empty())) {
            assertThat(kept(asked(new WishForTie(A1, N1, wish)))).containsExactly(new PlayerWished(A1, N, N1, wish));
        }
        assertThat(refused(asked(new WishForTie(TieId.of("A2"), PlayerId.of("S1"), Optional.empty()))))
                .containsExactly("notes.not-own-tie", "notes.not-own-player");
        assertThat(refused(asked(new WishForTie(TieId.of("Z9"), N1, Optional.empty()))))
                .containsExactly("notes.not-own-tie");
        assertThat(refused(new WishForTie(A1, N1, Optional.empty()).decide(DAY, nothing("N"), captain("S"))))
                .containsExactly("notes.captain-only");
    }

    @Test
    void a_promise_is_a_number_of_rubbers() {
        assertThat(kept(asked(new PromiseRubbers(N1, 0)))).containsExactly(new RubbersPromised(N1, 0));
        assertThat(kept(asked(new PromiseRubbers(N1, RubbersPromised.MOST)))).hasSize(1);
        assertThat(refused(asked(new PromiseRubbers(N1, -1)))).containsExactly("notes.out-of-range");
        assertThat(refused(asked(new PromiseRubbers(PlayerId.of("W1"), RubbersPromised.MOST + 1))))
                .containsExactly("notes.not-own-player", "notes.out-of-range");
        assertThat(refused(new PromiseRubbers(N1, 1).decide(DAY, nothing("N"), Days.desk())))
                .containsExactly("notes.captain-only");
    }

    @Test
    void forecasts_are_kept_of_own_ties_only() {
        Forecast own = new Forecast(A1, N, Optional.empty(), 0.5, 0, 0);
        KeepForecasts keep = new KeepForecasts(Days.moment("10:00"), List.of(own));
        assertThat(kept(keep.decide(DAY, nothing("N"), KeepForecasts.AUTOMATIC)))
                .containsExactly(own);
        assertThat(refused(keep.decide(DAY, nothing("W"), KeepForecasts.AUTOMATIC)))
                .containsExactly("notes.not-own-tie");
        assertThat(keep.isNeverStale()).isTrue();
    }

    @Test
    void a_forecast_that_comes_after_the_deletion_is_not_kept() {
        KeepForecasts keep =
                new KeepForecasts(Days.moment("10:00"), List.of(new Forecast(A1, N, Optional.empty(), 0.5, 0, 0)));
        assertThat(refused(keep.decide(erased("10:00"), nothing("N"), KeepForecasts.AUTOMATIC)))
                .containsExactly("notes.deleted-since");
        assertThat(kept(keep.decide(erased("09:59"), nothing("N"), KeepForecasts.AUTOMATIC)))
                .as("sheets that opened after a deletion are forecast as ever")
                .hasSize(1);
    }
}
