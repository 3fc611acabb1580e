package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tiewright.scoring.Score;

/** What counts of everything that was entered for one rubber. */
class CardTest {
    private static final TieId A1 = TieId.of("A1");
    private static final RubberNo ONE = RubberNo.of(1);
    private final Days day = Days.oneTie();

    private CardTest enter(Actor by, String games, How how) {
        day.by(by).card("A1", "1", games, how);
        return this;
    }

    private CardTest enter(Actor by, String games) {
        return enter(by, games, How.PLAYED);
    }

    private CardTest settle(String games) {
        day.by(Days.desk()).fact(new PlayFact.CardCorrected(A1, ONE, Days.games(games), How.PLAYED, "from the card"));
        return this;
    }

    private CardTest takeBack() {
        day.by(Days.desk()).fact(new PlayFact.CardTakenBack(A1, ONE, "never played"));
        return this;
    }

    private Card card() {
        return day.tie("A1").card(ONE);
    }

    private List<Score> counts() {
        return card().score(ONE).map(RubberScore::games).orElse(List.of());
    }

    @Test
    void nothing_entered_counts_nothing() {
        assertThat(card().standing()).isEqualTo(Card.Standing.EMPTY);
        assertThat(card().score(ONE)).isEmpty();
        assertThat(card().readings()).isEmpty();
        assertThat(card().inForce()).isEmpty();
    }

    @Test
    void one_source_records_also_when_it_says_the_same_twice() {
        enter(Days.desk(), "15-3");
        assertThat(card().standing()).isEqualTo(Card.Standing.RECORDED);
        enter(Days.desk(), "15-3");
        assertThat(card().standing()).isEqualTo(Card.Standing.RECORDED);
        assertThat(counts()).isEqualTo(Days.games("15-3"));
        assertThat(card().inForce()).hasSize(2);
        assertThat(card().readings()).hasSize(1);
    }

    @Test
    void another_link_or_another_device_confirms() {
        enter(Days.volunteer("Ivo"), "15-3").enter(Days.desk(), "15-3");
        assertThat(card().standing()).isEqualTo(Card.Standing.CONFIRMED);
        Days phones = Days.oneTie();
        for (String device : List.of("one", "other")) {
            phones.by(new Actor(Role.VOLUNTEER, java.util.Optional.empty(), "volunteers", device))
                    .card("A1", "1", "15-3");
        }
        assertThat(phones.tie("A1").card(ONE).standing()).isEqualTo(Card.Standing.CONFIRMED);
    }

    @Test
    void different_readings_hold_the_rubber_whoever_made_them() {
        enter(Days.desk(), "15-3").enter(Days.desk(), "15-4").enter(Days.volunteer("Ivo"), "15-3");
        assertThat(card().standing()).isEqualTo(Card.Standing.HELD);
        assertThat(card().score(ONE)).isEmpty();
        assertThat(card().readings())
                .extracting(Card.Entry::games)
                .containsExactly(Days.games("15-3"), Days.games("15-4"));
    }

    @Test
    void the_same_points_with_another_ending_differ() {
        enter(Days.desk(), "15-3").enter(Days.volunteer("Ivo"), "15-3", How.RETIRED_AWAY);
        assertThat(card().standing()).isEqualTo(Card.Standing.HELD);
    }

    /** What stands on the paper of a retired rubber is kept, but the table counts the same. */
    @Test
    void two_readings_that_differ_only_in_what_the_table_does_not_count_agree() {
        day.by(Days.desk())
                .fact(new PlayFact.CardEntered(A1, ONE, Days.games("15-3"), How.RETIRED_AWAY, Days.games("9-3")));
        day.by(Days.volunteer("Ivo")).fact(new PlayFact.CardEntered(A1, ONE, Days.games("15-3"), How.RETIRED_AWAY));
        assertThat(card().standing()).isEqualTo(Card.Standing.CONFIRMED);
        assertThat(card().inForce().get(0).asItStood()).isEqualTo(Days.games("9-3"));
    }

    @Test
    void what_a_person_settled_counts_alone() {
        enter(Days.desk(), "15-3").enter(Days.volunteer("Ivo"), "15-4").settle("15-5");
        assertThat(card().standing()).isEqualTo(Card.Standing.SETTLED);
        assertThat(counts()).isEqualTo(Days.games("15-5"));
        assertThat(card().inForce()).hasSize(1);
        assertThat(card().entries()).hasSize(3);
        enter(Days.volunteer("Ada"), "15-5");
        assertThat(card().standing()).isEqualTo(Card.Standing.SETTLED);
    }

    @Test
    void a_new_reading_that_differs_from_what_was_settled_holds_it_again_until_settled_anew() {
        settle("15-5").enter(Days.volunteer("Ivo"), "15-4");
        assertThat(card().standing()).isEqualTo(Card.Standing.HELD);
        settle("15-4");
        assertThat(card().standing()).isEqualTo(Card.Standing.SETTLED);
        assertThat(counts()).isEqualTo(Days.games("15-4"));
    }

    @Test
    void taken_back_nothing_counts_until_it_is_written_again() {
        enter(Days.desk(), "15-3").takeBack();
        assertThat(card().standing()).isEqualTo(Card.Standing.EMPTY);
        assertThat(card().score(ONE)).isEmpty();
        assertThat(card().entries()).hasSize(2);
        assertThat(card().entries().get(1).takenBack()).isTrue();
        enter(Days.desk(), "15-7");
        assertThat(card().standing()).isEqualTo(Card.Standing.RECORDED);
        assertThat(counts()).isEqualTo(Days.games("15-7"));
    }

    @Test
    void the_score_carries_how_it_ended_and_the_rubber_asked_for() {
        enter(Days.desk(), "", How.VOID);
        assertThat(card().score(RubberNo.of(2))).contains(new RubberScore(RubberNo.of(2), List.of(), How.VOID));
    }
}
