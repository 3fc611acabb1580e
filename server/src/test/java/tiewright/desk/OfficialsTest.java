package tiewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Setting;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.DrawFact;
import tiewright.event.Event;
import tiewright.event.OfficialFact;
import tiewright.event.TieId;

/** Rulings, notices, times and lots: common practice, no source. */
class OfficialsTest {
    private final Days day = Days.oneTie();

    private static RetimeTie retime(String start, String court, String reason) {
        return new RetimeTie(TieId.of("A1"), Optional.of(LocalTime.parse(start)), Optional.of(court), reason);
    }

    private List<OfficialFact.NoticeStated> notices() {
        return day.event().notices().stream().map(Event.Posted::notice).toList();
    }

    @Test
    void rulings_are_numbered_and_signed() {
        day.does(new GiveRuling("A1, rubber 2", "stands", "not challenged in time", "R. Official"))
                .does(new GiveRuling("A1, rubber 3", "is played again", "wrong pair", "R. Official"));
        assertThat(day.event().rulings())
                .extracting(OfficialFact.RulingStated::number)
                .containsExactly(1, 2);
        assertThat(Why.not(day, new GiveRuling("", " ", "", "")))
                .containsExactly(
                        "desk.text-missing.about",
                        "desk.text-missing.ruling",
                        "desk.text-missing.reason",
                        "desk.text-missing.by");
        assertThat(Why.not(day.by(Days.captain("N")), new GiveRuling("a", "b", "c", "d")))
                .containsExactly("desk.officials-only");
    }

    @Test
    void notices_are_numbered_and_a_change_has_its_reason() {
        day.does(new PostNotice("Lunch is at noon", Optional.empty(), Optional.empty(), Optional.empty(), ""));
        PostNotice change =
                new PostNotice("Lunch", Optional.of(TieId.of("A1")), Optional.of("12:00"), Optional.of("12:30"), "");
        assertThat(Why.not(day, change)).containsExactly("desk.text-missing.reason");
        day.does(new PostNotice("Lunch", Optional.empty(), Optional.of("12:00"), Optional.of("12:30"), "rain"));
        assertThat(notices()).extracting(OfficialFact.NoticeStated::number).containsExactly(1, 2);
        assertThat(Why.not(day, new PostNotice("", Optional.of(TieId.of("Z")), Optional.empty(), Optional.empty(), "")))
                .containsExactly("desk.text-missing.text", "desk.no-such-tie");
    }

    @Test
    void a_first_time_is_published_without_a_notice() {
        day.poolTie("A2", "A", 2, "N", "S");
        day.does(new RetimeTie(TieId.of("A2"), Optional.of(LocalTime.of(11, 0)), Optional.empty(), ""));
        day.does(new RetimeTie(TieId.of("A2"), Optional.of(LocalTime.of(11, 0)), Optional.of("2"), ""));
        assertThat(day.tie("A2").court()).contains("2");
        assertThat(notices()).isEmpty();
    }

    @Test
    void a_time_for_a_tie_that_lost_its_published_one_is_a_change_and_needs_its_notice() {
        day.fact(new DrawFact.TieTimed(TieId.of("A1"), Optional.empty(), Optional.empty()));
        assertThat(Why.not(day, retime("11:00", "1", ""))).containsExactly("desk.text-missing.reason");
        day.does(retime("11:00", "1", "begins again"));
        assertThat(notices()).hasSize(1);
        assertThat(day.event().order().concerned(1)).extracting(ClubId::code).containsExactly("N", "S");
    }

    @Test
    void by_hand_too_nothing_begins_before_its_published_start_unless_its_clubs_know() {
        RetimeTie earlier = retime("09:50", "1", "court free");
        assertThat(Why.not(day, earlier)).containsExactly("desk.earlier-than-published");
        day.does(new RetimeTie(
                earlier.tie(),
                earlier.start(),
                earlier.where(),
                earlier.reason(),
                Set.of(ClubId.of("N"), ClubId.of("S"))));
        assertThat(notices().get(0).after().map(Days::said))
                .contains("09:50, court 1; earlier than published, told beforehand: Club N and Club S");
        assertThat(day.event().order().told(1)).hasSize(2);
    }

    @Test
    void a_published_time_changes_with_a_notice_of_old_and_new_and_a_reason() {
        assertThat(Why.not(day, retime("10:20", "2", ""))).containsExactly("desk.text-missing.reason");
        day.does(retime("10:20", "2", "court 1 is wet"));
        assertThat(day.tie("A1").start()).contains(LocalTime.of(10, 20));
        assertThat(notices()).singleElement().satisfies(notice -> {
            assertThat(notice.tie()).contains(TieId.of("A1"));
            assertThat(notice.before().map(Days::said)).contains("10:00, court 1");
            assertThat(notice.after().map(Days::said)).contains("10:20, court 2");
            assertThat(Days.said(notice.reason())).isEqualTo("court 1 is wet");
        });
    }

