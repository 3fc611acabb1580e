package tiewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.sheet.Asked.DECIDER;
import static tiewright.sheet.Asked.N;
import static tiewright.sheet.Asked.OTHER_SECRET;
import static tiewright.sheet.Asked.S;
import static tiewright.sheet.Asked.SECRET;
import static tiewright.sheet.Asked.SHEETS;
import static tiewright.sheet.Asked.bothSealed;
import static tiewright.sheet.Asked.seal;
import static tiewright.sheet.Asked.sealDecider;
import static tiewright.sheet.Asked.sheet;
import static tiewright.sheet.Asked.straight;
import static tiewright.sheet.Asked.why;
import static tiewright.sheet.Asked.without;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tiewright.conditions.Setting;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Decision;
import tiewright.event.DrawFact;
import tiewright.event.Event;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.How;
import tiewright.event.Pair;
import tiewright.event.PlayFact;
import tiewright.event.PrivateNote;
import tiewright.event.Recorded;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.SetUpFact;
import tiewright.event.Side;
import tiewright.event.TieId;

class OpenSheetsTest {
    private static final OpenSheets OPEN = new OpenSheets(SHEETS);

    private static <F extends Fact> List<F> facts(Days day, Class<F> kind) {
        return day.facts().stream()
                .map(Recorded::fact)
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    @Test
    void opens_both_at_the_deadline_with_their_secrets_and_keeps_neither() {
        Days day = bothSealed().by(Exchanges.AUTOMATIC).at("09:45");
        assertThat(OPEN.needs(day.event()))
                .containsExactlyInAnyOrder(new Decision.SealedRef(SHEETS, N), new Decision.SealedRef(SHEETS, S));
        day.does(OPEN);
        assertThat(facts(day, ExchangeFact.SheetsOpened.class))
                .containsExactly(new ExchangeFact.SheetsOpened(
                        SHEETS, straight("N"), Optional.of(SECRET), straight("S"), Optional.of(SECRET)));
        assertThat(day.notes())
                .endsWith(new PrivateNote.SheetDropped(SHEETS, N), new PrivateNote.SheetDropped(SHEETS, S));
        assertThat(day.tie("A1").isOpened()).isTrue();
        assertThat(facts(day, PlayFact.CardEntered.class)).isEmpty();
        assertThat(OPEN.needs(day.event())).isEmpty();
    }

    @Test
    void opens_nothing_before_the_deadline_unless_both_captains_ask() {
        Days day = bothSealed().by(Days.desk()).at("09:44:59");
        assertThat(why(day, OPEN)).containsExactly("too-early");
        day.by(Days.captain("N")).does(new AskOpening(SHEETS, N)).by(Days.desk());
        assertThat(why(day, OPEN)).containsExactly("too-early");
        assertThat(Exchanges.due(day.event(), day.now())).isEmpty();
        day.by(Days.captain("S")).does(new AskOpening(SHEETS, S)).by(Days.desk());
        assertThat(Exchanges.due(day.event(), day.now())).containsExactly(SHEETS);
        day.does(OPEN);
    }

    @Test
    void a_tie_without_a_start_opens_only_when_both_ask() {
        Days day = Days.aDay()
                .clubs("N", "S")
                .poolTie("A1", "A", 1, "N", "S")
                .by(Days.captain("N"))
                .does(seal("N"))
                .by(Days.captain("S"))
                .does(seal("S"))
                .by(Days.desk())
                .at("17:00");
        assertThat(why(day, OPEN)).containsExactly("no-deadline");
        assertThat(Exchanges.isWanted(day.event(), SHEETS)).isFalse();
        day.by(Days.captain("N"))
                .does(new AskOpening(SHEETS, N))
                .by(Days.captain("S"))
                .does(new AskOpening(SHEETS, S));
        assertThat(why(day.by(Days.desk()), OPEN)).isEmpty();
    }

    @Test
    void opens_neither_while_one_is_missing() {
        Days day = Days.oneTie()
                .by(Days.captain("N"))
                .does(seal("N"))
                .by(Days.desk())
                .at("09:50");
        assertThat(why(day, OPEN)).containsExactly("side-missing");
        assertThat(day.refusals(OPEN).get(0).data()).containsEntry("club", S);
        assertThat(Exchanges.due(day.event(), day.now())).isEmpty();
    }

    @Test
    void refuses_a_second_opening() {
        assertThat(why(Asked.opened(), OPEN)).containsExactly("opened");
    }

    @Test
    void refuses_a_swapped_sheet_and_names_the_club_only() {
        Days day = bothSealed()
                .sealed(SHEETS, "S", sheet("S", "12 34 78 56"), SECRET)
                .by(Days.desk())
                .at("09:45");
        List<Refusal> refusals = day.refusals(OPEN);
        assertThat(Asked.codes(refusals)).containsExactly("receipt-wrong");
        assertThat(refusals.get(0).data()).containsOnly(java.util.Map.entry("club", S));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "fedcba9876543210fedcba9876543210fedcba9876543210fedcba9876543210"})
    void refuses_a_swapped_secret(String secret) {
        Days day = bothSealed()
                .sealed(SHEETS, "N", straight("N"), secret)
                .by(Days.desk())
                .at("09:45");
        assertThat(why(day, OPEN)).containsExactly("receipt-wrong");
    }

