package tiewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;
import tiewright.conditions.Setting;

/** A squad too large to be counted; apart from {@link SheetCountTest} because it counts for seconds before it gives up. */
class TooManyCasesTest {
    @Test
    void says_when_there_are_too_many_cases() {
        Conditions twelve = Conditions.of(Preset.CLUB_DAY)
                .with(Setting.RUBBERS, "12")
                .with(Setting.ORDER_OF_STRENGTH, "rank-sum")
                .with(Setting.MAX_RUBBERS_PER_PLAYER, "1");
        assertThat(SheetCount.of(
                        IntStream.rangeClosed(1, 24).mapToObj(OptionalInt::of).toList(), twelve))
                .isEmpty();
    }
}
