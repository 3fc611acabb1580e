package tiewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tiewright.conditions.Setting;
import tiewright.correction.CupDay;
import tiewright.event.Actor;
import tiewright.event.Card;
import tiewright.event.ClubId;
import tiewright.event.CorrectionChoice;
import tiewright.event.Days;
import tiewright.event.DrawFact;
import tiewright.event.Event;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.How;
import tiewright.event.OfficialFact;
import tiewright.event.PlayFact;
import tiewright.event.PrivateNote;
import tiewright.event.RubberNo;
import tiewright.event.TieId;

/**
 * A swapped score found after the final began: three choices, each a ruling with a notice. That nothing is rewound by
 * itself and that officials choose is common practice, no source.
 */
class DecideCorrectionTest {
    private static final ClubId N = ClubId.of("N");
    private static final ClubId S = ClubId.of("S");
    private final Days day = CupDay.advanced();

    private static DecideCorrection decide(CorrectionChoice choice) {
        return decide("A1", "1", "5-11", choice);
    }

    private static DecideCorrection decide(String tie, String rubber, String games, CorrectionChoice choice) {
        return new DecideCorrection(
                new Correction(TieId.of(tie), RubberNo.parse(rubber).orElseThrow(), Days.games(games), How.PLAYED),
                choice,
                "",
                "the card shows 5-11",
                "R. Referee");
    }

    @Test
    void letting_it_stand_is_a_ruling_and_a_notice_and_changes_no_result() {
        Event before = day.event();
        day.does(decide(CorrectionChoice.LET_STAND));
        assertThat(day.event().ties()).isEqualTo(before.ties());
        assertThat(day.event().exchanges()).isEqualTo(before.exchanges());
        assertThat(day.event().rulings()).singleElement().satisfies(ruling -> {
            assertThat(ruling.by()).isEqualTo("R. Referee");
            assertThat(ruling.reason()).isEqualTo("the card shows 5-11");
        });
        assertThat(day.event().notices())
                .singleElement()
                .satisfies(posted -> assertThat(Days.said(posted.notice().text()))
                        .isEqualTo("Score of tie A1, rubber 1. The score stands as entered, although the card shows"
                                + " 5-11. Ruling 1."));
    }

    @ParameterizedTest
    @EnumSource(
            value = CorrectionChoice.class,
            names = {"REPLAY", "RECORD_ONLY"})
    void a_corrected_retirement_keeps_what_the_card_says_beside_what_counts(CorrectionChoice choice) {
        day.with(Setting.RETIREMENT_SCORE, "keep-points");
        day.does(new DecideCorrection(
                new Correction(TieId.of("A1"), RubberNo.of(1), Days.games("4-6"), How.RETIRED_HOME),
                choice,
                "",
                "the card shows a retirement",
                "R. Referee"));
        Card.Entry entry = day.tie("A1").card(RubberNo.of(1)).inForce().get(0);
        assertThat(entry.games()).isEqualTo(Days.games("4-11"));
        assertThat(entry.asItStood()).isEqualTo(Days.games("4-6"));
    }

    @Test
    void playing_again_puts_the_right_clubs_into_ties_that_begin_anew() {
        day.does(decide(CorrectionChoice.REPLAY));
        assertThat(day.event().signedTables().get("A").order()).containsExactly(S, N);
        assertThat(day.event().signedTables().get("A").by()).isEqualTo("R. Referee");
        assertThat(day.tie("F").home().club()).contains(S);
        assertThat(day.tie("F").away().club()).contains(ClubId.of("E"));
        assertThat(day.tie("F").opened()).isEmpty();
        assertThat(day.tie("F").cards()).isEmpty();
        assertThat(day.tie("F").calls()).isEmpty();
        assertThat(day.tie("F").start())
                .as("a time that is over is nobody's any more")
                .isEmpty();
        assertThat(day.tie("P3").home().club()).contains(N);
        assertThat(day.tie("P3").start()).as("nothing had begun there").isPresent();
        assertThat(day.event().notices()).singleElement().satisfies(posted -> {
            assertThat(Days.said(posted.notice().text()))
                    .endsWith(" is played again. Begin again: tie F, P3. Ruling 1.");
            assertThat(posted.notice().before().map(Days::said)).contains("11-5");
            assertThat(posted.notice().after().map(Days::said)).contains("5-11");
        });
    }