    @Test
    void refuses_when_a_kept_sheet_is_gone() {
        Days day = bothSealed().by(Days.desk()).at("09:45");
        Decision.Given bare = new Decision.Given(day.now(), Days.desk(), day.directory(), java.util.Map.of());
        Decision.Refused refused = (Decision.Refused) OPEN.decide(day.event(), bare);
        assertThat(Asked.codes(refused.reasons())).containsExactly("not-kept", "not-kept");
    }

    @Test
    void opens_the_last_sheet_sealed() {
        Days day = bothSealed()
                .by(Days.captain("N"))
                .does(new SealSheet(SHEETS, N, sheet("N", "78 56 34 12"), OTHER_SECRET))
                .by(Days.desk())
                .at("09:45")
                .does(OPEN);
        assertThat(facts(day, ExchangeFact.SheetsOpened.class).get(0).home()).isEqualTo(sheet("N", "78 56 34 12"));
    }

    @Test
    void officials_open_and_nobody_else() {
        for (Actor by :
                List.of(Days.captain("N"), Days.player("N"), Days.volunteer("court 1"), Actor.of(Role.PUBLIC, ""))) {
            assertThat(why(bothSealed().by(by).at("09:45"), OPEN)).containsExactly("officials-only");
        }
        for (Actor by : List.of(Days.desk(), Days.organiser(), Days.referee(), Exchanges.AUTOMATIC)) {
            assertThat(why(bothSealed().by(by).at("09:45"), OPEN)).isEmpty();
        }
    }

    @Test
    void an_organiser_who_captains_leaves_the_opening_to_the_neutral_person_or_the_tool() {
        Days neutral = bothSealed()
                .fact(new SetUpFact.OpeningChosen(true, Optional.of("desk")))
                .at("09:45");
        assertThat(why(neutral.by(Days.desk()), OPEN)).isEmpty();
        assertThat(why(neutral.by(Exchanges.AUTOMATIC), OPEN)).containsExactly("neutral-only");
        assertThat(Exchanges.openByThemselves(neutral.event())).isFalse();
        assertThat(why(neutral.by(Days.organiser()), OPEN)).containsExactly("neutral-only");
        Days automatic = bothSealed()
                .fact(new SetUpFact.OpeningChosen(true, Optional.empty()))
                .at("09:45");
        assertThat(why(automatic.by(Exchanges.AUTOMATIC), OPEN)).isEmpty();
        assertThat(why(automatic.by(Days.desk()), OPEN)).containsExactly("automatic-only");
        Days free = bothSealed()
                .fact(new SetUpFact.OpeningChosen(false, Optional.empty()))
                .at("09:45");
        assertThat(why(free.by(Days.organiser()), OPEN)).isEmpty();
    }

    @Test
    void an_empty_rubber_stands_as_a_walkover_from_the_opening_on() {
        Days day = without(Days.oneTie(), "N7", "N8")
                .by(Days.captain("N"))
                .does(seal("N", sheet("N", "12 34 56 -")))
                .by(Days.captain("S"))
                .does(seal("S"))
                .by(Days.desk())
                .at("09:45")
                .does(OPEN);
        assertThat(facts(day, PlayFact.CardEntered.class))
                .containsExactly(new PlayFact.CardEntered(
                        TieId.of("A1"), RubberNo.of(4), Days.games("0-11"), How.WALKOVER_HOME));
    }

