package tiewright.wording;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import tiewright.scoring.Format;

/** How a game is scored, such as <em>only the serving side scores, to 11, two ahead</em>. */
public final class FormatWords {
    private static final Words WORDS = Words.ofCodes(ZoneOffset.UTC);

    private FormatWords() {}

    public static String of(Format format) {
        List<String> parts = new ArrayList<>();
        parts.add(say("format." + format.kind()));
        parts.add(say("format.target", "target", format.target()));
        parts.add(say(format.byOne() ? "format.by-1" : "format.two-ahead"));
        format.cap().ifPresent(cap -> parts.add(say("format.cap", "cap", cap)));
        if (format.serveLast()) {
            parts.add(say("format.serve-last"));
        }
        return WORDS.list(parts, "plain");
    }

    private static String say(String key, Object... namesAndValues) {
        return WORDS.say("conditions." + key, namesAndValues);
    }
}
