package tiewright.correction;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.desk.Correction;
import tiewright.desk.DecideCorrection;
import tiewright.draw.SlotFills;
import tiewright.event.ClubId;
import tiewright.event.CorrectionChoice;
import tiewright.event.Days;
import tiewright.event.Decision;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.ExchangeId;
import tiewright.event.How;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.RubberScore;
import tiewright.event.SheetKind;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.event.Viewer;
import tiewright.event.VisibleEvent;
import tiewright.event.VisibleExchange;
import tiewright.standings.PoolTables;
import tiewright.standings.Standings;

/** The list of consequences against a comparison of everything that can be looked at, on random days; no source. */
class ImpactPropertiesTest {
    private static final int ROUNDS = 40;

    /** So many cases in which others had gone on are looked at; some forty days seldom have fewer, and then more days are played. */
    private static final int REACHING = 6;

    private static final int MOST_ROUNDS = 20 * ROUNDS;

    private record Corrected(Days day, Correction correction) {}

    private static Corrected random(int round) {
        Random random = Seed.random(round);
        Days day = RandomCup.played(random);
        while (RandomCup.withCards(day).isEmpty()) {
            day = RandomCup.played(random);
        }
        List<Tie> ties = RandomCup.withCards(day);
        Tie tie = ties.get(random.nextInt(ties.size()));
        List<RubberNo> rubbers = List.copyOf(tie.cards().keySet());
        RubberNo rubber = rubbers.get(random.nextInt(rubbers.size()));
        return new Corrected(day, new Correction(tie.id(), rubber, Days.games(RandomCup.score(random)), How.PLAYED));
    }

    /** Everything a viewer can look at, asked page by page, without the room that is tried here. */
    private static Map<String, String> visible(Event whole) {
        VisibleEvent event = VisibleEvent.of(whole, Directory.EMPTY, Viewer.of(Role.ORGANISER), Instant.MAX);
        Map<String, String> all = new TreeMap<>();
        for (Tie tie : event.ties()) {
            event.progress(tie)
                    .rubbers()
                    .forEach(score -> all.put(
                            "rubber " + tie.id() + " " + score.rubber(),
                            score.games().toString() + score.how()));
            all.put(
                    "tie " + tie.id(),
                    event.progress(tie).won(Side.HOME) + "-"
                            + event.progress(tie).won(Side.AWAY));
            tie.calls().forEach((rubber, call) -> all.put("call " + tie.id() + " " + rubber, call.court()));
            if (tie.start().isPresent() || tie.court().isPresent()) {
                all.put("time " + tie.id(), tie.start() + " " + tie.court());
            }
            for (Side side : Side.values()) {
                tie.slot(side).from().ifPresent(from -> {
                    tie.club(side)
                            .or(() -> whoWould(whole, from.kind().name(), from.of(), from.place()))
                            .ifPresent(club -> all.put("slot " + tie.id() + " " + side.code(), club.code()));
                    tie.club(side)
                            .filter(club -> tie.start().isPresent())
                            .ifPresent(club -> all.put(
                                    "told " + club + " " + tie.id(),
                                    tie.start().get().toString()));
                });
                sheets(whole, event, tie, side, all);
            }
        }
        for (String pool : event.pools().keySet()) {
            Standings.of(PoolTables.input(whole, pool))
                    .rows()
                    .forEach(row -> all.put("place " + row.club(), "" + row.place()));
            Standings.of(PoolTables.input(whole, pool))
                    .rows()
                    .forEach(row -> row.decidedBy().lines().stream()
                            .filter(line -> line.getClass().getSimpleName().equals("ByLot"))
                            .forEach(line -> all.put(
                                    "lot " + pool + " "
                                            + String.join(
                                                    ">",
                                                    line.level().stream()
                                                            .map(c -> c.code())
                                                            .sorted()
                                                            .toList()),
                                    line.level().toString())));
        }
        event.signedTables().forEach((pool, table) -> all.put("table " + pool, table.order() + table.by()));
        event.signed().ifPresent(signed -> all.put("final event", signed.toString()));
        return all;
    }

    private static Optional<ClubId> whoWould(Event event, String kind, String of, int place) {
        if (kind.equals("POOL_PLACE")) {
            var table = Standings.of(PoolTables.input(event, of));
            return table.tiesLeft() > 0
                    ? Optional.empty()
                    : table.rows().stream()
                            .filter(row -> row.place() == place && !row.onlyALotParts())
                            .map(row -> row.club())
                            .findFirst();
        }
        return event.tie(TieId.of(of))
                .filter(Tie::isReady)
                .flatMap(tie -> event.progress(tie)
                        .winner()
                        .flatMap(side -> tie.club(kind.equals("WINNER") ? side : side.other())));
    }

    private static void sheets(Event whole, VisibleEvent event, Tie tie, Side side, Map<String, String> all) {
        for (SheetKind kind : SheetKind.values()) {
            VisibleExchange exchange = event.exchange(new ExchangeId(tie.id(), kind));
            boolean moot = kind == SheetKind.DECIDER
                    && event.progress(tie).finished()
                    && !event.progress(tie).deciderNeeded();
            if (tie.club(side).isPresent()
                    && !moot
                    && (exchange.isOpened() || exchange.side(side).in())) {
                String whose = tie.id()
                        + (kind == SheetKind.DECIDER ? " D " : " ")
                        + tie.club(side).get();
                all.put("sheet " + whose, exchange.isOpened() ? "opened" : "sealed");
                VisibleEvent own = VisibleEvent.of(
                        whole, Directory.EMPTY, Viewer.captain(tie.club(side).get()), Instant.MAX);
                own.exchange(exchange.id())
                        .side(side)
                        .receipt()
                        .ifPresent(receipt -> all.put("receipt " + whose, exchange.isOpened() ? receipt : "sealed"));
            }
        }
    }

