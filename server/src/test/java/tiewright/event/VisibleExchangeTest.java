package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tiewright.Seed;
import tiewright.conditions.Setting;

/** What of a blind exchange whose eyes may see: before the deadline, from then on, after the opening. */
class VisibleExchangeTest {
    private static final int ROUNDS = 300;

    /** So many replaced sheets are looked at; some three hundred days seldom have fewer, and then more days are played. */
    private static final int REPLACED = 100;

    private static final int MOST_ROUNDS = 20 * ROUNDS;
    private static final ClubId N = ClubId.of("N");
    private static final ClubId S = ClubId.of("S");
    private static final ExchangeId SHEETS = ExchangeId.sheets(TieId.of("A1"));
    private static final String FIRST = "1".repeat(64);
    private static final String LAST = "2".repeat(64);
    private static final List<Viewer> ELSE = List.of(
            Viewer.PUBLIC,
            Viewer.of(Role.VOLUNTEER),
            Viewer.of(Role.DESK),
            Viewer.of(Role.ORGANISER),
            Viewer.of(Role.REFEREE),
            Viewer.captain(S),
            Viewer.player(S, PlayerId.of("S1")),
            Viewer.player(N, PlayerId.of("N1")));

    /** Sheets due at 09:45; club N sealed at 09:00 at the desk and again at 09:20 on the phone. */
    private static Days sealedTwice() {
        return Days.oneTie()
                .with(Setting.SHEET_DEADLINE_MINUTES, "15")
                .at("09:00")
                .fact(new ExchangeFact.SheetSealed(SHEETS, N, FIRST, false))
                .at("09:20")
                .fact(new ExchangeFact.SheetSealed(SHEETS, N, LAST, true));
    }

    private static VisibleExchange seen(Days day, Viewer viewer, String at) {
        return VisibleExchange.of(day.event(), SHEETS, viewer, Days.moment(at));
    }

    private static VisibleExchange.VisibleSide home(Days day, Viewer viewer, String at) {
        return seen(day, viewer, at).home();
    }

    @Test
    void before_the_deadline_others_see_only_that_a_sheet_is_in() {
        for (Viewer viewer : ELSE) {
            VisibleExchange.VisibleSide side = home(sealedTwice(), viewer, "09:44");
            assertThat(side.in()).isTrue();
            assertThat(side.sealed()).isZero();
            assertThat(side.receipt()).isEmpty();
            assertThat(side.atDesk()).as("no sign that it moved to the phone").isTrue();
            assertThat(side.sealedAt())
                    .isEqualTo(viewer.role().isOfficial() ? Optional.of(Days.moment("09:00")) : Optional.empty());
        }
        assertThat(seen(sealedTwice(), Viewer.PUBLIC, "09:44").side(Side.AWAY).in())
                .isFalse();
        assertThat(seen(sealedTwice(), Viewer.PUBLIC, "09:44").isOpened()).isFalse();
    }

    @Test
    void the_own_captain_sees_everything_at_once() {
        VisibleExchange.VisibleSide side = home(sealedTwice(), Viewer.captain(N), "09:30");
        assertThat(side.sealed()).isEqualTo(2);
        assertThat(side.receipt()).contains(LAST);
        assertThat(side.atDesk()).isFalse();
        assertThat(side.sealedAt()).contains(Days.moment("09:20"));
        Days guest = Days.oneTie().fact(new ExchangeFact.SheetSealed(SHEETS, S, LAST, false));
        assertThat(seen(guest, Viewer.captain(S), "09:30").away().receipt()).contains(LAST);
        assertThat(seen(guest, Viewer.captain(N), "09:30").away().receipt()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"09:44, false", "09:45, true", "09:46, true"})
    void from_the_minute_of_the_deadline_on_everybody_sees_the_receipt_that_counts(String at, boolean past) {
        assertThat(seen(sealedTwice(), Viewer.PUBLIC, at).past()).isEqualTo(past);
        assertThat(seen(sealedTwice(), Viewer.PUBLIC, at).deadline()).contains(Days.moment("09:45"));
        VisibleExchange.VisibleSide side = home(sealedTwice(), Viewer.PUBLIC, at);
        assertThat(side.receipt()).isEqualTo(past ? Optional.of(LAST) : Optional.empty());
        assertThat(side.sealedAt()).isEqualTo(past ? Optional.of(Days.moment("09:20")) : Optional.empty());
        assertThat(side.atDesk()).isEqualTo(!past);
        assertThat(side.sealed()).as("how often stays hidden until the opening").isZero();
    }

