package tiewright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.desk.RecordCardTest.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tiewright.event.Actor;
import tiewright.event.Card;
import tiewright.event.Days;
import tiewright.event.Fact;
import tiewright.event.How;
import tiewright.event.PlayFact;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.TieId;
import tiewright.standings.PoolTables;
import tiewright.standings.Standings;

/** Two people read one card: common practice, no source. */
class HeldCardTest {
    private static final RubberNo TWO = RubberNo.of(2);
    private final Days day = Days.oneTie().opened("A1").at("10:31");

    private static CorrectCard correct(String rubber, String games, String reason) {
        return new CorrectCard(
                TieId.of("A1"), RubberNo.parse(rubber).orElseThrow(), Days.games(games), How.PLAYED, reason);
    }

    private Card two() {
        return day.tie("A1").card(TWO);
    }

    private void held() {
        day.by(Days.volunteer("court 2"))
                .does(card("2", "11-7"))
                .at("10:33")
                .by(Days.desk())
                .does(card("2", "7-11"));
    }

    @Test
    void two_sources_that_agree_confirm() {
        day.by(Days.volunteer("court 2"))
                .does(card("2", "11-7"))
                .by(Days.desk())
                .does(card("2", "11-7"));
        assertThat(two().standing()).isEqualTo(Card.Standing.CONFIRMED);
        assertThat(two().entries()).hasSize(2);
    }

    @Test
    void one_source_twice_confirms_nothing() {
        day.does(card("2", "11-7")).does(card("2", "11-7"));
        assertThat(two().standing()).isEqualTo(Card.Standing.RECORDED);
    }

    @Test
    void two_that_differ_are_both_kept_and_count_nowhere() {
        held();
        assertThat(two().standing()).isEqualTo(Card.Standing.HELD);
        assertThat(two().entries())
                .extracting(Card.Entry::games)
                .containsExactly(Days.games("11-7"), Days.games("7-11"));
        assertThat(two().score(TWO)).isEmpty();
        day.card("A1", "1", "11-0").card("A1", "3", "11-0").card("A1", "4", "11-0");
        assertThat(Standings.of(PoolTables.input(day.event(), "A")).tiesLeft()).isEqualTo(1);
    }

    @Test
    void a_third_person_settles_and_the_log_keeps_all_three_in_order_of_receipt() {
        held();
        day.by(Days.referee()).does(correct("2", "11-7", "the card says 11-7"));
        assertThat(two().standing()).isEqualTo(Card.Standing.SETTLED);
        assertThat(two().score(TWO))
                .hasValueSatisfying(score -> assertThat(score.winner()).contains(Side.HOME));
        assertThat(two().entries()).hasSize(3).isSortedAccordingTo(java.util.Comparator.comparing(Card.Entry::seq));
    }

    @Test
    void neither_of_the_two_settles_it() {
        held();
        assertThat(Why.not(day.by(Days.desk()), correct("2", "11-7", "card"))).containsExactly("desk.third-person");
        assertThat(Why.not(day, new TakeBackCard(TieId.of("A1"), TWO, "not played")))
                .containsExactly("desk.third-person");
        assertThat(Why.not(day.by(Days.organiser()), correct("2", "11-7", "card")))
                .isEmpty();
    }

    @Test
    void who_only_agreed_with_one_of_the_two_is_no_third_person() {
        held();
        day.by(Days.organiser()).does(card("2", "7-11"));
        assertThat(Why.not(day, correct("2", "7-11", "card"))).containsExactly("desk.third-person");
    }

    @Test
    void whoever_entered_both_puts_it_right_alone() {
        day.by(Days.desk()).does(card("2", "11-7")).does(card("2", "7-11"));
        assertThat(two().standing()).isEqualTo(Card.Standing.HELD);
        assertThat(Why.not(day, correct("2", "11-7", "typed it the wrong way round")))
                .isEmpty();
    }

