package tiewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.TieId;

/**
 * A protest in writing, its decision and its deposit: by-law 3 of Heidelberg and Districts TA and an Oxford college league have
 * them; minutes for objections to a table are common practice, no source.
 */
class ProtestTest {
    private static final ClubId N = ClubId.of("N");
    private final Days day = Days.oneTie()
            .opened("A1")
            .at("11:30")
            .cards("A1", "11-5", "11-5", "11-5", "5-11")
            .by(Days.captain("N"));

    private static MakeProtest protest(String text) {
        return new MakeProtest(N, Optional.of(TieId.of("A1")), text, Optional.of("20"), "C. Captain");
    }

    private static DecideProtest decide(boolean upheld) {
        return new DecideProtest(1, upheld, upheld, "The rubber is played again.", "condition 29", "R. Referee");
    }

    @Test
    void is_kept_with_its_time_and_waits_for_an_official() {
        day.at("11:34").does(protest("The net was too high."));
        assertThat(day.event().disputes().openProtests()).singleElement().satisfies(one -> {
            assertThat(one.at()).isEqualTo(Days.moment("11:34"));
            assertThat(one.made().deposit()).contains("20");
        });
        assertThat(DoNext.of(day.event(), day.now()))
                .extracting(DoNext.Item::kind)
                .contains(DoNext.Kind.PROTEST_OPEN);
        assertThat(Why.not(day, protest("The net was too high."))).containsExactly("desk.protest-twice");
        assertThat(Why.not(day.by(Days.captain("S")), protest("x"))).containsExactly("desk.protest-by-captain");
        assertThat(Why.not(day.by(Days.desk()), protest(" "))).containsExactly("desk.text-missing.text");
    }

    @Test
    void its_decision_is_a_ruling_and_a_notice_and_changes_no_result_by_itself() {
        var before = day.event().ties();
        day.does(protest("The net was too high.")).by(Days.referee()).does(decide(true));
        assertThat(day.event().ties()).isEqualTo(before);
        assertThat(day.event().rulings())
                .singleElement()
                .satisfies(ruling -> assertThat(Days.said(ruling.about())).isEqualTo("Protest 1 of Club N, tie A1"));
        assertThat(day.event().disputes().protest(1).orElseThrow().decided())
                .hasValueSatisfying(
                        decided -> assertThat(decided.depositReturned()).isTrue());
        assertThat(day.event().notices()).hasSize(1);
        assertThat(Why.not(day, decide(false))).containsExactly("desk.protest-decided");
        assertThat(Why.not(day, new DecideProtest(9, true, false, "d", "r", "R")))
                .containsExactly("desk.no-such-protest");
        assertThat(Why.not(day.by(Days.desk()), decide(true))).contains("desk.rulers-only");
    }

    @Test
    void a_table_is_not_signed_over_an_open_protest() {
        day.does(protest("The net was too high.")).by(Days.referee());
        assertThat(Why.not(day, new SignTable("A", "R"))).containsExactly("desk.protest-open");
        day.does(decide(false));
        assertThat(Why.not(day, new SignTable("A", "R"))).isEmpty();
    }

    @Test
    void objections_run_for_the_minutes_of_the_conditions_after_the_last_card() {
        assertThat(Objections.until(day.event(), "A")).contains(Days.moment("11:45"));
        Days none = Days.oneTie()
                .with(Setting.OBJECTION_MINUTES, "0")
                .opened("A1")
                .cards("A1", "11-5", "11-5", "11-5", "5-11");
        assertThat(Objections.until(none.event(), "A")).isEmpty();
        assertThat(Objections.until(Days.oneTie().opened("A1").event(), "A"))
                .as("the pool goes on")
                .isEmpty();
        day.by(Days.referee()).at("11:50").does(new SignTable("A", "R"));
        assertThat(day.event().disputes().signedAt()).containsEntry("A", Days.moment("11:50"));
    }
}
