package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;
import tiewright.conditions.Setting;
import tiewright.conditions.Withdrawal;

/** What facts add up to: the laws of folding on facts in any order, then what each family makes of its facts. */
class FoldTest {
    private static final int ROUNDS = 300;
    private static final TieId A1 = TieId.of("A1");
    private static final RubberNo ONE = RubberNo.of(1);
    private static final ClubId N = ClubId.of("N");
    private static final ClubId S = ClubId.of("S");
    private static final PlayerId N1 = PlayerId.of("N1");

    @Test
    void folding_in_two_parts_gives_the_same_event_wherever_it_is_cut() {
        for (int round = 0; round < ROUNDS; round++) {
            Random random = Seed.random(round);
            List<Recorded> facts = RandomFacts.of(random, 40 + random.nextInt(120));
            int cut = random.nextInt(facts.size() + 1);
            Event first = Event.of(facts.subList(0, cut));
            assertThat(first.then(facts.subList(cut, facts.size())))
                    .as(Seed.rerun(round))
                    .isEqualTo(Event.of(facts));
            assertThat(first).as(Seed.rerun(round)).isEqualTo(Event.of(facts.subList(0, cut)));
        }
    }

    @Test
    void the_random_facts_are_of_every_kind() {
        Set<FactKind> seen = EnumSet.noneOf(FactKind.class);
        for (int round = 0; round < ROUNDS; round++) {
            RandomFacts.of(Seed.random(round), 100)
                    .forEach(one -> seen.add(one.fact().kind()));
        }
        assertThat(seen).containsExactlyInAnyOrder(FactKind.values());
    }

    @Test
    void a_fact_out_of_its_turn_is_refused() {
        Days day = Days.oneTie();
        List<Recorded> facts = day.facts();
        Recorded last = facts.get(facts.size() - 1);
        assertThatThrownBy(() -> Event.of(facts.subList(1, 3))).hasMessage("fact 2 cannot follow fact 0");
        assertThatThrownBy(() -> day.event().then(List.of(last)))
                .hasMessage("fact " + last.seq() + " cannot follow fact " + last.seq());
    }

    @Test
    void facts_to_come_are_numbered_on_and_stand_at_the_moment_and_by_the_person_given() {
        Days day = Days.oneTie().opened("A1").at("10:30").by(Days.volunteer("Ivo"));
        Event after = day.event()
                .after(
                        List.of(
                                new PlayFact.CardEntered(A1, ONE, Days.games("15-3"), How.PLAYED),
                                new PlayFact.CardEntered(A1, RubberNo.of(2), Days.games("15-3"), How.PLAYED)),
                        day.given());
        Card.Entry second =
                after.tie(A1).orElseThrow().card(RubberNo.of(2)).entries().get(0);
        assertThat(second.seq()).isEqualTo(day.event().seq() + 2);
        assertThat(second.by()).isEqualTo(Days.volunteer("Ivo"));
        assertThat(second.receivedAt()).isEqualTo(Days.moment("10:30"));
        assertThat(day.tie("A1").cards()).isEmpty();
    }

    // what was published of the event

    @Test
    void before_anything_is_published_the_conditions_of_a_club_day_hold() {
        assertThat(Event.empty().conditions()).isEqualTo(Conditions.of(Preset.CLUB_DAY));
        assertThat(Event.empty().conditionsVersion()).isZero();
        assertThat(Event.empty().about()).isEmpty();
        assertThat(Event.empty().seq()).isZero();
    }

    @Test
    void the_newest_version_that_a_captain_ticked_stays() {
        Event event = Days.oneTie()
                .fact(new SetUpFact.ConditionsRead(N, 2), new SetUpFact.ConditionsRead(N, 1))
                .event();
        assertThat(event.conditionsRead()).containsExactly(Map.entry(N, 2));
    }

