package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.conditions.Withdrawal;

/** What of an event whose eyes may see. */
class VisibleEventTest {
    private static final int ROUNDS = 100;
    private static final TieId A1 = TieId.of("A1");
    private static final ExchangeId SHEETS = ExchangeId.sheets(A1);
    private static final ClubId N = ClubId.of("N");
    private static final ClubId S = ClubId.of("S");
    private static final PlayerId N1 = PlayerId.of("N1");
    private static final Viewer PLAYER_OF_N = Viewer.player(N, N1);
    private static final List<Viewer> OFFICIALS =
            List.of(Viewer.of(Role.DESK), Viewer.of(Role.ORGANISER), Viewer.of(Role.REFEREE));
    private static final List<Viewer> STRANGERS =
            List.of(Viewer.PUBLIC, Viewer.of(Role.VOLUNTEER), Viewer.captain(S), Viewer.player(S, PlayerId.of("S1")));
    private static final List<Viewer> EVERYBODY = Stream.of(
                    OFFICIALS.stream(), STRANGERS.stream(), Stream.of(Viewer.captain(N), PLAYER_OF_N))
            .flatMap(viewers -> viewers)
            .toList();

    private static VisibleEvent seen(Days day, Viewer viewer) {
        return VisibleEvent.of(day.event(), day.directory(), viewer, day.now());
    }

    private static Directory names(int bornYear) {
        Map<PlayerId, Directory.Person> people = new HashMap<>();
        people.put(N1, new Directory.Person("Ana Vidal", OptionalInt.of(bornYear)));
        return new Directory(people);
    }

    private static String name(Event event, Viewer viewer, int bornYear) {
        return VisibleEvent.of(event, names(bornYear), viewer, Instant.EPOCH).name(N1);
    }

    @Test
    void a_minor_is_named_in_full_to_officials_and_the_own_club_only() {
        Event event = Days.oneTie().event();
        for (Viewer viewer : EVERYBODY) {
            boolean near = OFFICIALS.contains(viewer) || viewer.isOf(N);
            assertThat(name(event, viewer, 2008)).as(viewer.toString()).isEqualTo(near ? "Ana Vidal" : "Ana V.");
            assertThat(name(event, viewer, 2007)).as(viewer.toString()).isEqualTo("Ana Vidal");
        }
    }

    /** Nobody is named in full by mistake while it is not known on which day the event is. */
    @Test
    void before_the_event_has_a_date_whoever_may_be_a_minor_is_shortened() {
        Event undated = Days.empty().clubs("N").event();
        assertThat(name(undated, Viewer.PUBLIC, 2007)).isEqualTo("Ana V.");
        assertThat(name(undated, Viewer.captain(N), 2007)).isEqualTo("Ana Vidal");
        assertThat(VisibleEvent.of(undated, Directory.EMPTY, Viewer.PUBLIC, Instant.EPOCH)
                        .name(N1))
                .isEqualTo("N1");
    }

    @Test
    void which_conditions_a_captain_has_read_is_known_to_that_captain_and_officials() {
        Days day = Days.oneTie().fact(new SetUpFact.ConditionsRead(N, 1));
        for (Viewer viewer : EVERYBODY) {
            boolean near = OFFICIALS.contains(viewer) || viewer.isCaptainOf(N);
            assertThat(seen(day, viewer).conditionsRead(N))
                    .as(viewer.toString())
                    .isEqualTo(near ? 1 : 0);
            assertThat(seen(day, viewer).conditionsRead(S))
                    .as(viewer.toString())
                    .isZero();
        }
    }

    @Test
    void what_was_decided_in_heat_officials_see() {
        Days day = Days.oneTie().fact(new OfficialFact.HeatDecided("air", 300, "caution", "drink", "R"));
        for (Viewer viewer : EVERYBODY) {
            assertThat(seen(day, viewer).heat()).as(viewer.toString()).hasSize(OFFICIALS.contains(viewer) ? 1 : 0);
        }
    }

    private static SetUpFact.LinkIssued link(String name, Role role, ClubId... club) {
        return new SetUpFact.LinkIssued(
                name, role, Stream.of(club).findFirst(), Optional.empty(), "for " + name, "0".repeat(64));
    }

