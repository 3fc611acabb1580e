package tiewright.http.answers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tiewright.event.PlayerId;
import tiewright.rating.Estimate;
import tiewright.rating.Evidence;
import tiewright.rating.Prior;
import tiewright.rating.Strengths;

class WorkedTest {
    private final Worked worked = new Worked();

    private Strengths strengths(double form, long seed) {
        Prior prior = new Prior(Map.of(PlayerId.of("N1"), Estimate.of(form, 2)), Map.of());
        return worked.strengths(prior, Evidence.of(List.of()), seed);
    }

    @Test
    void the_same_notes_are_looked_at_once() {
        assertThat(strengths(3, 1)).isSameAs(strengths(3, 1));
    }

    @Test
    void other_notes_and_another_draw_are_never_taken_for_them() {
        assertThat(strengths(4, 1).form(PlayerId.of("N1")).mean()).isEqualTo(4);
        assertThat(strengths(3, 1).form(PlayerId.of("N1")).mean()).isEqualTo(3);
        assertThat(strengths(3, 2)).isNotSameAs(strengths(3, 1));
    }

    @Test
    void what_is_forgotten_is_worked_out_anew() {
        Strengths before = strengths(3, 1);
        worked.forgetPrivate();
        assertThat(strengths(3, 1)).isNotSameAs(before);
    }
}
