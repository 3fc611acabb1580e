package tiewright.event;

import java.util.List;

/**
 * A change that a club asks for among what it alone knows, as a pure question: given the event, what the club has noted so far
 * and who asks, either the notes to keep or every reason why not. It never gives a fact. Classes are named by their verb, such
 * as {@code WishForTie}.
 */
public interface PrivateDecision {
    Outcome decide(Event event, Noted noted, Actor by);

    /**
     * Whether it holds whatever else was noted since its form was made: because it only adds, or because its form says which of
     * two states it starts from.
     */
    default boolean isNeverStale() {
        return false;
    }

    /** Accepted with what is to be kept, or refused with all reasons. */
    sealed interface Outcome permits Kept, Refused {}

    record Kept(List<PrivateNote> notes) implements Outcome {
        public Kept {
            notes = List.copyOf(notes);
        }

        public static Kept of(PrivateNote... notes) {
            return new Kept(List.of(notes));
        }
    }

    record Refused(List<Refusal> reasons) implements Outcome {
        public Refused {
            reasons = List.copyOf(reasons);
            if (reasons.isEmpty()) {
                throw new IllegalArgumentException("a refusal needs a reason");
            }
        }
    }
}