    @Test
    void an_opening_before_the_deadline_shows_the_same_and_how_often() {
        Days day = sealedTwice()
                .fact(new ExchangeFact.SheetSealed(SHEETS, S, FIRST, false))
                .at("09:30")
                .fact(new ExchangeFact.SheetsOpened(
                        SHEETS, Days.straight("N", 4), Optional.of(LAST), Days.straight("S", 4), Optional.of(FIRST)));
        VisibleExchange exchange = seen(day, Viewer.PUBLIC, "09:31");
        assertThat(exchange.isOpened()).isTrue();
        assertThat(exchange.openedAt()).contains(Days.moment("09:30"));
        assertThat(exchange.past()).isFalse();
        assertThat(exchange.home().sealed()).isEqualTo(2);
        assertThat(exchange.home().receipt()).contains(LAST);
        assertThat(exchange.home().sealedAt()).contains(Days.moment("09:20"));
        assertThat(exchange.opened()).isPresent();
    }

    @Test
    void what_a_captain_tells_the_own_club_only_that_club_sees() {
        Days day = sealedTwice().fact(new ExchangeFact.ClubTold(SHEETS, N), new ExchangeFact.OpeningAsked(SHEETS, N));
        assertThat(home(day, Viewer.captain(N), "09:30").told()).isTrue();
        assertThat(home(day, Viewer.player(N, PlayerId.of("N1")), "09:30").told())
                .isTrue();
        for (Viewer viewer : List.of(Viewer.PUBLIC, Viewer.of(Role.DESK), Viewer.captain(S))) {
            assertThat(home(day, viewer, "09:30").told()).isFalse();
            assertThat(home(day, viewer, "09:30").openingAsked()).isTrue();
        }
        assertThat(home(sealedTwice(), Viewer.captain(N), "09:30").told()).isFalse();
    }

    /** A sheet that went back lets its slot be filled anew: whoever comes must not see how often the other club sealed. */
    @Test
    void a_club_that_takes_a_slot_sees_nothing_of_the_club_that_stood_there() {
        ExchangeId last = ExchangeId.sheets(TieId.of("F"));
        Days day = Days.oneTie().knockoutTie("F", 1, "A-1", "A-2");
        day.fact(
                new DrawFact.SlotFilled(last.tie(), Side.HOME, N),
                new ExchangeFact.SheetSealed(last, N, FIRST, false),
                new ExchangeFact.SheetSealed(last, N, LAST, false),
                new ExchangeFact.SheetReturned(last, N, "why"),
                new DrawFact.SlotFilled(last.tie(), Side.HOME, N));
        assertThat(day.event().exchange(last).home().sealed())
                .as("filled with the same club again")
                .isEqualTo(2);
        day.fact(new DrawFact.SlotFilled(last.tie(), Side.HOME, S));
        assertThat(VisibleExchange.of(day.event(), last, Viewer.captain(S), Days.moment("09:00"))
                        .home()
                        .sealed())
                .isZero();
        assertThat(day.event().exchange(last).home()).isEqualTo(Exchange.SideOfExchange.NOTHING);
        day.fact(
                new ExchangeFact.SheetSealed(last, S, FIRST, false),
                new DrawFact.SlotKept(last.tie(), Side.HOME, N, 1));
        assertThat(day.event().exchange(last).home().sealed()).isZero();
        day.fact(new ExchangeFact.SheetSealed(last, N, FIRST, false)).knockoutTie("F", 1, "A-1", "A-2");
        assertThat(day.event().exchange(last).home().sealed()).isZero();
    }