    /** Links of an organiser (LO), of the captains of N (L1) and S (L2), and of a player of N (L3). */
    private static Days linked() {
        return Days.oneTie()
                .by(Days.organiser())
                .fact(link("LO", Role.ORGANISER), link("L1", Role.CAPTAIN, N), link("L2", Role.CAPTAIN, S))
                .fact(link("L3", Role.PLAYER, N));
    }

    private static Viewer by(Days day, String link) {
        return Viewer.of(day.event().links().get(link));
    }

    @Test
    void links_are_shown_to_officials_and_those_of_a_club_to_its_captain() {
        for (Viewer viewer : EVERYBODY) {
            List<String> expected = OFFICIALS.contains(viewer)
                    ? List.of("LO", "L1", "L2", "L3")
                    : viewer.isCaptainOf(N) ? List.of("L1", "L3") : viewer.isCaptainOf(S) ? List.of("L2") : List.of();
            assertThat(seen(linked(), viewer).links())
                    .as(viewer.toString())
                    .extracting(Link::name)
                    .isEqualTo(expected);
        }
        assertThat(seen(linked(), Viewer.captain(N)).linksOf(N).all())
                .extracting(Link::name)
                .containsExactly("L1");
        assertThat(seen(linked(), Viewer.captain(S)).linksOf(N).all()).isEmpty();
    }

    @Test
    void a_link_reads_what_its_club_keeps_for_itself_once_it_is_let_in() {
        Days day = linked();
        assertThat(by(day, "L1").link()).contains("L1");
        assertThat(seen(day, by(day, "L1")).isLetIn()).isTrue();
        assertThat(seen(day, by(day, "LO")).isLetIn()).isFalse();
        assertThat(seen(day, by(day, "L3")).isLetIn()).isFalse();
        assertThat(seen(day, Viewer.captain(N)).isLetIn())
                .as("nobody knows by which link")
                .isFalse();
        day.at("08:30").fact(link("L4", Role.CAPTAIN, N));
        assertThat(seen(day, by(day, "L4")).isLetIn()).isFalse();
    }

    @Test
    void a_sealed_sheet_is_read_by_links_of_its_own_club_that_were_there() {
        Days day = linked();
        day.by(new Actor(Role.CAPTAIN, Optional.of(N), "L1", "", Optional.of("L1")))
                .fact(new ExchangeFact.SheetSealed(SHEETS, N, "1".repeat(64), false));
        assertThat(seen(day, by(day, "L1")).mayRead(SHEETS)).isTrue();
        assertThat(seen(day, by(day, "L3")).mayRead(SHEETS)).isTrue();
        assertThat(seen(day, by(day, "L2")).mayRead(SHEETS)).isFalse();
        assertThat(seen(day, by(day, "LO")).mayRead(SHEETS)).isFalse();
        assertThat(seen(day, Viewer.captain(N)).mayRead(SHEETS)).isFalse();
        assertThat(seen(day, by(day, "L1")).mayRead(ExchangeId.decider(A1))).isFalse();
    }

    /** L1 sealed, then L4, which came later and which nobody let in. */
    private static Days swapped() {
        Days day = linked();
        day.by(new Actor(Role.CAPTAIN, Optional.of(N), "L1", "", Optional.of("L1")))
                .fact(new ExchangeFact.SheetSealed(SHEETS, N, "1".repeat(64), false))
                .by(Days.organiser())
                .at("08:30")
                .fact(link("L4", Role.CAPTAIN, N))
                .by(new Actor(Role.CAPTAIN, Optional.of(N), "L4", "", Optional.of("L4")))
                .fact(new ExchangeFact.SheetSealed(SHEETS, N, "2".repeat(64), false));
        return day;
    }

