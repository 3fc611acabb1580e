package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.event.Days.aDay;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TogetherTest {
    private static Decision court(String name) {
        return (event, given) -> event.courts().containsKey(name)
                ? Decision.Refused.because(Refusal.of("test.there").with("court", name))
                : Decision.Accepted.of(new SetUpFact.CourtSet(name, Optional.empty(), Optional.empty(), true));
    }

    @Test
    void each_sees_what_the_ones_before_it_did() {
        assertThat(aDay().codes(new Together(List.of(court("1"), court("1"))))).containsExactly("test.there");
        assertThat(aDay().does(new Together(List.of(court("1"), court("2"))))
                        .event()
                        .courts())
                .containsOnlyKeys("1", "2");
    }

    @Test
    void one_refusal_stops_all_and_every_reason_is_told() {
        Days day = aDay().courts("1", "2");
        Together all = new Together(List.of(court("3"), court("1"), court("2")));
        assertThat(day.refusals(all))
                .extracting(reason -> reason.data().get("court"))
                .containsExactly("1", "2");
    }

    @Test
    void is_stale_when_any_of_them_is() {
        Decision patient = court("1");
        Decision touchy = new Decision() {
            @Override
            public Outcome decide(Event event, Given given) {
                return Accepted.of();
            }

            @Override
            public boolean isStaledBy(Fact fact) {
                return fact.kind() == FactKind.COURT_SET;
            }
        };
        Fact court = new SetUpFact.CourtSet("9", Optional.empty(), Optional.empty(), true);
        assertThat(new Together(List.of(patient)).isStaledBy(court)).isFalse();
        assertThat(new Together(List.of(patient, touchy)).isStaledBy(court)).isTrue();
    }

    @Test
    void it_needs_the_sealed_sheets_that_any_of_them_needs() {
        Decision.SealedRef one = new Decision.SealedRef(ExchangeId.sheets(TieId.of("A1")), ClubId.of("N"));
        Decision.SealedRef other = new Decision.SealedRef(ExchangeId.sheets(TieId.of("A1")), ClubId.of("S"));
        assertThat(new Together(List.of(needing(one), needing(other), court("1"))).needs(Event.empty()))
                .containsExactlyInAnyOrder(one, other);
    }

    private static Decision needing(Decision.SealedRef sheet) {
        return new Decision() {
            @Override
            public Outcome decide(Event event, Given given) {
                return Accepted.of();
            }

            @Override
            public java.util.Set<SealedRef> needs(Event event) {
                return java.util.Set.of(sheet);
            }
        };
    }
}