    @Test
    void a_walkover_takes_as_many_games_as_the_conditions_ask() {
        Days day = without(Days.oneTie().with(Setting.BEST_OF, "3").with(Setting.SCORING, "rally-21"), "S7", "S8")
                .by(Days.captain("N"))
                .does(seal("N"))
                .by(Days.captain("S"))
                .does(seal("S", sheet("S", "12 34 56 -")))
                .by(Days.desk())
                .at("09:45")
                .does(OPEN);
        assertThat(facts(day, PlayFact.CardEntered.class))
                .containsExactly(new PlayFact.CardEntered(
                        TieId.of("A1"), RubberNo.of(4), Days.games("21-0 21-0"), How.WALKOVER_AWAY));
    }

    @ParameterizedTest
    @ValueSource(strings = {"shrink-target", "double-default"})
    void two_short_clubs_leave_the_rubber_void_and_two_wins_take_the_tie(String bothShort) {
        Days day = without(Days.oneTie().with(Setting.BOTH_SHORT, bothShort), "N7", "N8", "S7", "S8")
                .by(Days.captain("N"))
                .does(seal("N", sheet("N", "12 34 56 -")))
                .by(Days.captain("S"))
                .does(seal("S", sheet("S", "12 34 56 -")))
                .by(Days.desk())
                .at("09:45")
                .does(OPEN);
        assertThat(facts(day, PlayFact.CardEntered.class))
                .containsExactly(new PlayFact.CardEntered(TieId.of("A1"), RubberNo.of(4), List.of(), How.VOID));
        assertThat(day.event().progress(day.tie("A1")).toWin()).isEqualTo(2);
    }

    @Test
    void a_forfeit_gives_every_rubber_to_the_other_club_and_its_slot_with_it() {
        Days day = Days.aDay()
                .clubs("N", "S")
                .knockoutTie("A1", 1, "N", "S")
                .knockoutTie("F", 2, "winner-A1", "loser-A1")
                .timed("A1", "10:00", "1")
                .by(Days.captain("N"))
                .does(seal("N"))
                .does(sealDecider("N", "1", "2"))
                .by(Days.referee())
                .at("09:51")
                .does(new ForfeitSide(SHEETS, S, "Nobody came", "R. Jansen"));
        assertThat(OPEN.needs(day.event())).containsExactly(new Decision.SealedRef(SHEETS, N));
        assertThat(Exchanges.due(day.event(), day.now())).containsExactly(SHEETS);
        day.by(Exchanges.AUTOMATIC).does(OPEN);
        assertThat(facts(day, PlayFact.CardEntered.class))
                .hasSize(4)
                .allMatch(
                        card -> card.how() == How.WALKOVER_AWAY && card.games().equals(Days.games("11-0")));
        assertThat(facts(day, ExchangeFact.SheetsOpened.class).get(0).awaySecret())
                .isEmpty();
        assertThat(day.event().progress(day.tie("A1")).winner()).contains(Side.HOME);
        assertThat(facts(day, DrawFact.SlotFilled.class))
                .extracting(DrawFact.SlotFilled::club)
                .containsExactlyInAnyOrder(ClubId.of("N"), ClubId.of("S"));
        assertThat(day.notes())
                .as("the decider pair that nobody needs any more goes unseen")
                .contains(new PrivateNote.SheetDropped(DECIDER, N));
    }

    @Test
    void a_supplied_side_opens_without_a_secret() {
        Days day = Days.oneTie()
                .by(Days.captain("N"))
                .does(seal("N"))
                .by(Days.referee())
                .at("09:51")
                .does(new SupplySide(SHEETS, S, straight("S"), "From the envelope", "R. Jansen"))
                .by(Exchanges.AUTOMATIC)
                .does(OPEN);
        assertThat(facts(day, ExchangeFact.SheetsOpened.class))
                .containsExactly(new ExchangeFact.SheetsOpened(
                        SHEETS, straight("N"), Optional.of(SECRET), straight("S"), Optional.empty()));
    }

    @Test
    void a_sheet_on_the_phone_holds_both_back() {
        Days day = Days.oneTie()
                .by(Days.captain("N"))
                .does(seal("N"))
                .by(Days.captain("S"))
                .does(new KeepOnPhone(SHEETS, S, Receipt.of(SECRET, TieId.of("A1"), S, straight("S"))))
                .by(Days.desk())
                .at("09:45");
        assertThat(why(day, OPEN)).containsExactly("on-phone");
        day.by(Days.captain("S"))
                .at("10:05")
                .does(new HandInSheet(SHEETS, S, straight("S"), SECRET))
                .by(Days.desk())
                .does(OPEN);
        assertThat(facts(day, ExchangeFact.SheetsOpened.class)).hasSize(1);
    }

