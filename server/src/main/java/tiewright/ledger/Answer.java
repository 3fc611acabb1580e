package tiewright.ledger;

import java.util.List;
import tiewright.event.Recorded;
import tiewright.event.Refusal;

/** What came of a decision. */
public sealed interface Answer {

    /**
     * It is written down.
     *
     * @param facts what was appended, in order; may be empty when only private notes were kept
     * @param again the same key was answered before: these are the facts of that time and nothing was appended now
     */
    record Done(List<Recorded> facts, boolean again) implements Answer {
        public Done {
            facts = List.copyOf(facts);
        }
    }

    /** Nothing changed, for all these reasons; the same key may be sent again. */
    record Refused(List<Refusal> reasons) implements Answer {
        public Refused {
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * Nothing changed, because the form was made before something happened that bears on it.
     *
     * @param since the facts that make it stale, oldest first
     */
    record Stale(List<Recorded> since) implements Answer {
        public Stale {
            since = List.copyOf(since);
        }
    }
}