    @Test
    void everybody_whose_opponent_or_time_changes_is_told_of_the_notice_and_nobody_where_it_stands() {
        day.does(decide(CorrectionChoice.REPLAY));
        assertThat(day.event().order().concerned(1))
                .as("final and third place begin again, with each other's clubs")
                .contains(N, S, ClubId.of("E"));
        Days stands = CupDay.advanced().does(decide(CorrectionChoice.LET_STAND));
        assertThat(stands.event().order().concerned(1)).isEmpty();
    }

    @Test
    void a_sheet_sealed_for_a_tie_that_begins_anew_goes_back_unseen() {
        day.does(decide(CorrectionChoice.REPLAY));
        ExchangeId sheets = ExchangeId.sheets(TieId.of("P3"));
        assertThat(day.facts())
                .extracting(recorded -> recorded.fact())
                .contains(new ExchangeFact.SheetReturned(sheets, S, "ruling 1"));
        assertThat(day.notes()).contains(new PrivateNote.SheetDropped(sheets, S));
        assertThat(day.event().exchange(sheets).home().isIn()).isFalse();
    }

    @Test
    void pairs_sealed_for_a_decider_that_is_not_needed_go_back_unseen_whatever_is_chosen() {
        for (CorrectionChoice choice : new CorrectionChoice[] {CorrectionChoice.REPLAY, CorrectionChoice.RECORD_ONLY}) {
            Days level = Days.oneTie()
                    .opened("A1")
                    .cards("A1", "11-1", "1-11", "11-2", "2-11")
                    .by(Days.referee());
            ExchangeId decider = ExchangeId.decider(TieId.of("A1"));
            level.fact(new ExchangeFact.SheetSealed(decider, S, "2".repeat(64), false));
            level.does(decide("A1", "4", "11-2", choice));
            assertThat(level.event().exchange(decider).away().isIn()).isFalse();
            assertThat(level.notes()).containsExactly(new PrivateNote.SheetDropped(decider, S));
        }
    }

    @Test
    void the_record_alone_leaves_the_clubs_where_they_are_also_later() {
        Days cup = CupDay.signed().does(decide(CorrectionChoice.RECORD_ONLY));
        assertThat(cup.tie("A1").card(RubberNo.of(1)).standing()).isEqualTo(Card.Standing.SETTLED);
        assertThat(cup.event().signedTables().get("A").order()).containsExactly(N, S);
        assertThat(cup.tie("F").home().club()).contains(N);
        cup.does(new SignTable("A", "R. Signer"));
        assertThat(cup.event().signedTables().get("A").order()).containsExactly(S, N);
        assertThat(cup.tie("F").home().club()).as("by ruling N stays").contains(N);
        assertThat(DoNext.of(cup.event(), cup.now()))
                .extracting(DoNext.Item::kind)
                .doesNotContain(DoNext.Kind.SLOT_DISPUTED);
    }

    @Test
    void a_final_order_that_was_signed_over_the_wrong_score_holds_no_longer() {
        day.fact(new OfficialFact.EventSigned(java.util.List.of(N, ClubId.of("E"), S, ClubId.of("W")), "R. Signer"));
        day.does(decide(CorrectionChoice.REPLAY));
        assertThat(day.event().signed()).isEmpty();
    }

    @Test
    void doing_it_twice_changes_nothing_more() {
        for (CorrectionChoice choice : CorrectionChoice.values()) {
            Days once = CupDay.advanced().does(decide(choice));
            assertThat(Why.not(once, decide(choice))).as(choice.code()).containsExactly("desk.decided-already");
        }
    }

