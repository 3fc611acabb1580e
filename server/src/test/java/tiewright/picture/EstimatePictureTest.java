package tiewright.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.picture.EstimatePicture.Line;
import tiewright.picture.EstimatePicture.Row;
import tiewright.picture.EstimatePicture.Tick;

/** Estimates stand where their figures say, all on one axis. No source: our own picture. */
class EstimatePictureTest {
    private static Line line(String name, double low, double best, double high) {
        return new Line(name, low, best, high, true, "", "");
    }

    /** With names of one letter the axis runs from 80 to 306; with ends at -10 and +10 a rally is 11.3 wide. */
    @Test
    void figures_stand_at_places_that_a_pencil_finds() {
        EstimatePicture two = EstimatePicture.of(List.of(line("a", -10, 0, 10), line("b", -5, 2.5, 5)));
        assertThat(two.even()).isEqualTo(193);
        assertThat(two.ticks()).extracting(Tick::value).containsExactly(-10, -5, 0, 5, 10);
        assertThat(two.ticks()).extracting(Tick::x).containsExactly(80, 137, 193, 250, 306);
        Row b = two.rows().get(1);
        assertThat(List.of(b.low(), b.best(), b.high())).containsExactly(137, 221, 250);
        assertThat(two.axis()).isEqualTo(60);
        assertThat(b.y()).isEqualTo(45);
    }

    @Test
    void even_is_on_the_axis_when_all_lie_on_one_side_of_it() {
        EstimatePicture above = EstimatePicture.of(List.of(line("a", 3, 4, 5)));
        assertThat(above.ticks())
                .extracting(Tick::value)
                .startsWith(0)
                .contains(4)
                .endsWith(5);
        EstimatePicture below = EstimatePicture.of(List.of(line("a", -0.9, -0.5, -0.2)));
        assertThat(below.ticks()).extracting(Tick::value).containsExactly(-1, 0);
        assertThat(EstimatePicture.of(List.of(line("a", 0, 0, 0))).ticks())
                .extracting(Tick::value)
                .containsExactly(0, 1);
        assertThat(EstimatePicture.of(List.of()).rows()).isEmpty();
    }

    /** Two names leave 102 for the axis: from -6.5 to +7.2 its numbers would stand 13 apart in steps of 2. */
    @Test
    void numbers_of_the_axis_keep_apart_beside_long_names() {
        EstimatePicture pairs = EstimatePicture.of(List.of(line("Ada and Bernadette Long", -6.5, 1, 7.2)));
        assertThat(pairs.ticks()).extracting(Tick::value).containsExactly(-10, 0, 10);
    }

    @Test
    void a_name_too_long_for_its_column_is_squeezed_and_no_other() {
        EstimatePicture names = EstimatePicture.of(List.of(line("Ada", 0, 1, 2), line("x".repeat(40), 0, 1, 2)));
        assertThat(names.rows()).extracting(Row::squeezed).containsExactly(0, 190);
        assertThat(names.even()).isEqualTo(190 + 16);
    }

    @Test
    void what_is_no_interval_is_a_bug() {
        assertThatThrownBy(() -> line("a", 1, 0, 2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> line("a", 0, Double.NaN, 2)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void any_estimates_lie_within_the_picture_in_order_and_as_far_apart_as_their_figures() {
        for (int round = 0; round < 500; round++) {
            Random random = Seed.random(round);
            String seed = Seed.rerun(round);
            List<Line> lines = new ArrayList<>();
            for (int n = 1 + random.nextInt(28); n > 0; n--) {
                double best = random.nextGaussian() * 10;
                lines.add(line("n".repeat(1 + random.nextInt(30)), best - random.nextDouble() * 30, best, best + 1));
            }
            EstimatePicture picture = EstimatePicture.of(lines);
            List<Tick> ticks = picture.ticks();
            Tick first = ticks.get(0);
            Tick last = ticks.get(ticks.size() - 1);
            double unit = (double) (last.x() - first.x()) / (last.value() - first.value());
            assertThat(ticks.size()).as(seed).isBetween(2, 10);
            for (int i = 1; i < ticks.size(); i++) {
                assertThat(ticks.get(i).x() - ticks.get(i - 1).x())
                        .as("numbers run into each other, " + seed)
                        .isGreaterThanOrEqualTo(33);
            }
            for (Row row : picture.rows()) {
                assertThat(row.low()).as(seed).isBetween(first.x(), row.best());
                assertThat(row.high()).as(seed).isBetween(row.best(), last.x());
                assertThat((double) row.best() - picture.even())
                        .as(seed)
                        .isCloseTo(row.line().best() * unit, within(1.5));
            }
        }
    }
}