    @Test
    void a_tie_may_have_several_courts_by_hand_and_its_rubbers_take_them_in_turn() {
        RetimeTie.Where both = new RetimeTie.Where(List.of("2", "1"), 25);
        RetimeTie wide =
                new RetimeTie(TieId.of("A1"), Optional.of(LocalTime.of(10, 20)), both, "court 2 is nearer", Set.of());
        day.does(wide);
        assertThat(day.event().order().courts(day.tie("A1"))).containsExactly("2", "1");
        assertThat(day.event().order().rubbers(TieId.of("A1")).values())
                .extracting(place -> place.start() + " " + place.court())
                .containsExactly("10:20 2", "10:20 1", "10:45 2", "10:45 1");
        assertThat(notices()).singleElement().satisfies(notice -> {
            assertThat(notice.before().map(Days::said)).contains("10:00, court 1");
            assertThat(notice.after().map(Days::said)).contains("10:20, courts 2, 1");
        });
        assertThat(Why.not(day, wide)).containsExactly("desk.time-stands-already");
        day.does(new RetimeTie(TieId.of("A1"), Optional.of(LocalTime.of(10, 30)), both, "rain", Set.of()));
        assertThat(day.event().order().rubbers(TieId.of("A1")).values())
                .as("the same courts, ten minutes later")
                .extracting(place -> place.start() + " " + place.court())
                .containsExactly("10:30 2", "10:30 1", "10:55 2", "10:55 1");
        RetimeTie.Where gone = new RetimeTie.Where(List.of("1", "9"), 25);
        assertThat(Why.not(day, new RetimeTie(TieId.of("A1"), Optional.empty(), gone, "x", Set.of())))
                .containsExactly("desk.no-such-court", "desk.courts-need-a-start");
    }

    @Test
    void a_time_is_changed_to_something_else_on_a_court_that_is_there() {
        assertThat(Why.not(day, retime("10:00", "1", "x"))).containsExactly("desk.time-stands-already");
        assertThat(Why.not(day, retime("10:20", "9", "x"))).containsExactly("desk.no-such-court");
        assertThat(Why.not(day, new RetimeTie(TieId.of("Z"), Optional.empty(), Optional.empty(), "x")))
                .containsExactly("desk.no-such-tie");
        day.opened("A1").cards("A1", "11-0", "11-0", "11-0", "11-0");
        assertThat(Why.not(day, retime("10:20", "1", "x"))).containsExactly("desk.tie-is-over-for-times");
    }

    private Days level() {
        return day.clubs("E")
                .with(Setting.DECIDER, "none")
                .with(Setting.TIE_POINTS, "2/1/0")
                .poolTie("A2", "A", 2, "S", "E")
                .poolTie("A3", "A", 3, "N", "E")
                .opened("A1")
                .opened("A2")
                .opened("A3")
                .cards("A1", "11-0", "11-0", "0-11", "0-11")
                .cards("A2", "11-0", "11-0", "11-0", "0-11")
                .cards("A3", "11-0", "11-0", "11-0");
    }

    private static DrawLot lot(String... clubs) {
        return new DrawLot(
                "A", java.util.Arrays.stream(clubs).map(ClubId::of).toList(), "seven blue kites", "W. Witness");
    }

    @Test
    void a_lot_is_drawn_among_just_those_whom_nothing_else_parts() {
        level();
        assertThat(Why.not(day, lot("N", "S"))).containsExactly("desk.pool-not-finished");
        day.card("A3", "4", "0-11");
        assertThat(Why.not(day, lot("N", "E"))).containsExactly("desk.no-lot-among");
        assertThat(Why.not(day, lot("N", "S", "E"))).containsExactly("desk.no-lot-among");
        assertThat(Why.not(day, lot("N", "N"))).containsExactly("desk.no-lot-among");
        assertThat(Why.not(day, new DrawLot("A", List.of(ClubId.of("N"), ClubId.of("S")), "", " ")))
                .containsExactly("desk.text-missing.spokenSeed", "desk.text-missing.witness");
        day.does(lot("S", "N"));
        assertThat(PoolEnd.of(day.event(), "A").table().lotsToDraw()).isEmpty();
        assertThat(day.event().lots().get("A").get(0).order())
                .isEqualTo(
                        tiewright.draw.LotOrder.of("A", List.of(ClubId.of("N"), ClubId.of("S")), "seven blue kites"));
        assertThat(notices())
                .last()
                .satisfies(notice -> assertThat(Days.said(notice.reason())).contains("seven blue kites"));
        assertThat(Why.not(day, lot("S", "N"))).containsExactly("desk.no-lot-among");
    }
}
