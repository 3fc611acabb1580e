package tiewright.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.picture.DayPicture.Bar;
import tiewright.picture.DayPicture.Block;
import tiewright.picture.DayPicture.Lane;
import tiewright.picture.DayPicture.Look;
import tiewright.picture.DayPicture.Row;
import tiewright.picture.DayPicture.Tick;

/** A picture shows what it was given: as long as it lasts, when it happens, on its own court. No source: our own picture. */
class DayPictureTest {
    private static final int TEN = 10 * 60;

    private static DayPicture of(Row... rows) {
        return DayPicture.of(List.of(rows), TEN + 30, OptionalInt.empty());
    }

    private static Row row(String name, Block... blocks) {
        return new Row(name, List.of(blocks));
    }

    private static Block block(int from, int to) {
        return new Block(from, to, Look.TO_COME, "");
    }

    @Test
    void an_hour_is_as_wide_wherever_it_stands_and_begins_at_its_tick() {
        DayPicture day = of(row("1", block(TEN, TEN + 60)), row("2", block(TEN + 60, TEN + 180)));
        Bar one = day.lanes().get(0).bars().get(0);
        Bar two = day.lanes().get(1).bars().get(0);
        assertThat(two.width()).isCloseTo(2 * one.width(), within(1));
        assertThat(two.x()).isEqualTo(one.x() + one.width());
        assertThat(day.ticks()).extracting(Tick::hour).containsExactly(10, 11, 12, 13);
        assertThat(day.ticks().get(1).x()).isEqualTo(two.x());
    }

    @Test
    void now_lies_half_way_through_the_hour_at_half_past() {
        DayPicture day = of(row("1", block(TEN, TEN + 60)));
        Bar hour = day.lanes().get(0).bars().get(0);
        assertThat(day.now().getAsInt()).isCloseTo(hour.x() + hour.width() / 2, within(1));
    }

    @Test
    void now_is_left_out_before_and_after_the_day() {
        List<Row> rows = List.of(row("1", block(TEN, TEN + 60)));
        assertThat(DayPicture.of(rows, TEN - 1, OptionalInt.empty()).now()).isEmpty();
        assertThat(DayPicture.of(rows, TEN, OptionalInt.empty()).now()).isPresent();
        assertThat(DayPicture.of(rows, TEN + 60, OptionalInt.empty()).now()).isPresent();
        assertThat(DayPicture.of(rows, TEN + 61, OptionalInt.empty()).now()).isEmpty();
    }

    @Test
    void the_day_reaches_to_the_closing_of_the_hall_and_beyond_it_where_play_does() {
        List<Row> rows = List.of(row("1", block(TEN, TEN + 90)));
        assertThat(DayPicture.of(rows, TEN, OptionalInt.of(TEN + 180)).ticks())
                .last()
                .extracting(Tick::hour)
                .isEqualTo(13);
        assertThat(DayPicture.of(rows, TEN, OptionalInt.of(TEN + 30)).ticks())
                .last()
                .extracting(Tick::hour)
                .isEqualTo(12);
    }

    @Test
    void a_long_day_has_every_second_hour_so_that_none_covers_another() {
        DayPicture day = of(row("1", block(8 * 60, 22 * 60)));
        assertThat(day.ticks()).hasSizeBetween(3, 7);
        assertThat(day.ticks().get(1).x() - day.ticks().get(0).x()).isGreaterThan(60);
    }

    @Test
    void nothing_planned_is_an_hour_without_bars() {
        DayPicture day = of(row("1"));
        assertThat(day.lanes()).extracting(Lane::bars).containsExactly(List.of());
        assertThat(day.ticks()).hasSize(2);
    }

    @Test
    void whatever_stands_on_the_courts_lies_inside_the_picture_in_its_own_lane_and_in_order() {
        for (int day = 0; day < 500; day++) {
            Random random = Seed.random(day);
            List<Row> rows = new ArrayList<>();
            for (int court = 1; court <= 1 + random.nextInt(16); court++) {
                List<Block> blocks = new ArrayList<>();
                for (int at = random.nextInt(12 * 60); at < 22 * 60; at += 20 + random.nextInt(200)) {
                    blocks.add(new Block(at, at + 10 + random.nextInt(9), Look.PLAYED, "" + at));
                }
                rows.add(new Row("" + court, blocks));
            }
            inside(DayPicture.of(rows, random.nextInt(24 * 60), OptionalInt.empty()), Seed.rerun(day));
        }
    }

    private static void inside(DayPicture day, String again) {
        int below = 0;
        for (Lane lane : day.lanes()) {
            int end = 0;
            for (Bar bar : lane.bars()) {
                assertThat(bar.x()).as(again).isGreaterThanOrEqualTo(end);
                end = bar.x() + bar.width();
                assertThat(end).as(again).isLessThanOrEqualTo(DayPicture.WIDTH);
                assertThat(bar.y()).as(again).isGreaterThanOrEqualTo(below);
                assertThat(bar.y() + bar.height()).as(again).isLessThanOrEqualTo(day.axis());
            }
            below = lane.baseline();
        }
    }
}