    @Test
    void a_sheet_that_nobody_confirmed_is_told_to_its_captain_alone_and_until_the_opening() {
        Days day = swapped();
        for (Viewer viewer : EVERYBODY) {
            assertThat(seen(day, viewer).unconfirmed(SHEETS).map(Link::name))
                    .as(viewer.toString())
                    .isEqualTo(viewer.isCaptainOf(N) ? Optional.of("L4") : Optional.empty());
        }
        assertThat(seen(day, Viewer.captain(N)).unconfirmed(ExchangeId.decider(A1)))
                .isEmpty();
        Days confirmed = swapped()
                .by(new Actor(Role.CAPTAIN, Optional.of(N), "L1", "", Optional.of("L1")))
                .fact(new ExchangeFact.SheetSealed(SHEETS, N, "2".repeat(64), false));
        assertThat(seen(confirmed, Viewer.captain(N)).unconfirmed(SHEETS)).isEmpty();
        day.opened("A1");
        assertThat(seen(day, Viewer.captain(N)).unconfirmed(SHEETS)).isEmpty();
    }

    @Test
    void a_moment_is_shown_as_the_halls_clock_shows_it() {
        VisibleEvent event = seen(Days.oneTie().at("10:30"), Viewer.PUBLIC);
        assertThat(event.clock(Days.moment("10:30"))).isEqualTo(LocalTime.of(10, 30));
        assertThat(event.zone()).isEqualTo(Days.ZONE);
        assertThat(event.now()).isEqualTo(Days.moment("10:30"));
        assertThat(event.startsAt(event.tie(A1).orElseThrow())).contains(Days.moment("10:00"));
        assertThat(seen(Days.empty(), Viewer.PUBLIC).zone()).isEqualTo(ZoneOffset.UTC);
    }

    @Test
    void a_club_that_is_not_entered_any_more_is_called_by_its_code() {
        VisibleEvent event = seen(Days.oneTie(), Viewer.PUBLIC);
        assertThat(event.clubName(N)).isEqualTo("Club N");
        assertThat(event.clubName(ClubId.of("X"))).isEqualTo("X");
    }

    @Test
    void it_reads_english_unless_asked_for_another_language_and_stays_the_viewers() {
        VisibleEvent event = seen(linked(), Viewer.captain(N));
        assertThat(event.language()).isEqualTo("en");
        VisibleEvent other = event.in("de");
        assertThat(other.language()).isEqualTo("de");
        assertThat(other.viewer()).isEqualTo(Viewer.captain(N));
        assertThat(other.links()).isEqualTo(event.links());
        assertThat(other.now()).isEqualTo(event.now());
        assertThat(other.name(N1)).isEqualTo("Player N1");
    }

    @Test
    void the_version_counts_what_everybody_may_notice_and_a_form_has_seen_what_its_viewer_may() {
        Days day = linked();
        assertThat(seen(day, Viewer.PUBLIC).version())
                .isEqualTo((int) day.event().seq() - 4);
        assertThat(seen(day, Viewer.PUBLIC).seq()).isEqualTo(day.event().seq() - 4);
        assertThat(seen(day, Viewer.of(Role.DESK)).seq()).isEqualTo(day.event().seq());
    }

