package tiewright.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.List;
import tiewright.event.Days;
import tiewright.event.Decision;
import tiewright.event.Refusal;
import tiewright.wording.Words;

/** The codes of a refusal; each must have a sentence whose places can all be filled. */
final class Said {
    private static final Words WORDS = Words.ofCodes(ZoneOffset.UTC);

    private Said() {}

    static List<String> codes(Days day, Decision decision) {
        for (Refusal refusal : day.refusals(decision)) {
            assertThat(WORDS.sentence(refusal))
                    .as(refusal.code())
                    .endsWith(".")
                    .doesNotContain("{")
                    .doesNotContain("!");
        }
        return day.codes(decision);
    }
}
