package tiewright.wording;

import java.util.ArrayList;
import java.util.List;
import tiewright.scoring.Format;

/** How a game is scored, such as <em>only the serving side scores, to 11, two ahead</em>. */
public final class FormatWords {
    private static final Text TEXT = Text.of("conditions");

    private FormatWords() {}

    public static String of(Format format) {
        List<String> parts = new ArrayList<>();
        parts.add(TEXT.plain("format." + format.kind()));
        parts.add(TEXT.say("format.target", format.target()));
        parts.add(TEXT.plain(format.byOne() ? "format.by-1" : "format.two-ahead"));
        format.cap().ifPresent(cap -> parts.add(TEXT.say("format.cap", cap)));
        if (format.serveLast()) {
            parts.add(TEXT.plain("format.serve-last"));
        }
        return String.join(", ", parts);
    }
}