    @Test
    void conditions_safety_opening_and_the_day_of_deletion_are_those_said_last() {
        Event event = Days.oneTie()
                .with(Setting.RUBBERS, "5")
                .fact(
                        new SetUpFact.SafetyDescribed("a", "b", "112"),
                        new SetUpFact.OpeningChosen(true, Optional.of("Ola")),
                        new SetUpFact.DeletionDated(LocalDate.of(2026, 8, 1), NamesKept.CODES),
                        new SetUpFact.DeletionDated(LocalDate.of(2026, 8, 2), NamesKept.INITIALS))
                .event();
        assertThat(event.conditions().rubbers()).isEqualTo(5);
        assertThat(event.conditionsVersion()).isEqualTo(2);
        assertThat(event.safety().emergency()).isEqualTo("112");
        assertThat(event.opening()).contains(new SetUpFact.OpeningChosen(true, Optional.of("Ola")));
        assertThat(event.deletion().promised())
                .contains(new SetUpFact.DeletionDated(LocalDate.of(2026, 8, 2), NamesKept.INITIALS));
        assertThat(event.deletion().erasedAt()).isEmpty();
    }

    @Test
    void deleting_ends_every_link_but_those_of_organisers_and_is_remembered() {
        Event event = Days.oneTie()
                .fact(link("L1", Role.CAPTAIN), link("L2", Role.ORGANISER))
                .at("20:00")
                .fact(new SetUpFact.DataErased(new TreeMap<>()))
                .event();
        assertThat(event.links().get("L1").revoked()).isTrue();
        assertThat(event.links().get("L2").revoked()).isFalse();
        assertThat(event.deletion().erasedAt()).contains(Days.moment("20:00"));
    }

    private static SetUpFact.LinkIssued link(String name, Role role) {
        return new SetUpFact.LinkIssued(name, role, Optional.of(N), Optional.of(N1), "for " + name, "0".repeat(64));
    }

    // who is entered

    @Test
    void a_link_ended_alone_leaves_the_others() {
        Event event = Days.oneTie()
                .fact(link("L1", Role.CAPTAIN), link("L2", Role.CAPTAIN), new SetUpFact.LinkRevoked("L1"))
                .event();
        assertThat(event.links().get("L1").revoked()).isTrue();
        assertThat(event.links().get("L1").label()).isEqualTo("for L1");
        assertThat(event.links().get("L2").revoked()).isFalse();
    }

    @Test
    void a_player_entered_anew_keeps_what_the_desk_noted() {
        Days day = Days.oneTie().at("08:30").fact(new SetUpFact.CheckedIn(N1, true));
        assertThat(day.event().player(N1).orElseThrow().checkedInAt()).contains(Days.moment("08:30"));
        day.at("09:00").player("N1", "N", 4);
        assertThat(day.event().player(N1).orElseThrow().checkedInAt()).contains(Days.moment("08:30"));
        assertThat(day.event().player(N1).orElseThrow().rank()).hasValue(4);
        day.fact(new SetUpFact.CheckedIn(N1, false)).player("N1", "N", 5);
        assertThat(day.event().player(N1).orElseThrow().absent()).isTrue();
        assertThat(day.event().player(N1).orElseThrow().checkedInAt()).isEmpty();
    }

    @Test
    void a_club_goes_with_its_squad_and_a_player_alone() {
        Event event = Days.oneTie()
                .fact(new SetUpFact.ClubRemoved(N), new SetUpFact.PlayerRemoved(PlayerId.of("S1")))
                .event();
        assertThat(event.club(N)).isEmpty();
        assertThat(event.squad(N)).isEmpty();
        assertThat(event.squad(S)).hasSize(7);
    }

    // draw, ties, order of play

    @Test
    void a_draw_sweeps_away_the_ties_of_its_own_stage_only() {
        Days day = Days.oneTie().knockoutTie("F", 1, "A-1", "A-2");
        Event pools = Days.oneTie()
                .knockoutTie("F", 1, "A-1", "A-2")
                .fact(new DrawFact.PoolsDrawn("words", "Wim", new TreeMap<>(Map.of("A", List.of(S, N)))))
                .event();
        assertThat(pools.ties()).containsOnlyKeys(TieId.of("F"));
        assertThat(pools.pools()).isEqualTo(Map.of("A", List.of(S, N)));
        Event knockout = day.fact(new DrawFact.KnockoutDrawn("words", "Wim")).event();
        assertThat(knockout.ties()).containsOnlyKeys(A1);
        assertThat(knockout.knockoutDraw()).isPresent();
    }

    @Test
    void a_tie_called_off_is_gone_and_the_order_of_play_tells_it() {
        Event event = Days.oneTie().fact(new DrawFact.TieCalledOff(A1, 1)).event();
        assertThat(event.tie(A1)).isEmpty();
        assertThat(event.order().of(A1)).last().matches(OrderOfPlay.Change::calledOff);
    }

