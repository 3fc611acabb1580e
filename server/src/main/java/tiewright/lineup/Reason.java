package tiewright.lineup;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Something that a captain should know of a proposal, as a code with data; {@code wording} makes the sentence.
 *
 * @param code the key of its sentence, such as {@code lineup.next-best}
 * @param data what the sentence names: players, pairs, wishes, rubbers; a Double is a chance or a difference of chances, 0
 *     to 1
 */
public record Reason(String code, Map<String, Object> data) {
    public Reason {
        data = Collections.unmodifiableMap(new LinkedHashMap<>(data));
    }

    public static Reason of(String kind) {
        return new Reason("lineup." + kind, Map.of());
    }

    public Reason with(String name, Object value) {
        Map<String, Object> more = new LinkedHashMap<>(data);
        more.put(name, value);
        return new Reason(code, more);
    }

    /** With what is given away of an aim; without a word about it where the aim is to win. */
    public Reason costing(double cost, Aim aim) {
        Reason said = with("cost", cost);
        return aim.kind() == Aim.Kind.WIN ? said : said.with("aim", aim.kind());
    }
}
