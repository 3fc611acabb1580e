package tiewright.wording;

import java.util.ArrayList;
import java.util.List;
import tiewright.scoring.Format;

/** How a game is scored, such as <em>only the serving side scores, to 11, two ahead</em>. */
public final class FormatWords {
    private final Words words;

    public FormatWords(Words words) {
        this.words = words;
    }

    public String of(Format format) {
        List<String> parts = new ArrayList<>();
        parts.add(say("format." + format.kind()));
        parts.add(say("format.target", "target", format.target()));
        parts.add(say(format.byOne() ? "format.by-1" : "format.two-ahead"));
        format.cap().ifPresent(cap -> parts.add(say("format.cap", "cap", cap)));
        if (format.serveLast()) {
            parts.add(say("format.serve-last"));
        }
        return words.list(parts, "plain");
    }

    private String say(String key, Object... namesAndValues) {
        return words.say("conditions." + key, namesAndValues);
    }
}
