package tiewright.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tiewright.event.Days;
import tiewright.event.OfficialFact;
import tiewright.event.SetUpFact;

class DescribeEventTest {
    private static final LocalTime NINE = LocalTime.of(9, 0);
    private static final Optional<LocalTime> SIX = Optional.of(LocalTime.of(18, 0));
    private final Days day = Days.empty().by(Days.organiser());

    private static DescribeEvent named(String name) {
        return new DescribeEvent(name, Days.DATE, "Long Hall", Days.ZONE, NINE, SIX);
    }

    private static DescribeEvent on(LocalDate date) {
        return new DescribeEvent("Cup", date, "Long Hall", Days.ZONE, NINE, SIX);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Midsummer Cup", "夏至杯", "Çınar İkili", "کاپ تابستان", "ग्रीष्म कप", "Kesäcup 2026"})
    void keeps_a_name_in_any_script(String name) {
        assertThat(day.does(named(" " + name + " ")).event().about().map(SetUpFact.EventDescribed::name))
                .contains(name);
    }

    @Test
    void refuses_names_that_say_nothing_are_too_long_or_hide_something() {
        assertThat(Said.codes(day, named("  "))).containsExactly("setup.missing.name");
        assertThat(Said.codes(day, named("***"))).containsExactly("setup.missing.name");
        assertThat(Said.codes(day, named("a".repeat(201)))).containsExactly("setup.too-long");
        assertThat(Said.codes(day, named("𝄞a".repeat(100)))).isEmpty();
        assertThat(Said.codes(day, named("Cup\u0000"))).containsExactly("setup.hidden-characters");
        assertThat(Said.codes(day, named("Cup\nof the day"))).containsExactly("setup.hidden-characters");
        assertThat(Said.codes(day, named("Cup \u202Epuc"))).containsExactly("setup.hidden-characters");
        assertThat(Said.codes(day, named("Cup \uD834"))).containsExactly("setup.hidden-characters");
    }

    @Test
    void tells_every_reason_at_once_each_at_its_field() {
        DescribeEvent wrong = new DescribeEvent("", LocalDate.of(206, 6, 20), "", Days.ZONE, NINE, Optional.of(NINE));
        assertThat(Said.codes(day, wrong))
                .containsExactly(
                        "setup.missing.name", "setup.missing.venue", "setup.date-far", "setup.closes-before-start");
        assertThat(day.refusals(wrong)).extracting(r -> r.field()).containsExactly("name", "venue", "date", "closes");
    }

    @Test
    void only_the_organiser_describes_the_event() {
        assertThat(Said.codes(Days.empty().by(Days.desk()), named("Cup"))).containsExactly("setup.organiser-only");
        assertThat(Said.codes(Days.empty().by(Days.captain("N")), named("Cup")))
                .containsExactly("setup.organiser-only");
    }

    @Test
    void another_day_is_a_notice_once_ties_are_laid_out_and_refused_once_a_sheet_is_sealed() {
        day.does(on(Days.DATE)).does(on(Days.DATE.plusDays(1)));
        assertThat(day.event().notices()).isEmpty();
        Days laidOut = Days.oneTie().by(Days.organiser());
        laidOut.does(on(Days.DATE.plusDays(7)));
        OfficialFact.NoticeStated notice = laidOut.event().notices().get(0).notice();
        assertThat(notice.number()).isEqualTo(1);
        assertThat(notice.before().map(Days::said)).contains("2026-06-20, 09:00 to 18:00, Long Hall");
        assertThat(notice.after().map(Days::said)).contains("2026-06-27, 09:00 to 18:00, Long Hall");
        Days sealed = Days.oneTie().opened("A1").by(Days.organiser());
        assertThat(Said.codes(sealed, on(Days.DATE.plusDays(1)))).containsExactly("setup.day-is-fixed");
        assertThat(Said.codes(sealed, new DescribeEvent("Cup", Days.DATE, "Hall", ZoneId.of("UTC"), NINE, SIX)))
                .containsExactly("setup.day-is-fixed");
        assertThat(Said.codes(sealed, on(Days.DATE))).isEqualTo(List.of());
    }
}
