package tiewright.wording;

import java.util.LinkedHashMap;
import java.util.Map;
import tiewright.correction.RulingNeeded;
import tiewright.desk.DoNext;
import tiewright.event.Directory;
import tiewright.event.Event;

/** What to do next, each item in one sentence. */
public final class DoNextWords {
    private final Words words;

    private DoNextWords(Words words) {
        this.words = words;
    }

    /** In English: clubs by name, moments by the hall's clock. The list names no players. */
    public static DoNextWords of(Event event) {
        return of(Language.ENGLISH, event);
    }

    public static DoNextWords of(Language language, Event event) {
        return new DoNextWords(Words.of(language, event, new Directory(Map.of())));
    }

    public String sentence(DoNext.Item item) {
        Map<String, Object> data = new LinkedHashMap<>(item.data());
        data.computeIfPresent(
                "what",
                (name, kind) -> words.sentence("correction.case." + ((RulingNeeded.Kind) kind).code(), Map.of()));
        return words.sentence("desk.next." + item.kind().code(), data);
    }
}
