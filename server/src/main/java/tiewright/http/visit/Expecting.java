package tiewright.http.visit;

import java.util.HashMap;
import java.util.Map;
import tiewright.event.TieId;
import tiewright.http.answers.Answers;
import tiewright.timetable.Expected;

/** When ties are likely to begin, in words that promise nothing earlier than was published. */
final class Expecting {
    private Expecting() {}

    static Map<TieId, String> words(Visit visit) {
        Map<TieId, String> words = new HashMap<>();
        visit.ask(Answers::new).expected().forEach((tie, expected) -> words.put(tie, said(visit, expected)));
        return words;
    }

    private static String said(Visit visit, Expected expected) {
        boolean sure = expected.likelyFrom().equals(expected.likelyTo());
        return visit.words()
                .sentence(
                        sure ? "page.expected-at" : "page.expected",
                        Map.of(
                                "notBefore",
                                expected.notBefore(),
                                "from",
                                expected.likelyFrom(),
                                "to",
                                expected.likelyTo()));
    }
}
