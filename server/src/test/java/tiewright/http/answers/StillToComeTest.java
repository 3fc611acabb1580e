package tiewright.http.answers;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.Seed;
import tiewright.conditions.Withdrawal;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.DrawFact;
import tiewright.event.Event;
import tiewright.event.MayPlay;
import tiewright.event.OfficialFact;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.event.Viewer;
import tiewright.ledger.Ledger;

/** Who may still be needed is among those who have to know of the time of the tie, on days in any state. */
class StillToComeTest {
    private static final Instant NOW = Days.moment("12:00");
    private static final List<String> TIES = List.of("A1", "A2", "A3", "B1", "B2", "B3", "SF1", "SF2", "R", "F", "P3");

    @TempDir
    Path folder;

    /** Two pools of three, two semi-finals, a second chance for one loser, a final and a tie for third place; played in any order. */
    private static Days randomDay(Random random) {
        Days day = Days.aDay()
                .clubs("N", "S", "E", "W", "V", "X")
                .poolTie("A1", "A", 1, "N", "S")
                .poolTie("A2", "A", 2, "S", "E")
                .poolTie("A3", "A", 3, "E", "N")
                .poolTie("B1", "B", 1, "W", "V")
                .poolTie("B2", "B", 2, "V", "X")
                .poolTie("B3", "B", 3, "X", "W")
                .knockoutTie("SF1", 1, "A-1", "B-2")
                .knockoutTie("SF2", 1, "B-1", "A-2")
                .knockoutTie("R", 2, "loser-SF1", "B-3")
                .knockoutTie("F", 3, "winner-SF1", "winner-SF2")
                .knockoutTie("P3", 3, "winner-R", "loser-SF2");
        List<String> ties = new ArrayList<>(TIES);
        Collections.shuffle(ties, random);
        for (String tie : ties.subList(0, random.nextInt(ties.size() + 1))) {
            played(day, tie, random);
        }
        if (random.nextInt(3) == 0) {
            day.fact(new OfficialFact.ClubWithdrawn(club(random), Optional.empty(), Withdrawal.KEEP, 1));
        }
        return day;
    }

    private static void played(Days day, String tie, Random random) {
        for (Side side : Side.values()) {
            if (day.tie(tie).club(side).isEmpty() && random.nextInt(4) > 0) {
                day.fact(new DrawFact.SlotFilled(TieId.of(tie), side, club(random)));
            }
        }
        if (day.tie(tie).isReady()) {
            String game = random.nextBoolean() ? "11-5" : "5-11";
            day.cards(tie, game, game, game, random.nextInt(4) == 0 ? "11-9" : game);
        }
    }

    private static ClubId club(Random random) {
        return ClubId.of("NSEWVX".substring(random.nextInt(6)).substring(0, 1));
    }

    @Test
    void whoever_may_still_come_to_a_tie_has_to_know_of_its_time() {
        int narrower = 0;
        int same = 0;
        try (Ledger ledger = Ledger.open(folder, Clock.systemUTC())) {
            for (int round = 0; round < 300; round++) {
                Event event = randomDay(Seed.random(round)).event();
                StillToCome still = new StillToCome(Asker.of(event, Viewer.PUBLIC, NOW, ledger, new Worked()));
                for (ClubId club : event.clubs().keySet()) {
                    List<Tie> coming = still.of(club);
                    assertThat(coming)
                            .as("%s, %s", club, Seed.rerun(round))
                            .allSatisfy(tie ->
                                    assertThat(MayPlay.of(event, tie.id())).contains(club));
                    long wide = event.ties().values().stream()
                            .filter(tie -> !tie.isReady() && event.goesOn(tie))
                            .filter(tie -> MayPlay.of(event, tie.id()).contains(club))
                            .count();
                    narrower += coming.size() < wide ? 1 : 0;
                    same += wide > 0 && coming.size() == wide ? 1 : 0;
                }
            }
        }
        assertThat(narrower).as("a result put somebody out of the way").isPositive();
        assertThat(same).as("nothing is known yet").isPositive();
    }

    @Test
    void a_pool_that_has_ended_sends_its_place_alone() {
        try (Ledger ledger = Ledger.open(folder, Clock.systemUTC())) {
            Days day = Days.aDay()
                    .clubs("N", "S", "E")
                    .poolTie("A1", "A", 1, "N", "S")
                    .knockoutTie("F", 1, "A-1", "E");
            assertThat(of(day, "S", ledger)).containsExactly("F");
            day.cards("A1", "11-5", "11-5", "11-5", "11-5");
            assertThat(of(day, "S", ledger)).isEmpty();
            assertThat(of(day, "N", ledger)).containsExactly("F");
            assertThat(MayPlay.of(day.event(), TieId.of("F")))
                    .as("until the place is filled both have to know of the time")
                    .contains(ClubId.of("S"), ClubId.of("N"));
        }
    }

    private static List<String> of(Days day, String club, Ledger ledger) {
        return new StillToCome(Asker.of(day.event(), Viewer.PUBLIC, NOW, ledger, new Worked()))
                .of(ClubId.of(club)).stream().map(tie -> tie.id().code()).toList();
    }
}