    @Test
    void everybody_sees_what_was_published() {
        Days day = Days.oneTie()
                .poolTie("A2", "A", 2, "S", "N")
                .poolTie("B1", "B", 2, "S", "X")
                .fact(
                        new DrawFact.KnockoutDrawn("words", "Wim"),
                        new SetUpFact.SafetyDescribed("a", "b", "112"),
                        new SetUpFact.OpeningChosen(true, Optional.of("Ola")),
                        new SetUpFact.DeletionDated(LocalDate.of(2026, 8, 1), NamesKept.CODES),
                        new OfficialFact.LotDrawn("A", List.of(N, S), "Wim"),
                        new OfficialFact.TableSigned("A", List.of(N, S), "R"),
                        new OfficialFact.EventSigned(List.of(N), "R"),
                        new OfficialFact.RulingGiven(1, "what", "ruled", "why", "R"),
                        new OfficialFact.ClubWithdrawn(ClubId.of("X"), Optional.empty(), Withdrawal.KEEP, 1),
                        new ExchangeFact.SheetSealed(SHEETS, N, "1".repeat(64), false))
                .fact(new OfficialFact.NoticePosted(
                        1, "text", Optional.of(A1), Optional.empty(), Optional.empty(), "why"))
                .fact(new OfficialFact.CaseRuled("ineligible", A1, N, Penalty.NONE, 1));
        Event event = day.event();
        VisibleEvent all = seen(day, Viewer.PUBLIC);
        assertThat(all.clubs()).extracting(Club::id).containsExactly(N, S);
        assertThat(all.club(N)).isPresent();
        assertThat(all.players()).hasSize(16);
        assertThat(all.player(N1)).isPresent();
        assertThat(all.squad(S)).hasSize(8).allMatch(player -> player.club().equals(S));
        assertThat(all.courts()).extracting(Court::name).containsExactly("1", "2");
        assertThat(all.ties()).hasSize(3);
        assertThat(all.tiesOf(N)).extracting(Tie::id).containsExactly(A1, TieId.of("A2"));
        assertThat(all.tiesOfPool("A")).hasSize(2);
        assertThat(all.pools()).containsOnlyKeys("A", "B");
        assertThat(all.knockoutDraw()).isPresent();
        assertThat(all.draw()).isEmpty();
        assertThat(all.safety().emergency()).isEqualTo("112");
        assertThat(all.opening()).isPresent();
        assertThat(all.deletion().promised()).isPresent();
        assertThat(all.lots()).containsOnlyKeys("A");
        assertThat(all.signedTables()).containsOnlyKeys("A");
        assertThat(all.signed()).isPresent();
        assertThat(all.rulings()).hasSize(1);
        assertThat(all.notices()).hasSize(1);
        assertThat(all.withdrawals()).containsOnlyKeys(ClubId.of("X"));
        assertThat(all.disputes().cases()).hasSize(1);
        assertThat(all.order().changes()).hasSize(1);
        assertThat(all.isFrozen()).isTrue();
        assertThat(all.conditionsVersion()).isEqualTo(1);
        assertThat(all.conditions()).isEqualTo(event.conditions());
        assertThat(all.about()).isPresent();
        assertThat(all.exchange(SHEETS).home().in()).isTrue();
        assertThat(all.deadline(SHEETS)).isEqualTo(Deadlines.of(event, SHEETS)).isPresent();
        assertThat(all.isGone(day.tie("B1"))).isTrue();
        assertThat(all.goesOn(day.tie("B1"))).isFalse();
        assertThat(all.goesOn(day.tie("A1"))).isTrue();
        assertThat(all.isGone(day.tie("A1"))).isFalse();
        assertThat(all.progress(day.tie("A1"))).isEqualTo(event.progress(day.tie("A1")));
    }

    @Test
    void pools_drawn_are_seen_and_a_tie_that_is_over_goes_on_no_more() {
        Days drawn =
                Days.oneTie().fact(new DrawFact.PoolsDrawn("words", "Wim", new TreeMap<>(Map.of("A", List.of(S, N)))));
        assertThat(seen(drawn, Viewer.PUBLIC).draw()).isPresent();
        Days over = Days.oneTie().cards("A1", "15-3", "15-3", "15-3", "15-3");
        assertThat(seen(over, Viewer.PUBLIC).goesOn(over.tie("A1"))).isFalse();
        assertThat(seen(Days.oneTie(), Viewer.PUBLIC).isFrozen()).isFalse();
    }

    /** On facts in any order: who is no official sees no heat, no link of another club and no tick of another captain. */
    @Test
    void nothing_of_officials_and_other_clubs_is_seen_on_any_event() {
        for (int round = 0; round < ROUNDS; round++) {
            Random random = Seed.random(round);
            Event event = Event.of(RandomFacts.of(random, 60 + random.nextInt(100)));
            for (Viewer viewer : EVERYBODY) {
                VisibleEvent seen = VisibleEvent.of(event, Directory.EMPTY, viewer, Days.moment("12:00"));
                if (!OFFICIALS.contains(viewer)) {
                    String as = viewer + ", " + Seed.rerun(round);
                    assertThat(seen.heat()).as(as).isEmpty();
                    assertThat(seen.links())
                            .as(as)
                            .allMatch(link ->
                                    link.club().filter(viewer::isCaptainOf).isPresent());
                    assertThat(RandomFacts.CLUBS)
                            .as(as)
                            .allMatch(club -> viewer.isCaptainOf(club) || seen.conditionsRead(club) == 0);
                }
            }
        }
    }
}
