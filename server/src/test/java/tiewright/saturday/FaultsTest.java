package tiewright.saturday;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The machine finds what it is there for: a fault that is put back into the program breaks its promise on one of a few days. Each
 * build looks whether the line that a fault changes is still there; {@code -Dfaults=all} plays days with each of them,
 * {@code "-Dfaults=NAME NAME"} with these.
 */
class FaultsTest {
    private static final int DAYS = 20;

    static List<Fault> asked() {
        String asked = System.getProperty("faults", "none");
        Fault[] all = Fault.values();
        return switch (asked) {
            case "all" -> List.of(all);
            case "none" -> List.of();
            default ->
                java.util.Arrays.stream(asked.split(" ")).map(Fault::valueOf).toList();
        };
    }

    @ParameterizedTest
    @EnumSource
    void the_line_that_a_fault_changes_is_there(Fault fault) {
        assertThat(fault.places()).as(fault.toString()).isEqualTo(1);
    }

    @ParameterizedTest(allowZeroInvocations = true)
    @MethodSource("asked")
    void a_fault_that_is_put_back_is_found(Fault fault) {
        String found = new PutBack(fault).played(Long.getLong("from", 1), Integer.getInteger("days", DAYS));
        System.out.println(fault + ": " + found);
        assertThat(found).as(fault + " in " + DAYS + " days").isNotEmpty();
    }
}