    private static Set<String> different(Event before, Event after) {
        Map<String, String> was = visible(before);
        Map<String, String> is = visible(after);
        Set<String> keys = new TreeSet<>(was.keySet());
        keys.addAll(is.keySet());
        keys.removeIf(key -> Optional.ofNullable(was.get(key)).equals(Optional.ofNullable(is.get(key))));
        return keys;
    }

    private static Set<String> listed(Impact impact) {
        Set<String> keys = new TreeSet<>();
        impact.nodes().forEach(node -> keys.add(node.kind().code() + " " + node.subjectText()));
        return keys;
    }

    private static DecideCorrection decide(Corrected one, CorrectionChoice choice) {
        return new DecideCorrection(one.correction(), choice, "", "the card shows it", "R. Referee");
    }

    @Test
    void the_list_is_exactly_what_differs_between_the_two_snapshots() {
        int reaching = 0;
        for (int round = 0; round < ROUNDS || (reaching < REACHING && round < MOST_ROUNDS); round++) {
            Corrected one = random(round);
            for (CorrectionChoice choice : CorrectionChoice.values()) {
                Days day = one.day();
                Event before = day.event();
                if (!one.correction().faults(before).isEmpty()
                        || one.correction().standsAlready(before)) {
                    continue;
                }
                Impact foretold = one.correction().impact(before, day.given(), choice);
                Event after = after(day, decide(one, choice));
                assertThat(listed(foretold))
                        .as(Seed.rerun(round) + " " + choice)
                        .isEqualTo(different(before, after));
                reaching += foretold.reachesOthers() ? 1 : 0;
            }
        }
        assertThat(reaching).as("cases in which others had gone on").isGreaterThanOrEqualTo(REACHING);
    }

    @Test
    void any_two_moments_of_a_day_differ_by_exactly_the_list() {
        for (int round = 0; round < ROUNDS; round++) {
            Days day = RandomCup.played(Seed.random(round));
            int cut = day.facts().size() / 2
                    + Seed.random(round + 1).nextInt(day.facts().size() / 2);
            Event before = Event.of(day.facts().subList(0, cut));
            assertThat(listed(Impact.between(before, day.event())))
                    .as(Seed.rerun(round))
                    .isEqualTo(different(before, day.event()));
        }
    }

    /** Play begun again leaves no slot in dispute that was not; deciding it twice changes nothing more. */
    @Test
    void play_begun_again_is_consistent_and_a_second_time_changes_nothing() {
        for (int round = 0; round < ROUNDS; round++) {
            Corrected one = random(round);
            for (CorrectionChoice choice : CorrectionChoice.values()) {
                Days day = one.day();
                if (!one.correction().faults(day.event()).isEmpty()
                        || one.correction().standsAlready(day.event())) {
                    continue;
                }
                Event after = after(day, decide(one, choice));
                List<SlotFills.Disputed> before = SlotFills.disputed(day.event());
                assertThat(SlotFills.disputed(after))
                        .as(Seed.rerun(round) + " " + choice)
                        .allMatch(before::contains);
                assertThat(decide(one, choice).decide(after, day.given()))
                        .as(Seed.rerun(round) + " " + choice)
                        .isInstanceOf(Decision.Refused.class);
            }
        }
    }

    /** The right score put right, then the wrong one again: the tables are as they were. */
    @Test
    void a_correction_and_its_reversal_restore_the_tables() {
        for (int round = 0; round < ROUNDS; round++) {
            Corrected one = random(round);
            Days day = one.day();
            Event before = day.event();
            Optional<RubberScore> was = before.tie(one.correction().tie())
                    .orElseThrow()
                    .card(one.correction().rubber())
                    .score(one.correction().rubber());
            if (!one.correction().faults(before).isEmpty() || one.correction().standsAlready(before) || was.isEmpty()) {
                continue;
            }
            Event after = after(day, decide(one, CorrectionChoice.RECORD_ONLY));
            Correction back = new Correction(
                    one.correction().tie(),
                    one.correction().rubber(),
                    was.get().games(),
                    was.get().how());
            Event again = after.after(
                    ((Decision.Accepted) new DecideCorrection(back, CorrectionChoice.RECORD_ONLY, "", "misread", "R")
                                    .decide(after, day.given()))
                            .facts(),
                    day.given());
            for (String pool : before.pools().keySet()) {
                assertThat(Standings.of(PoolTables.input(again, pool)))
                        .as(Seed.rerun(round))
                        .isEqualTo(Standings.of(PoolTables.input(before, pool)));
            }
        }
    }

    private static Event after(Days day, DecideCorrection decision) {
        Decision.Outcome outcome = day.ask(decision);
        assertThat(outcome).isInstanceOf(Decision.Accepted.class);
        return day.event().after(((Decision.Accepted) outcome).facts(), day.given());
    }
}
