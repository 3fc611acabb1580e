package tiewright.desk;

import java.util.List;
import tiewright.event.Days;
import tiewright.event.Decision;
import tiewright.event.Refusal;
import tiewright.wording.Words;

/** Why the desk refuses, as codes; every one is also said in words, so that a sentence that lacks its data fails. */
final class Why {
    private Why() {}

    static List<String> not(Days day, Decision decision) {
        List<Refusal> reasons = day.refusals(decision);
        Words words = Words.of(day.event(), day.directory());
        reasons.forEach(words::sentence);
        return reasons.stream().map(Refusal::code).toList();
    }
}