    @Test
    void what_is_opened_stays_whoever_takes_the_slot() {
        ExchangeId last = ExchangeId.sheets(TieId.of("F"));
        Days day = Days.oneTie().knockoutTie("F", 1, "A-1", "A-2");
        day.fact(new DrawFact.SlotFilled(last.tie(), Side.HOME, N), new DrawFact.SlotFilled(last.tie(), Side.AWAY, S));
        day.opened("F").fact(new DrawFact.SlotFilled(last.tie(), Side.HOME, S));
        assertThat(day.event().exchange(last).home().sealed()).isEqualTo(1);
        assertThat(day.event().exchange(ExchangeId.decider(last.tie())).isBegun())
                .isFalse();
    }

    /** Why somebody does not play is a matter of health: for officials and the own club. */
    @ParameterizedTest
    @CsvSource({
        "injury, unavailable",
        "illness, unavailable",
        "no-show, unavailable",
        "disqualified, unavailable",
        "clerical, clerical",
        "substitution, substitution"
    })
    void why_a_pair_was_replaced_is_not_everybodys_business(String door, String toOthers) {
        Days day = Days.oneTie()
                .opened("A1")
                .fact(new ExchangeFact.PairReplaced(
                        SHEETS, N, RubberNo.of(1), Optional.of(Pair.of("N7", "N8")), door, "R. Official"));
        for (Viewer near : List.of(
                Viewer.of(Role.DESK),
                Viewer.of(Role.ORGANISER),
                Viewer.of(Role.REFEREE),
                Viewer.captain(N),
                Viewer.player(N, PlayerId.of("N1")))) {
            assertThat(doors(day, near)).containsExactly(door);
        }
        for (Viewer other : List.of(
                Viewer.PUBLIC, Viewer.of(Role.VOLUNTEER), Viewer.captain(S), Viewer.player(S, PlayerId.of("S1")))) {
            assertThat(doors(day, other)).containsExactly(toOthers);
            assertThat(seen(day, other, "10:00").replacements().get(0).fact().pair())
                    .contains(Pair.of("N7", "N8"));
        }
    }

    private static List<String> doors(Days day, Viewer viewer) {
        return seen(day, viewer, "10:00").replacements().stream()
                .map(one -> one.fact().door())
                .toList();
    }

    /** On facts in any order, at any moment: no health, no count, no receipt for those whom it does not concern. */
    @Test
    void nothing_leaks_from_any_event() {
        for (int round = 0; round < ROUNDS; round++) {
            Random random = Seed.random(round);
            Event event = Event.of(RandomFacts.of(random, 60 + random.nextInt(100)));
            Instant now = Days.moment("08:00").plusSeconds(random.nextInt(8 * 3600));
            for (ExchangeId id : event.exchanges().keySet()) {
                for (Viewer viewer : everybody()) {
                    String as = id + " for " + viewer + ", " + Seed.rerun(round);
                    check(as, event, VisibleExchange.of(event, id, viewer, now), viewer);
                }
            }
        }
    }

    private static List<Viewer> everybody() {
        return Stream.concat(
                        ELSE.stream(),
                        RandomFacts.CLUBS.stream()
                                .flatMap(club ->
                                        Stream.of(Viewer.captain(club), Viewer.player(club, PlayerId.of(club + "1")))))
                .toList();
    }

    private static void check(String as, Event event, VisibleExchange seen, Viewer viewer) {
        for (Side side : Side.values()) {
            boolean own = event.tie(seen.id().tie())
                    .flatMap(tie -> tie.club(side))
                    .filter(viewer::isCaptainOf)
                    .isPresent();
            VisibleExchange.VisibleSide one = seen.side(side);
            if (!own && !seen.isOpened()) {
                assertThat(one.sealed()).as(as).isZero();
            }
            if (!own && !seen.isOpened() && !seen.past()) {
                assertThat(one.receipt()).as(as).isEmpty();
                assertThat(one.atDesk()).as(as).isEqualTo(one.in());
                assertThat(one.sealedAt().isPresent() && !viewer.role().isOfficial())
                        .as(as)
                        .isFalse();
            }
        }
        seen.replacements().stream()
                .filter(one ->
                        !viewer.role().isOfficial() && !viewer.isOf(one.fact().club()))
                .forEach(one -> assertThat(one.fact().door()).as(as).isIn("unavailable", "clerical", "substitution"));
    }