    @Test
    void a_tie_that_begins_again_keeps_its_time_and_loses_all_that_happened() {
        Days day = Days.oneTie().opened("A1").cards("A1", "15-3");
        Event event = day.fact(new DrawFact.TieRestarted(A1, Optional.empty(), Optional.empty(), 1))
                .event();
        Tie tie = event.tie(A1).orElseThrow();
        assertThat(tie.isUnderWay()).isFalse();
        assertThat(tie.start()).contains(LocalTime.of(10, 0));
        assertThat(tie.clubs()).containsExactly(N, S);
        assertThat(event.exchanges()).isEmpty();
        assertThat(event.hasBegun(tie)).isFalse();
    }

    // exchanges

    @Test
    void the_first_sealed_sheet_of_all_freezes_the_conditions() {
        ExchangeId sheets = ExchangeId.sheets(A1);
        Days day = Days.oneTie();
        assertThat(day.event().isFrozen()).isFalse();
        day.at("09:00").fact(sealed(sheets, N)).at("09:10").fact(sealed(sheets, S));
        assertThat(day.event().isFrozen()).isTrue();
        assertThat(day.event().envelopes().firstSealedAt()).contains(Days.moment("09:00"));
    }

    private static ExchangeFact.SheetSealed sealed(ExchangeId id, ClubId club) {
        return new ExchangeFact.SheetSealed(id, club, "1".repeat(64), false);
    }

    @Test
    void an_opening_brought_in_with_files_stands_at_its_own_time_and_any_other_at_its_receipt() {
        ExchangeId sheets = ExchangeId.sheets(A1);
        Sheet home = Days.straight("N", 4);
        Sheet away = Days.straight("S", 4);
        Days day = Days.oneTie().at("11:00");
        day.fact(new ExchangeFact.SheetsOpened(
                sheets, home, Optional.empty(), away, Optional.empty(), Optional.of(LocalTime.of(9, 45))));
        assertThat(day.event().exchange(sheets).openedAt()).contains(Days.moment("09:45"));
        assertThat(day.tie("A1").opened()).hasSize(4);
        assertThat(day.tie("A1").opened().get(ONE)).isEqualTo(new Tie.OpenedRubber(home.pair(ONE), away.pair(ONE)));
        day.fact(new ExchangeFact.SheetsOpened(sheets, home, Optional.empty(), away, Optional.empty()));
        assertThat(day.event().exchange(sheets).openedAt()).contains(Days.moment("11:00"));
    }

    @Test
    void what_a_club_does_that_is_not_in_the_tie_changes_no_exchange() {
        ExchangeId sheets = ExchangeId.sheets(A1);
        Event event = Days.oneTie()
                .clubs("X")
                .fact(sealed(sheets, ClubId.of("X")), sealed(ExchangeId.sheets(TieId.of("none")), N))
                .event();
        assertThat(event.exchanges()).isEmpty();
    }

    @Test
    void a_side_goes_through_sealing_phone_asking_ruling_and_return() {
        ExchangeId sheets = ExchangeId.sheets(A1);
        Days day = Days.oneTie().at("09:00");
        day.fact(new ExchangeFact.SheetSealed(sheets, N, "1".repeat(64), true));
        assertThat(side(day, sheets).atDesk()).isFalse();
        assertThat(side(day, sheets).isIn()).isTrue();
        day.fact(new ExchangeFact.SheetHandedIn(sheets, N), new ExchangeFact.OpeningAsked(sheets, N));
        day.fact(new ExchangeFact.ClubTold(sheets, N), new ExchangeFact.SideRuled(sheets, N, true, 3));
        assertThat(side(day, sheets).atDesk()).isTrue();
        assertThat(side(day, sheets).openingAsked()).isTrue();
        assertThat(side(day, sheets).told()).isTrue();
        assertThat(side(day, sheets).ruled()).isPresent();
        day.at("09:20").fact(sealed(sheets, N));
        assertThat(side(day, sheets).sealed()).isEqualTo(2);
        assertThat(side(day, sheets).told())
                .as("told of the sheet that was replaced")
                .isFalse();
        assertThat(side(day, sheets).openingAsked()).isTrue();
        assertThat(side(day, sheets).firstSealedAt()).contains(Days.moment("09:00"));
        assertThat(side(day, sheets).sealedAt()).contains(Days.moment("09:20"));
        day.fact(new ExchangeFact.SheetReturned(sheets, N, "why"));
        assertThat(side(day, sheets).isIn()).isFalse();
        assertThat(side(day, sheets).openingAsked()).isFalse();
        assertThat(side(day, sheets).atDesk()).isFalse();
        assertThat(side(day, sheets).firstSealedAt()).isEmpty();
        assertThat(side(day, sheets).sealed()).isEqualTo(2);
        assertThat(side(day, sheets).ruled()).isPresent();
    }

