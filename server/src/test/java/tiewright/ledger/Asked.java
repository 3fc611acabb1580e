package tiewright.ledger;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.PrivateDecision;
import tiewright.event.PrivateNote;
import tiewright.event.Role;

/** Decisions and requests as the tests of the ledger need them. */
final class Asked {
    static final Instant NINE = Instant.parse("2026-02-28T09:00:00.123Z");
    static final Clock CLOCK = Clock.fixed(NINE, ZoneOffset.UTC);
    static final Actor DESK = new Actor(Role.DESK, Optional.empty(), "desk 2", "browser-7", Optional.of("L2"));

    private Asked() {}

    static Request request(String key) {
        return Request.of(key, DESK);
    }

    static Request seen(String key, long seq) {
        return new Request(key, DESK, Optional.empty(), OptionalLong.of(seq));
    }

    static Decision facts(Fact... facts) {
        return (event, given) -> Decision.Accepted.of(facts);
    }

    static Decision facts(List<Fact> facts) {
        return (event, given) -> new Decision.Accepted(facts, List.of());
    }

    static Decision notes(PrivateNote... notes) {
        return (event, given) -> new Decision.Accepted(List.of(), List.of(notes));
    }

    static PrivateDecision kept(PrivateNote... notes) {
        return (event, noted, by) -> PrivateDecision.Kept.of(notes);
    }

    static PrivateRequest forClub(ClubId club, String key) {
        return PrivateRequest.of(club, key, captain(club));
    }

    static Actor captain(ClubId club) {
        return new Actor(Role.CAPTAIN, Optional.of(club), "captain", "browser-1");
    }

    /** A decision that also reads sealed sheets. */
    static Decision reading(Set<Decision.SealedRef> needs, BiFunction<Event, Decision.Given, Decision.Outcome> decide) {
        return new Decision() {
            @Override
            public Outcome decide(Event event, Given given) {
                return decide.apply(event, given);
            }

            @Override
            public Set<SealedRef> needs(Event event) {
                return needs;
            }
        };
    }

    /** A decision whose form some facts make stale. */
    static Decision staledBy(Predicate<Fact> stale, Fact... facts) {
        return new Decision() {
            @Override
            public Outcome decide(Event event, Given given) {
                return Accepted.of(facts);
            }

            @Override
            public boolean isStaledBy(Fact fact) {
                return stale.test(fact);
            }
        };
    }
}
