package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Fact;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.event.SetUpFact.ClubEntered;

/** Every part of a fact is in the sum, so that no letter of it can change unseen. */
class FactSumTest {
    private static final Fact NORTH = club("North");
    private static final Actor DESK =
            new Actor(Role.DESK, Optional.of(ClubId.of("N")), "desk", "phone", Optional.of("L"));
    private static final Optional<Instant> THERE = Optional.of(Instant.EPOCH);
    private static final Recorded FACT = new Recorded(1, NORTH, DESK, THERE, Asked.NINE);

    private static Fact club(String name) {
        return new ClubEntered(ClubId.of("N"), name, Optional.empty(), OptionalInt.empty());
    }

    private static Recorded by(Role role, String club, String name, String device, String link) {
        Actor actor = new Actor(
                role,
                Optional.of(club).filter(code -> !code.isEmpty()).map(ClubId::of),
                name,
                device,
                Optional.of(link).filter(one -> !one.isEmpty()));
        return new Recorded(1, NORTH, actor, THERE, Asked.NINE);
    }

    @Test
    void the_same_fact_adds_up_to_the_same() {
        assertThat(FactSum.NONE.then(by(Role.DESK, "N", "desk", "phone", "L"))).isEqualTo(FactSum.NONE.then(FACT));
        assertThat(FactSum.NONE.then(FACT).facts()).isEqualTo(1);
        assertThat(FactSum.NONE.then(FACT).then(FACT).hex())
                .isNotEqualTo(FactSum.NONE.then(FACT).hex())
                .matches("[0-9a-f]{64}");
    }

    @Test
    void each_part_of_a_fact_makes_another_sum() {
        List<Recorded> others = List.of(
                new Recorded(2, NORTH, DESK, THERE, Asked.NINE),
                new Recorded(1, club("Norths"), DESK, THERE, Asked.NINE),
                new Recorded(1, NORTH, DESK, Optional.empty(), Asked.NINE),
                new Recorded(1, NORTH, DESK, Optional.of(Instant.ofEpochMilli(1)), Asked.NINE),
                new Recorded(1, NORTH, DESK, THERE, Asked.NINE.plusMillis(1)),
                by(Role.REFEREE, "N", "desk", "phone", "L"),
                by(Role.DESK, "S", "desk", "phone", "L"),
                by(Role.DESK, "", "desk", "phone", "L"),
                by(Role.DESK, "N", "desk 2", "phone", "L"),
                by(Role.DESK, "N", "desk", "laptop", "L"),
                by(Role.DESK, "N", "desk", "phone", "M"),
                by(Role.DESK, "N", "desk", "phone", ""));
        assertThat(others)
                .extracting(FactSum.NONE::then)
                .doesNotHaveDuplicates()
                .doesNotContain(FactSum.NONE.then(FACT));
    }
}