    private static Exchange.SideOfExchange side(Days day, ExchangeId id) {
        return day.event().exchange(id).home();
    }

    @Test
    void a_replaced_pair_stands_on_its_own_side_of_its_own_rubber() {
        Days day = Days.oneTie().opened("A1").at("10:20");
        ExchangeFact.PairReplaced fact = new ExchangeFact.PairReplaced(
                ExchangeId.sheets(A1), S, ONE, Optional.of(Pair.of("S7", "S8")), "injury", "R");
        day.fact(fact);
        assertThat(day.tie("A1").opened().get(ONE).away()).contains(Pair.of("S7", "S8"));
        assertThat(day.tie("A1").opened().get(ONE).home()).contains(Pair.of("N1", "N2"));
        assertThat(day.tie("A1").opened().get(RubberNo.of(2)).away()).contains(Pair.of("S3", "S4"));
        assertThat(day.event().exchange(ExchangeId.sheets(A1)).replacements())
                .containsExactly(new Exchange.Replacement(fact, Days.moment("10:20")));
    }

    // play

    @Test
    void a_call_without_a_rubber_is_one_of_each_and_is_taken_back_so() {
        Days day = Days.oneTie().at("10:00").fact(new PlayFact.CourtCalled(A1, Optional.empty(), "1"));
        assertThat(day.tie("A1").calls().keySet()).containsExactlyElementsOf(RubberNo.upTo(4));
        assertThat(day.tie("A1").calls().get(ONE)).isEqualTo(new Tie.Call("1", Days.moment("10:00")));
        day.fact(new PlayFact.CallTakenBack(A1, Optional.of(ONE), "why"));
        assertThat(day.tie("A1").calls().keySet())
                .containsExactlyElementsOf(RubberNo.upTo(4).subList(1, 4));
        day.fact(new PlayFact.CallTakenBack(A1, Optional.empty(), "why"));
        assertThat(day.tie("A1").calls()).isEmpty();
    }

    @Test
    void a_rubber_stands_still_until_play_goes_on_or_a_card_ends_it() {
        Days day = Days.oneTie().at("10:10").fact(new PlayFact.PlayStopped(A1, ONE));
        assertThat(day.tie("A1").stopped()).containsExactly(Map.entry(ONE, Days.moment("10:10")));
        day.fact(new PlayFact.PlayResumed(A1, ONE));
        assertThat(day.tie("A1").stopped()).isEmpty();
        day.fact(new PlayFact.PlayStopped(A1, ONE), new PlayFact.PlayStopped(A1, RubberNo.of(2)));
        day.card("A1", "1", "15-3");
        assertThat(day.tie("A1").stopped()).containsOnlyKeys(RubberNo.of(2));
    }

    @Test
    void a_card_keeps_every_entry_with_who_when_and_why() {
        Days day = Days.oneTie().at("10:10").by(Days.volunteer("Ivo"));
        day.card("A1", "1", "15-3").by(Days.desk()).at("10:20");
        day.fact(
                new PlayFact.CardCorrected(
                        A1, ONE, Days.games("15-5"), How.RETIRED_AWAY, Days.games("9-5"), "misread", OptionalInt.of(3)),
                new PlayFact.CardTakenBack(A1, ONE, "never played"));
        long seq = day.event().seq();
        assertThat(day.tie("A1").card(ONE).entries())
                .containsExactly(
                        new Card.Entry(
                                seq - 2,
                                Days.volunteer("Ivo"),
                                Days.moment("10:10"),
                                new Card.Written(Days.games("15-3"), How.PLAYED, List.of()),
                                Card.Purpose.READS,
                                new Because("", OptionalInt.empty())),
                        new Card.Entry(
                                seq - 1,
                                Days.desk(),
                                Days.moment("10:20"),
                                new Card.Written(Days.games("15-5"), How.RETIRED_AWAY, Days.games("9-5")),
                                Card.Purpose.SETTLES,
                                new Because("misread", OptionalInt.of(3))),
                        new Card.Entry(
                                seq,
                                Days.desk(),
                                Days.moment("10:20"),
                                new Card.Written(List.of(), How.VOID, List.of()),
                                Card.Purpose.TAKES_BACK,
                                new Because("never played", OptionalInt.empty())));
    }

