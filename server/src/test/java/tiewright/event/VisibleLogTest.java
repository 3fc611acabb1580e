package tiewright.event;

import static org.assertj.core.api.Assertions.assertThat;
import static tiewright.event.Days.oneTie;

import java.util.List;
import org.junit.jupiter.api.Test;

class VisibleLogTest {
    private static final ExchangeId SHEETS = ExchangeId.sheets(TieId.of("A1"));

    private static ExchangeFact.SheetSealed sealed(String club, String digit) {
        return new ExchangeFact.SheetSealed(SHEETS, ClubId.of(club), digit.repeat(64), false);
    }

    private static List<String> seen(Days day, Viewer viewer) {
        return VisibleLog.of(day.facts(), viewer).stream()
                .map(entry ->
                        entry.number() + " " + entry.recorded().fact().kind().code() + " "
                                + entry.recorded().receivedAt())
                .toList();
    }

    @Test
    void a_replaced_sheet_leaves_no_trace_not_even_a_gap_in_the_numbers() {
        Days once = oneTie().at("09:00").fact(sealed("N", "1")).at("09:30").courts("3");
        Days twice = oneTie().at("09:00")
                .fact(sealed("N", "1"))
                .at("09:10")
                .fact(sealed("N", "2"))
                .at("09:30")
                .courts("3");
        for (Role role : List.of(Role.DESK, Role.ORGANISER, Role.REFEREE)) {
            assertThat(seen(twice, Viewer.of(role))).isEqualTo(seen(once, Viewer.of(role)));
        }
        assertThat(seen(twice, Viewer.captain(ClubId.of("S")))).isEqualTo(seen(once, Viewer.captain(ClubId.of("S"))));
        assertThat(seen(twice, Viewer.captain(ClubId.of("N"))))
                .hasSize(seen(once, Viewer.captain(ClubId.of("N"))).size() + 1);
    }

    @Test
    void what_a_captain_tells_the_own_club_is_in_no_other_log() {
        Days day = oneTie().fact(sealed("N", "1"), new ExchangeFact.ClubTold(SHEETS, ClubId.of("N")));
        assertThat(seen(day, Viewer.of(Role.DESK))).noneMatch(line -> line.contains("club_told"));
        assertThat(seen(day, Viewer.captain(ClubId.of("N")))).anyMatch(line -> line.contains("club_told"));
    }

    @Test
    void numbers_run_from_one_without_a_gap() {
        List<VisibleLog.Entry> entries = VisibleLog.of(oneTie().facts(), Viewer.of(Role.DESK));
        assertThat(entries)
                .extracting(VisibleLog.Entry::number)
                .containsExactlyElementsOf(java.util.stream.IntStream.rangeClosed(1, entries.size())
                        .boxed()
                        .toList());
    }

    @Test
    void of_what_came_since_a_moment_each_notices_the_own_part() {
        Days day = oneTie().fact(sealed("N", "1"));
        Event before = day.event();
        int from = day.facts().size();
        day.fact(sealed("N", "2")).courts("3").fact(new ExchangeFact.ClubTold(SHEETS, ClubId.of("S")));
        List<Recorded> since = day.facts().subList(from, day.facts().size());
        assertThat(VisibleLog.noticed(before, since, Viewer.PUBLIC)).containsExactly(since.get(1));
        assertThat(VisibleLog.noticed(before, since, Viewer.captain(ClubId.of("N"))))
                .containsExactly(since.get(0), since.get(1));
        assertThat(VisibleLog.noticed(before, since, Viewer.captain(ClubId.of("S"))))
                .containsExactly(since.get(1), since.get(2));
    }
}
