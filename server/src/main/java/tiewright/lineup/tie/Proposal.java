package tiewright.lineup.tie;

import java.util.List;
import java.util.Optional;
import tiewright.lineup.Reason;
import tiewright.lineup.Wish;
import tiewright.lineup.decider.DeciderAdvice;

/** What to put on the sheet, or why no sheet is possible as asked. */
public sealed interface Proposal {
    Kind kind();

    /** How it came out. */
    enum Kind {
        PROPOSED,
        IMPOSSIBLE
    }

    /**
     * The best sheets, the best first.
     *
     * @param orderMatters false: against an unknown order every order of the same pairs is worth the same, so the one shown
     *     was drawn by lot and may be drawn again
     * @param everySheetTried true: proven best by trying every legal sheet; false: the best that the search found
     * @param tried sheets tried, where each was
     * @param keeping the best of those that keep as much as can be kept of what single players are promised; empty where the first
     *     does, or not every sheet was tried
     * @param decider who would play it; empty where there is none or nobody is named for it
     * @param promises what is due of the promises to single players, and which of them cannot hold
     * @param notes what holds for all of them
     */
    record Proposed(
            List<ProposedSheet> sheets,
            boolean orderMatters,
            boolean everySheetTried,
            long tried,
            Optional<ProposedSheet> keeping,
            Optional<DeciderAdvice> decider,
            List<Reason> promises,
            List<Reason> notes)
            implements Proposal {
        public Proposed {
            sheets = List.copyOf(sheets);
            promises = List.copyOf(promises);
            notes = List.copyOf(notes);
        }

        @Override
        public Kind kind() {
            return Kind.PROPOSED;
        }
    }

    /**
     * No legal sheet grants every wish.
     *
     * @param conflict a smallest set of wishes that cannot hold together under the conditions; empty if even without wishes
     *     nobody can be named
     */
    record Impossible(List<Wish> conflict, List<Reason> reasons) implements Proposal {
        public Impossible {
            conflict = List.copyOf(conflict);
            reasons = List.copyOf(reasons);
        }

        @Override
        public Kind kind() {
            return Kind.IMPOSSIBLE;
        }
    }
}