    // officials

    @Test
    void a_signature_holds_until_it_is_withdrawn_and_the_time_it_was_given_stays_known() {
        Days day = Days.oneTie().at("14:00");
        day.fact(new OfficialFact.TableSigned("A", List.of(N, S), "R"), new OfficialFact.EventSigned(List.of(N), "R"));
        assertThat(day.event().signedTables()).containsOnlyKeys("A");
        day.fact(new OfficialFact.SignatureWithdrawn(Optional.of("A"), 1));
        assertThat(day.event().signedTables()).isEmpty();
        assertThat(day.event().signed()).isPresent();
        assertThat(day.event().disputes().signedAt()).containsExactly(Map.entry("A", Days.moment("14:00")));
        day.fact(new OfficialFact.SignatureWithdrawn(Optional.empty(), 1));
        assertThat(day.event().signed()).isEmpty();
    }

    @Test
    void lots_of_a_pool_are_kept_in_order_beside_those_of_others() {
        OfficialFact.LotDrawn first = new OfficialFact.LotDrawn("A", List.of(N, S), "Wim");
        OfficialFact.LotDrawn second = new OfficialFact.LotDrawn("A", List.of(S, N), "Wim");
        OfficialFact.LotDrawn other = new OfficialFact.LotDrawn("B", List.of(N), "Wim");
        assertThat(Days.oneTie().fact(first, other, second).event().lots())
                .isEqualTo(Map.of("A", List.of(first, second), "B", List.of(other)));
    }

    @Test
    void rulings_notices_heat_and_protests_are_kept_in_order_with_their_time() {
        OfficialFact.RulingGiven ruling = new OfficialFact.RulingGiven(1, "what", "ruled", "why", "R");
        OfficialFact.NoticePosted notice = new OfficialFact.NoticePosted(
                1, "text", Optional.of(A1), Optional.empty(), Optional.of("10:30"), "why");
        OfficialFact.HeatDecided heat = new OfficialFact.HeatDecided("wbgt", 281, "caution", "drink", "R");
        OfficialFact.ProtestMade made =
                new OfficialFact.ProtestMade(1, N, Optional.of(A1), "text", Optional.empty(), "Cap");
        OfficialFact.ProtestDecided decided = new OfficialFact.ProtestDecided(1, true, false, 2);
        Days day = Days.oneTie().at("12:00").fact(ruling, notice, heat, made).at("12:30");
        assertThat(day.event().disputes().openProtests()).hasSize(1);
        day.fact(decided);
        Instant noon = Days.moment("12:00");
        assertThat(day.event().rulings()).containsExactly(ruling.stated());
        assertThat(day.event().notices())
                .containsExactly(new Event.Posted(
                        notice.stated(),
                        noon,
                        Optional.of(Saying.of("notices.between")
                                .with("home", Saying.typed("Club N"))
                                .with("away", Saying.typed("Club S")))));
        assertThat(day.event().heat()).containsExactly(new Event.Heat(heat, noon));
        assertThat(day.event().disputes().protest(1))
                .contains(new Disputes.Protest(made, noon, Optional.of(decided), Optional.of(Days.moment("12:30"))));
        assertThat(day.event().disputes().openProtests()).isEmpty();
    }

    @Test
    void a_decision_on_one_protest_leaves_the_others_open() {
        Days day = Days.oneTie();
        for (int number = 1; number <= 2; number++) {
            day.fact(new OfficialFact.ProtestMade(number, N, Optional.empty(), "text", Optional.empty(), "Cap"));
        }
        day.fact(new OfficialFact.ProtestDecided(2, false, false, 1));
        assertThat(day.event().disputes().openProtests())
                .extracting(protest -> protest.made().number())
                .containsExactly(1);
        assertThat(day.event().disputes().protest(2))
                .map(protest -> protest.made().number())
                .contains(2);
        assertThat(day.event().disputes().protest(3)).isEmpty();
    }