    @Test
    void who_let_it_stand_may_still_decide_otherwise() {
        day.does(decide(CorrectionChoice.LET_STAND)).does(decide(CorrectionChoice.REPLAY));
        assertThat(day.event().rulings()).hasSize(2);
        assertThat(day.tie("F").home().club()).contains(S);
    }

    @Test
    void is_refused_in_a_sentence_where_it_cannot_be() {
        assertThat(Why.not(day, decide("P3", "1", "5-11", CorrectionChoice.REPLAY)))
                .containsExactly("desk.never-played");
        assertThat(Why.not(day, decide("Z", "1", "5-11", CorrectionChoice.REPLAY)))
                .containsExactly("desk.no-such-tie");
        assertThat(Why.not(day, decide("A1", "1", "5-10", CorrectionChoice.REPLAY)))
                .containsExactly("desk.score");
        assertThat(Why.not(day, decide("A1", "1", "11-5", CorrectionChoice.REPLAY)))
                .containsExactly("desk.stands-so-already");
        Correction right = decide(CorrectionChoice.REPLAY).correction();
        assertThat(Why.not(day, new DecideCorrection(right, CorrectionChoice.REPLAY, "", " ", "")))
                .containsExactly("desk.text-missing.reason", "desk.text-missing.by");
        for (Actor actor : new Actor[] {Days.desk(), Days.volunteer("V"), Days.captain("N")}) {
            assertThat(Why.not(day.by(actor), decide(CorrectionChoice.REPLAY))).containsExactly("desk.rulers-only");
        }
    }

    /** The list somebody decided by is not the list that holds now: nothing is done, and the sentence says so. */
    @Test
    void what_came_meanwhile_is_told_instead_of_being_overrun() {
        Correction right = decide(CorrectionChoice.REPLAY).correction();
        String seen =
                right.impact(day.event(), day.given(), CorrectionChoice.REPLAY).fingerprint();
        day.card("F", "2", "11-9");
        assertThat(Why.not(day, new DecideCorrection(right, CorrectionChoice.REPLAY, seen, "card", "R")))
                .containsExactly("desk.impact-changed");
        String now =
                right.impact(day.event(), day.given(), CorrectionChoice.REPLAY).fingerprint();
        assertThat(Why.not(day, new DecideCorrection(right, CorrectionChoice.REPLAY, now, "card", "R")))
                .isEmpty();
    }

    @Test
    void another_word_on_the_same_rubber_makes_it_stale_and_nothing_else_does() {
        DecideCorrection one = decide(CorrectionChoice.REPLAY);
        assertThat(one.isStaledBy(
                        new PlayFact.CardEntered(TieId.of("A1"), RubberNo.of(1), Days.games("11-5"), How.PLAYED)))
                .isTrue();
        assertThat(one.isStaledBy(new OfficialFact.CorrectionDecided(
                        TieId.of("A1"),
                        RubberNo.of(1),
                        Days.games("5-11"),
                        How.PLAYED,
                        CorrectionChoice.LET_STAND,
                        1,
                        "r")))
                .isTrue();
        assertThat(one.isStaledBy(
                        new PlayFact.CardEntered(TieId.of("A1"), RubberNo.of(2), Days.games("11-5"), How.PLAYED)))
                .isFalse();
        assertThat(one.isStaledBy(new DrawFact.SlotFilled(TieId.of("F"), tiewright.event.Side.HOME, N)))
                .isFalse();
    }

    /** Two entries that differ are settled here too only by a third person. */
    @Test
    void neither_of_two_that_differ_decides() {
        day.by(new Actor(tiewright.event.Role.REFEREE, java.util.Optional.empty(), "referee", ""))
                .card("A1", "1", "5-11");
        assertThat(Why.not(day, decide("A1", "1", "6-11", CorrectionChoice.RECORD_ONLY)))
                .containsExactly("desk.third-person");
    }
}
