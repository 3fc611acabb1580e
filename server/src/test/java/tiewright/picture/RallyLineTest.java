package tiewright.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tiewright.Seed;
import tiewright.picture.RallyLine.Tick;

/** A game as a line: to the right rally by rally, up where one side is ahead. No source: our own picture. */
class RallyLineTest {
    private static final Pattern CORNER = Pattern.compile("(\\d+),(\\d+)");

    /** 320 units for four rallies are 80 each; 45 for a lead of 3 are 15 a point, from the middle at 53. */
    @Test
    void corners_stand_where_a_pencil_finds_them() {
        RallyLine line = RallyLine.of(List.of(0, 1, 1, 0, -3));
        assertThat(line.points()).isEqualTo("30,53 110,38 190,38 270,53 350,98");
        assertThat(line.level()).isEqualTo(53);
        assertThat(line.leads()).containsExactly(new Tick(8, 3), new Tick(53, 0), new Tick(98, -3));
        assertThat(line.rallies()).extracting(Tick::value).containsExactly(0, 1, 2, 3, 4);
        assertThat(line.axis()).isEqualTo(98);
    }

    @Test
    void a_game_not_begun_is_a_point_at_level() {
        assertThat(RallyLine.of(List.of(0)).points()).isEqualTo("30,53");
    }

    @Test
    void any_game_goes_to_the_right_within_the_picture_with_few_numbers_below() {
        for (int round = 0; round < 300; round++) {
            Random random = Seed.random(round);
            List<Integer> ahead = new ArrayList<>(List.of(0));
            for (int rally = random.nextInt(120); rally > 0; rally--) {
                ahead.add(ahead.get(ahead.size() - 1) + random.nextInt(3) - 1);
            }
            RallyLine line = RallyLine.of(ahead);
            Matcher corner = CORNER.matcher(line.points());
            int before = 0;
            for (int i = 0; i < ahead.size(); i++) {
                assertThat(corner.find()).as(Seed.rerun(round)).isTrue();
                assertThat(Integer.parseInt(corner.group(1)))
                        .as(Seed.rerun(round))
                        .isBetween(Math.max(30, before), 350);
                before = Integer.parseInt(corner.group(1));
                int y = Integer.parseInt(corner.group(2));
                assertThat(Integer.signum(line.level() - y))
                        .as(Seed.rerun(round))
                        .isIn(0, Integer.signum(ahead.get(i)));
                assertThat(y).isBetween(8, 98);
            }
            assertThat(corner.find()).isFalse();
            assertThat(line.rallies().size()).as(Seed.rerun(round)).isBetween(2, 8);
        }
    }
}
