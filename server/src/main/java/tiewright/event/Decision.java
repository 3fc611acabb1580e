package tiewright.event;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A change somebody asks for, as a pure question: given the event as it stands, either the facts to append or every
 * reason why not. Classes are named by their verb: {@code SealSheet}, {@code RecordCard}.
 */
public interface Decision {
    Outcome decide(Event event, Given given);

    /** The sealed sheets this decision must read; only the opening and a club's own captain may name any. */
    default Set<SealedRef> needs(Event event) {
        return Set.of();
    }

    /** Whether a fact that came after the form was made makes the form stale. A card is never stale. */
    default boolean isStaledBy(Fact fact) {
        return false;
    }

    /** A club's sealed sheet in one exchange. */
    record SealedRef(ExchangeId exchange, ClubId club) {}

    /** A sealed sheet in the clear, for the moment of a decision only. */
    record Sealed(Sheet sheet, String secret) {
        /** Says nothing of the sheet: what is printed or logged by mistake stays sealed. */
        @Override
        public String toString() {
            return "Sealed[]";
        }
    }

    /** What comes from outside: the moment, who asks, what names lie behind codes, and the sealed sheets asked for. */
    record Given(Instant now, Actor by, Directory directory, Map<SealedRef, Sealed> sealed) {
        public Optional<Sealed> sealed(ExchangeId exchange, ClubId club) {
            return Optional.ofNullable(sealed.get(new SealedRef(exchange, club)));
        }
    }

    /** Accepted with its facts and what must be kept privately, or refused with all reasons. */
    sealed interface Outcome permits Accepted, Refused {}

    record Accepted(List<Fact> facts, List<PrivateNote> notes) implements Outcome {
        public Accepted {
            facts = List.copyOf(facts);
            notes = List.copyOf(notes);
        }

        public static Accepted of(Fact... facts) {
            return new Accepted(List.of(facts), List.of());
        }
    }

    record Refused(List<Refusal> reasons) implements Outcome {
        public Refused {
            reasons = List.copyOf(reasons);
            if (reasons.isEmpty()) {
                throw new IllegalArgumentException("a refusal needs a reason");
            }
        }

        public static Refused because(Refusal... reasons) {
            return new Refused(List.of(reasons));
        }
    }
}