    /** A day and the same day with sheets replaced in between look the same to all others: exchange, version and log. */
    @Test
    void twin_days_that_differ_in_replaced_sheets_look_the_same_to_others() {
        int replaced = 0;
        for (int round = 0; round < ROUNDS || (replaced < REPLACED && round < MOST_ROUNDS); round++) {
            Random random = Seed.random(round);
            List<Recorded> plain = RandomFacts.of(random, 50 + random.nextInt(80)).stream()
                    .filter(one -> one.fact().kind() != FactKind.SHEETS_OPENED)
                    .map(Recorded::fact)
                    .collect(Twins.numbered());
            Twins twins = new Twins(random, plain);
            replaced += twins.replaced;
            Event one = Event.of(plain);
            Event other = Event.of(twins.other);
            Instant now = Days.moment("08:00"); // before any deadline
            for (Viewer viewer : List.of(Viewer.PUBLIC, Viewer.of(Role.DESK), Viewer.captain(ClubId.of("S")))) {
                String as = viewer + ", " + Seed.rerun(round);
                assertThat(other.reach().count()).as(as).isEqualTo(one.reach().count());
                assertThat(log(twins.other, viewer)).as(as).isEqualTo(log(plain, viewer));
                assertThat(other.exchanges().keySet())
                        .as(as)
                        .isEqualTo(one.exchanges().keySet());
                for (ExchangeId id : one.exchanges().keySet()) {
                    assertThat(VisibleExchange.of(other, id, viewer, now))
                            .as(as)
                            .isEqualTo(VisibleExchange.of(one, id, viewer, now));
                }
            }
        }
        assertThat(replaced).as("sheets replaced in all rounds").isGreaterThanOrEqualTo(REPLACED);
    }

    private static List<Fact> log(List<Recorded> facts, Viewer viewer) {
        return VisibleLog.of(facts, viewer).stream()
                .map(entry -> entry.recorded().fact())
                .toList();
    }

    /** The same facts, and between them sheets of the club N in the place of sheets that are in. */
    private static final class Twins {
        private final List<Recorded> other = new ArrayList<>();
        private int replaced;

        Twins(Random random, List<Recorded> plain) {
            Event now = Event.empty();
            for (Recorded one : plain) {
                now = append(now, one.fact());
                for (ExchangeId id : List.copyOf(now.exchanges().keySet())) {
                    if (isIn(now, id) && random.nextInt(3) == 0) {
                        now = append(now, new ExchangeFact.SheetSealed(id, N, LAST, random.nextBoolean()));
                        replaced++;
                    }
                }
            }
        }

        private static boolean isIn(Event now, ExchangeId id) {
            return now.tie(id.tie())
                    .flatMap(tie -> tie.sideOf(N))
                    .filter(side -> now.exchange(id).side(side).isIn())
                    .isPresent();
        }

        private Event append(Event now, Fact fact) {
            other.add(recorded(other.size() + 1, fact));
            return now.then(other.subList(other.size() - 1, other.size()));
        }

        private static Recorded recorded(long seq, Fact fact) {
            return new Recorded(seq, fact, Days.desk(), Optional.empty(), Days.moment("07:00"));
        }

        static java.util.stream.Collector<Fact, ?, List<Recorded>> numbered() {
            return java.util.stream.Collectors.collectingAndThen(
                    java.util.stream.Collectors.toList(),
                    facts -> java.util.stream.IntStream.range(0, facts.size())
                            .mapToObj(i -> recorded(i + 1, facts.get(i)))
                            .toList());
        }
    }
}
