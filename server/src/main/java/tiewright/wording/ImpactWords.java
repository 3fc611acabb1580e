package tiewright.wording;

import java.util.Map;
import java.util.Optional;
import tiewright.correction.Impact;
import tiewright.correction.Impact.Node;
import tiewright.event.RubberNo;

/** One line of what hangs on a score, in words. */
public final class ImpactWords {
    private final Words words;

    public ImpactWords(Words words) {
        this.words = words;
    }

    /** What it is: <em>tie SF1, home club</em>. */
    public String subject(Node node) {
        Object first = node.subject().get(0);
        Object last = node.subject().get(node.subject().size() - 1);
        String code = "correction." + node.kind().code() + (node.subject().size() == 3 ? ".decider" : "");
        String rubber = last instanceof RubberNo no ? rubber(no) : "";
        return words.sentence(code, Map.of("first", first, "last", last, "rubber", rubber));
    }

    private String rubber(RubberNo no) {
        return no.isDecider()
                ? words.sentence("facts.the-decider", Map.of())
                : words.sentence("facts.rubber", Map.of("rubber", no));
    }

    public String value(Optional<Object> value) {
        return value.map(words::said)
                .map(text -> text.replace(">", ", "))
                .orElseGet(() -> words.sentence("correction.nothing", Map.of()));
    }

    public String state(Impact.State state) {
        return words.sentence("correction.state." + state.code(), Map.of());
    }
}