    @Test
    void withdrawals_corrections_and_cases_are_kept() {
        OfficialFact.ClubWithdrawn gone = new OfficialFact.ClubWithdrawn(N, Optional.of(A1), Withdrawal.KEEP, 1);
        OfficialFact.CorrectionDecided corrected = new OfficialFact.CorrectionDecided(
                A1, ONE, Days.games("15-3"), How.PLAYED, CorrectionChoice.REPLAY, 2, "why");
        OfficialFact.CaseRuled ruled = new OfficialFact.CaseRuled("ineligible", A1, N, Penalty.RUBBERS, 3);
        Days day = Days.oneTie();
        assertThat(day.event().isGone(day.tie("A1"))).isFalse();
        Event event = day.fact(gone, corrected, ruled).event();
        assertThat(event.withdrawals()).isEqualTo(Map.of(N, gone));
        assertThat(event.isGone(day.tie("A1"))).isTrue();
        assertThat(event.disputes().corrections()).containsExactly(corrected);
        assertThat(event.disputes().cases()).containsExactly(ruled);
    }

    // when a tie has begun

    @Test
    void a_tie_has_begun_with_the_first_sheet_or_ruling_and_is_under_way_when_the_hall_sees_it() {
        ExchangeId sheets = ExchangeId.sheets(A1);
        Days day = Days.oneTie();
        assertThat(begun(day)).isFalse();
        assertThat(begun(Days.oneTie().fact(sealed(sheets, N)))).isTrue();
        assertThat(begun(Days.oneTie().fact(sealed(ExchangeId.decider(A1), S)))).isTrue();
        assertThat(begun(Days.oneTie().fact(new ExchangeFact.SideRuled(sheets, S, true, 1))))
                .isTrue();
        Days returned = Days.oneTie().fact(sealed(sheets, N), new ExchangeFact.SheetReturned(sheets, N, "why"));
        assertThat(begun(returned)).isFalse();
        assertThat(returned.event().exchange(sheets).wasEverBegun()).isTrue();
        assertThat(Days.oneTie().event().exchange(sheets).wasEverBegun()).isFalse();
        assertThat(Days.oneTie().fact(sealed(sheets, N)).tie("A1").isUnderWay()).isFalse();
        assertThat(Days.oneTie().opened("A1").tie("A1").isUnderWay()).isTrue();
        assertThat(Days.oneTie().opened("A1").tie("A1").isInPlay()).isFalse();
        assertThat(Days.oneTie()
                        .fact(new PlayFact.CourtCalled(A1, Optional.of(ONE), "1"))
                        .tie("A1")
                        .isInPlay())
                .isTrue();
        assertThat(begun(Days.oneTie().card("A1", "1", "15-3"))).isTrue();
        assertThat(Days.oneTie().card("A1", "1", "15-3").tie("A1").isInPlay()).isTrue();
    }

    private static boolean begun(Days day) {
        return day.event().hasBegun(day.tie("A1"));
    }

    @Test
    void a_filled_slot_keeps_where_it_comes_from_and_a_kept_one_says_so() {
        Days day = Days.oneTie().knockoutTie("F", 1, "A-1", "A-2");
        day.fact(
                new DrawFact.SlotFilled(TieId.of("F"), Side.AWAY, S),
                new DrawFact.SlotKept(TieId.of("F"), Side.HOME, N, 1));
        assertThat(day.tie("F").away())
                .isEqualTo(Slot.from(SlotSource.place("A", 2)).filledBy(S));
        assertThat(day.tie("F").home())
                .isEqualTo(new Slot(Optional.of(N), Optional.of(SlotSource.place("A", 1)), true));
        assertThat(day.tie("F").isReady()).isTrue();
        day.fact(new DrawFact.TieRestarted(TieId.of("F"), Optional.empty(), Optional.of(N), 1));
        assertThat(day.tie("F").home().club()).isEmpty();
        assertThat(day.tie("F").away().club()).contains(N);
        assertThat(OptionalInt.of(day.tie("F").round())).hasValue(1);
    }
}
