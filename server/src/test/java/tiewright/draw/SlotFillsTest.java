package tiewright.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Directory;
import tiewright.event.DrawFact;
import tiewright.event.Event;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.How;
import tiewright.event.OfficialFact;
import tiewright.event.PlayFact;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Slot;
import tiewright.event.SlotSource;
import tiewright.event.Stage;
import tiewright.event.TieId;
import tiewright.scoring.Score;

/** When is the club of a slot certain? Four rubbers, a knockout tie stops at three (the preset "Club day"). */
class SlotFillsTest {
    private static final Instant NOON = Instant.parse("2026-06-06T10:00:00Z");
    private static final TieId SF1 = TieId.of("SF1");
    private static final TieId FINAL = TieId.of("F");
    private static final TieId THIRD = TieId.of("P3");
    private final List<Recorded> ledger = new ArrayList<>();
    private Event event = Event.empty();

    SlotFillsTest() {
        knockout("SF1", 1, "A-1", "B-2");
        knockout("SF2", 1, "B-1", "A-2");
        knockout("P3", 2, "loser-SF1", "loser-SF2");
        knockout("F", 2, "winner-SF1", "winner-SF2");
    }

    private void knockout(String tie, int round, String home, String away) {
        happens(new DrawFact.TieArranged(
                TieId.of(tie),
                Stage.KNOCKOUT,
                Optional.empty(),
                round,
                Slot.from(SlotSource.parse(home).orElseThrow()),
                Slot.from(SlotSource.parse(away).orElseThrow())));
    }

    private void happens(Fact fact) {
        happens(fact, "desk 1");
    }

    private void happens(Fact fact, String who) {
        Recorded next = new Recorded(event.seq() + 1, fact, Actor.of(Role.DESK, who), Optional.empty(), NOON);
        ledger.add(next);
        event = event.then(List.of(next));
    }

    private void sign(String pool, String... order) {
        happens(new OfficialFact.TableSigned(
                pool, List.of(order).stream().map(ClubId::of).toList(), "Ida Brandt"));
    }

    private void fill() {
        SlotFills.of(event).forEach(this::happens);
    }

    private void card(TieId tie, int rubber, int home, int away) {
        happens(new PlayFact.CardEntered(tie, RubberNo.of(rubber), List.of(Score.of(home, away)), How.PLAYED));
    }

    private void homeWins(TieId tie) {
        card(tie, 1, 11, 3);
        card(tie, 2, 11, 5);
        card(tie, 3, 11, 7);
    }

    private static DrawFact.SlotFilled filled(TieId tie, Side side, String club) {
        return new DrawFact.SlotFilled(tie, side, ClubId.of(club));
    }

    @Test
    void nothing_is_certain_before_a_table_is_signed() {
        assertThat(SlotFills.of(event)).isEmpty();
    }

    @Test
    void a_signed_table_fills_its_places_and_only_those() {
        sign("A", "owl", "elm", "oak");
        assertThat(SlotFills.of(event))
                .containsExactly(filled(SF1, Side.HOME, "owl"), filled(TieId.of("SF2"), Side.AWAY, "elm"));
    }

    @Test
    void a_slot_that_has_its_club_is_not_filled_again() {
        sign("A", "owl", "elm");
        fill();
        assertThat(SlotFills.of(event)).isEmpty();
        sign("A", "owl", "elm");
        assertThat(SlotFills.of(event)).isEmpty();
    }

    @Test
    void winner_and_loser_go_on_when_the_tie_is_decided() {
        semifinal();
        card(SF1, 1, 11, 3);
        card(SF1, 2, 11, 5);
        assertThat(SlotFills.of(event)).isEmpty();
        card(SF1, 3, 11, 9);
        assertThat(SlotFills.of(event))
                .containsExactly(filled(THIRD, Side.HOME, "ash"), filled(FINAL, Side.HOME, "owl"));
    }

    @Test
    void nobody_goes_on_from_a_level_tie_until_its_decider() {
        semifinal();
        card(SF1, 1, 11, 3);
        card(SF1, 2, 11, 5);
        card(SF1, 3, 5, 11);
        card(SF1, 4, 3, 11);
        assertThat(SlotFills.of(event)).isEmpty();
        happens(new PlayFact.CardEntered(SF1, RubberNo.DECIDER, List.of(Score.of(9, 11)), How.PLAYED));
        assertThat(SlotFills.of(event))
                .containsExactly(filled(THIRD, Side.HOME, "owl"), filled(FINAL, Side.HOME, "ash"));
    }

    @Test
    void nobody_goes_on_while_a_card_is_held() {
        semifinal();
        homeWins(SF1);
        happens(new PlayFact.CardEntered(SF1, RubberNo.of(3), List.of(Score.of(7, 11)), How.PLAYED), "court 2");
        assertThat(SlotFills.of(event)).isEmpty();
    }

    @Test
    void a_correction_puts_the_right_club_into_a_tie_that_has_not_begun() {
        semifinal();
        homeWins(SF1);
        fill();
        awayWonAfterAll();
        assertThat(SlotFills.of(event))
                .containsExactly(filled(THIRD, Side.HOME, "owl"), filled(FINAL, Side.HOME, "ash"));
        assertThat(SlotFills.disputed(event)).isEmpty();
    }

    @Test
    void a_correction_changes_nobody_where_a_sheet_is_in_and_a_person_is_told() {
        semifinal();
        homeWins(SF1);
        fill();
        happens(new ExchangeFact.SheetSealed(ExchangeId.sheets(FINAL), ClubId.of("owl"), "0".repeat(64), false));
        awayWonAfterAll();
        assertThat(SlotFills.of(event)).containsExactly(filled(THIRD, Side.HOME, "owl"));
        assertThat(SlotFills.disputed(event))
                .containsExactly(new SlotFills.Disputed(FINAL, Side.HOME, ClubId.of("owl"), ClubId.of("ash")));
    }

    @Test
    void facts_that_are_about_to_be_appended_count_too() {
        semifinal();
        card(SF1, 1, 11, 3);
        card(SF1, 2, 11, 5);
        Fact last = new PlayFact.CardEntered(SF1, RubberNo.of(3), List.of(Score.of(11, 0)), How.PLAYED);
        Decision.Given given = new Decision.Given(NOON, Actor.of(Role.DESK, "desk 1"), Directory.EMPTY, Map.of());
        assertThat(SlotFills.of(event.after(List.of(last), given)))
                .containsExactly(filled(THIRD, Side.HOME, "ash"), filled(FINAL, Side.HOME, "owl"));
        assertThat(SlotFills.of(event)).isEmpty();
    }

    private void semifinal() {
        sign("A", "owl", "elm");
        sign("B", "yew", "ash");
        fill();
        assertThat(event.tie(SF1).orElseThrow().isReady()).isTrue();
    }

    /** 3-0 becomes 1-3. */
    private void awayWonAfterAll() {
        happens(new PlayFact.CardCorrected(SF1, RubberNo.of(2), List.of(Score.of(5, 11)), How.PLAYED, "swapped"));
        happens(new PlayFact.CardCorrected(SF1, RubberNo.of(3), List.of(Score.of(7, 11)), How.PLAYED, "swapped"));
        card(SF1, 4, 2, 11);
    }
}