    @Test
    void a_decider_waits_until_the_tie_is_level_and_its_minutes_are_over() {
        OpenSheets open = new OpenSheets(DECIDER);
        Days day = Asked.opened()
                .by(Days.captain("N"))
                .does(sealDecider("N", "1", "2"))
                .by(Days.captain("S"))
                .does(sealDecider("S", "1", "8"))
                .by(Days.desk())
                .at("10:30")
                .cards("A1", "11-5", "11-5", "5-11");
        assertThat(why(day, open)).containsExactly("not-level");
        assertThat(Exchanges.isWanted(day.event(), DECIDER)).isFalse();
        day.card("A1", "4", "5-11");
        assertThat(Exchanges.isWanted(day.event(), DECIDER)).isTrue();
        assertThat(why(day.at("10:34"), open)).containsExactly("too-early");
        day.at("10:35").does(open);
        assertThat(day.tie("A1").opened().get(RubberNo.DECIDER).away()).contains(Pair.of("S1", "S8"));
    }

    @Test
    void a_forfeited_decider_is_a_walkover_to_the_target_of_the_decider() {
        Days day = Asked.level()
                .with(Setting.DECIDER_SCORING, "rally-15")
                .by(Days.captain("N"))
                .does(sealDecider("N", "1", "2"))
                .by(Days.referee())
                .at("10:41")
                .does(new ForfeitSide(DECIDER, S, "Nobody fit to play", "R. Jansen"))
                .does(new OpenSheets(DECIDER));
        assertThat(facts(day, PlayFact.CardEntered.class))
                .endsWith(new PlayFact.CardEntered(
                        TieId.of("A1"), RubberNo.DECIDER, Days.games("15-0"), How.WALKOVER_AWAY));
        assertThat(day.event().progress(day.tie("A1")).winner()).contains(Side.HOME);
    }

    @Test
    void drops_decider_sheets_of_a_tie_that_ended_without_one() {
        Days day = Asked.opened()
                .by(Days.captain("N"))
                .does(sealDecider("N", "1", "2"))
                .by(Days.desk());
        Event sealed = day.event();
        day.cards("A1", "11-5", "11-5", "11-5", "5-11");
        assertThat(Exchanges.unneeded(sealed, day.event())).containsExactly(new PrivateNote.SheetDropped(DECIDER, N));
        assertThat(Exchanges.unneeded(day.event(), day.event())).isEmpty();
    }

    @Test
    void a_level_tie_without_a_decider_pair_is_not_due() {
        assertThat(Exchanges.due(Asked.level().event(), Days.moment("11:00"))).isEmpty();
    }

    @Test
    void a_tie_that_is_not_there_or_has_no_clubs_yet_is_not_opened() {
        Days day = Days.oneTie().knockoutTie("F", 1, "A-1", "A-2").by(Days.referee());
        assertThat(why(day, new OpenSheets(ExchangeId.sheets(TieId.of("A9"))))).isNotEmpty();
        assertThat(why(day, new OpenSheets(ExchangeId.sheets(TieId.of("F"))))).isNotEmpty();
        assertThat(Exchanges.isWanted(day.event(), ExchangeId.sheets(TieId.of("A9"))))
                .isFalse();
        assertThat(Exchanges.isWanted(day.event(), ExchangeId.sheets(TieId.of("F"))))
                .isFalse();
        assertThat(Exchanges.isWanted(day.event(), Asked.SHEETS)).isTrue();
        assertThat(Exchanges.isWanted(day.event(), Asked.DECIDER)).isFalse();
    }

    @Test
    void a_first_sheet_is_late_from_the_minute_after_deadline_and_grace() {
        Days day = Days.oneTie().with(Setting.LATE_SHEET, "grace").with(Setting.GRACE_MINUTES, "5");
        assertThat(Exchanges.closes(day.event(), Asked.SHEETS)).contains(Days.moment("09:51"));
        assertThat(Exchanges.closes(day.with(Setting.LATE_SHEET, "forfeit").event(), Asked.SHEETS))
                .contains(Days.moment("09:46"));
        assertThat(Exchanges.closes(day.event(), ExchangeId.sheets(TieId.of("A9"))))
                .isEmpty();
    }

    @Test
    void the_tool_opens_by_itself_unless_a_neutral_person_was_named() {
        assertThat(Exchanges.openByThemselves(Days.oneTie().event())).isTrue();
        assertThat(Exchanges.openByThemselves(Days.oneTie()
                        .fact(new tiewright.event.SetUpFact.OpeningChosen(true, java.util.Optional.of("Ola")))
                        .event()))
                .isFalse();
    }
}
