package tiewright.bench;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;
import tiewright.draw.PoolPlan;
import tiewright.draw.PoolTie;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.DrawFact;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.How;
import tiewright.event.Pair;
import tiewright.event.PlayFact;
import tiewright.event.PlayerId;
import tiewright.event.Recorded;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.SetUpFact;
import tiewright.event.Sheet;
import tiewright.event.Slot;
import tiewright.event.Stage;
import tiewright.event.TieId;
import tiewright.scoring.Score;

/**
 * A day far busier than any real one, as facts: 64 clubs of eight in four pools of 16, 480 ties. Every captain replaces the
 * sheet five times, every rubber is called, called off and called again, every card is read twice; level ties have a decider.
 */
final class BusyDay {
    private static final int POOLS = 4;
    private static final int CLUBS_IN_A_POOL = 16;
    private static final int SQUAD = 8;
    private static final int RUBBERS = 4;
    private static final int SEALINGS = 6;
    private static final Actor DESK = Actor.of(Role.DESK, "desk");
    private static final Actor VOLUNTEER = Actor.of(Role.VOLUNTEER, "volunteer");
    private static final Instant START = Instant.parse("2026-06-20T06:00:00Z");
    private static final String DIGEST = "0".repeat(64);

    private final Random random;
    private final List<Recorded> facts = new ArrayList<>();

    private BusyDay(long seed) {
        this.random = new Random(seed);
    }

    /** Exactly so many facts, made up with check-ins at the end. */
    static List<Recorded> facts(int count, long seed) {
        BusyDay day = new BusyDay(seed);
        day.setUp();
        for (int pool = 0; pool < POOLS; pool++) {
            List<ClubId> clubs = clubs(pool);
            PoolPlan.ties(String.valueOf((char) ('A' + pool)), clubs).forEach(day::play);
        }
        if (day.facts.size() > count) {
            throw new IllegalStateException("the day alone has " + day.facts.size() + " facts");
        }
        for (int i = 0; day.facts.size() < count; i++) {
            day.add(
                    DESK,
                    new SetUpFact.CheckedIn(
                            player(clubs(0).get(i % CLUBS_IN_A_POOL), 1), i / CLUBS_IN_A_POOL % 2 == 1));
        }
        return List.copyOf(day.facts);
    }

    private static List<ClubId> clubs(int pool) {
        return IntStream.range(0, CLUBS_IN_A_POOL)
                .mapToObj(i -> ClubId.of("C" + (100 + pool * CLUBS_IN_A_POOL + i)))
                .toList();
    }

    private static PlayerId player(ClubId club, int number) {
        return PlayerId.of(club.code() + "-" + number);
    }

    private void add(Actor by, Fact fact) {
        facts.add(new Recorded(facts.size() + 1, fact, by, Optional.empty(), START.plusSeconds(facts.size())));
    }

    private void setUp() {
        add(
                DESK,
                new SetUpFact.EventDescribed(
                        "Busy day",
                        LocalDate.of(2026, 6, 20),
                        "Long Hall",
                        ZoneId.of("Europe/Vienna"),
                        LocalTime.of(8, 0),
                        Optional.empty()));
        add(DESK, new SetUpFact.ConditionsPublished(1, Conditions.of(Preset.CLUB_DAY), OptionalInt.empty()));
        for (int court = 1; court <= CLUBS_IN_A_POOL; court++) {
            add(DESK, new SetUpFact.CourtSet("" + court, Optional.empty(), Optional.empty(), true));
        }
        for (int pool = 0; pool < POOLS; pool++) {
            clubs(pool).forEach(this::enter);
        }
    }

    private void enter(ClubId club) {
        add(DESK, new SetUpFact.ClubEntered(club, "Club " + club.code(), Optional.empty(), OptionalInt.empty()));
        for (int i = 1; i <= SQUAD; i++) {
            add(
                    DESK,
                    new SetUpFact.PlayerEntered(
                            player(club, i), club, OptionalInt.of(i), Optional.empty(), Optional.empty(), i == 2));
            add(DESK, new SetUpFact.CheckedIn(player(club, i), true));
        }
    }

    private void play(PoolTie tie) {
        add(
                DESK,
                new DrawFact.TieArranged(
                        tie.tie(),
                        Stage.POOL,
                        Optional.of(tie.pool()),
                        tie.round(),
                        Slot.of(tie.home()),
                        Slot.of(tie.away())));
        add(DESK, new DrawFact.TieTimed(tie.tie(), Optional.of(LocalTime.of(9, 0)), Optional.of("1")));
        exchange(ExchangeId.sheets(tie.tie()), tie, SEALINGS, straight(tie.home()), straight(tie.away()));
        int won = 0;
        for (int rubber = 1; rubber <= RUBBERS; rubber++) {
            won += rubber(tie.tie(), RubberNo.of(rubber)) ? 1 : 0;
        }
        if (2 * won == RUBBERS) {
            exchange(ExchangeId.decider(tie.tie()), tie, 1, decider(tie.home()), decider(tie.away()));
            rubber(tie.tie(), RubberNo.DECIDER);
        }
    }

    private void exchange(ExchangeId exchange, PoolTie tie, int sealings, Sheet home, Sheet away) {
        for (int i = 0; i < sealings; i++) {
            for (ClubId club : List.of(tie.home(), tie.away())) {
                add(
                        new Actor(Role.CAPTAIN, Optional.of(club), "captain " + club.code(), ""),
                        new ExchangeFact.SheetSealed(exchange, club, DIGEST, false));
            }
        }
        add(DESK, new ExchangeFact.SheetsOpened(exchange, home, Optional.of(DIGEST), away, Optional.of(DIGEST)));
    }

    private static Sheet straight(ClubId club) {
        return Sheet.of(IntStream.range(0, RUBBERS)
                .mapToObj(i -> Optional.of(Pair.of(player(club, 2 * i + 1), player(club, 2 * i + 2))))
                .toList());
    }

    private static Sheet decider(ClubId club) {
        return Sheet.decider(Pair.of(player(club, 1), player(club, 3)));
    }

    /** Whether home won it. */
    private boolean rubber(TieId tie, RubberNo rubber) {
        add(DESK, new PlayFact.CourtCalled(tie, Optional.of(rubber), "1"));
        add(DESK, new PlayFact.CallTakenBack(tie, Optional.of(rubber), "wrong court"));
        add(DESK, new PlayFact.CourtCalled(tie, Optional.of(rubber), "2"));
        boolean homeWins = random.nextBoolean();
        int other = random.nextInt(10);
        List<Score> games = List.of(homeWins ? Score.of(11, other) : Score.of(other, 11));
        add(VOLUNTEER, new PlayFact.CardEntered(tie, rubber, games, How.PLAYED));
        add(DESK, new PlayFact.CardEntered(tie, rubber, games, How.PLAYED));
        return homeWins;
    }
}