    @Test
    void a_correction_needs_an_official_and_a_reason_and_something_to_correct() {
        day.does(card("2", "11-7"));
        assertThat(Why.not(day, correct("2", "11-8", " "))).containsExactly("desk.text-missing.reason");
        assertThat(Why.not(day, correct("2", "11-8", "x".repeat(3000)))).containsExactly("desk.text-too-long");
        assertThat(Why.not(day, correct("3", "11-8", "card"))).containsExactly("desk.nothing-entered");
        assertThat(Why.not(day, correct("2", "11-7", "card"))).containsExactly("desk.stands-so-already");
        assertThat(Why.not(day, correct("2", "11-10", "card"))).containsExactly("desk.score");
        assertThat(Why.not(day.by(Days.captain("N")), correct("2", "11-8", "card")))
                .containsExactly("desk.officials-only");
        assertThat(Why.not(day.by(Days.volunteer("V")), correct("2", "11-8", "card")))
                .containsExactly("desk.officials-only");
        assertThat(Why.not(day, new CorrectCard(TieId.of("Z"), TWO, List.of(), How.VOID, "card")))
                .containsExactly("desk.no-such-tie");
    }

    @Test
    void a_card_taken_back_counts_no_longer_and_can_be_entered_anew() {
        day.does(card("2", "11-7")).does(new TakeBackCard(TieId.of("A1"), TWO, "this was rubber 3"));
        assertThat(two().standing()).isEqualTo(Card.Standing.EMPTY);
        assertThat(two().entries()).hasSize(2);
        assertThat(Why.not(day, new TakeBackCard(TieId.of("A1"), TWO, "again")))
                .containsExactly("desk.nothing-entered");
        day.does(card("2", "9-11"));
        assertThat(two().score(TWO))
                .hasValueSatisfying(score -> assertThat(score.winner()).contains(Side.AWAY));
    }

    /** Whatever is entered, in whatever order and by whom, every accepted entry stands in the log and none is changed. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void no_entry_is_ever_lost(long usual) {
        long seed = Long.getLong("seed", usual);
        Random random = new Random(seed);
        List<Actor> people = List.of(
                Days.desk(),
                Days.referee(),
                Days.organiser(),
                Days.volunteer("V"),
                Days.captain("N"),
                Days.captain("S"));
        List<String> scores = List.of("11-7", "7-11", "12-10", "11-10");
        List<Fact> accepted = new ArrayList<>();
        int before = day.facts().size();
        for (int i = 0; i < 200; i++) {
            day.by(people.get(random.nextInt(people.size())));
            String rubber = Integer.toString(1 + random.nextInt(4));
            String score = scores.get(random.nextInt(scores.size()));
            tiewright.event.Decision decision =
                    switch (random.nextInt(5)) {
                        case 0 -> correct(rubber, score, "card");
                        case 1 ->
                            new TakeBackCard(
                                    TieId.of("A1"), RubberNo.parse(rubber).orElseThrow(), "not played");
                        default -> card(rubber, score);
                    };
            if (day.ask(decision) instanceof tiewright.event.Decision.Accepted yes) {
                accepted.addAll(yes.facts());
                day.does(decision);
            } else if (decision instanceof RecordCard) {
                assertThat(score)
                        .as("only the illegal score is refused, -Dseed=%d", seed)
                        .isEqualTo("11-10");
            }
        }
        List<Fact> log = day.facts().subList(before, day.facts().size()).stream()
                .map(r -> r.fact())
                .toList();
        assertThat(log).as("-Dseed=%d", seed).isEqualTo(accepted);
        long onCards = day.tie("A1").cards().values().stream()
                .mapToLong(card -> card.entries().size())
                .sum();
        assertThat(onCards)
                .as("-Dseed=%d", seed)
                .isEqualTo(log.stream().filter(PlayFact.class::isInstance).count());
        assertThat(onCards).isGreaterThan(50);
    }
}
