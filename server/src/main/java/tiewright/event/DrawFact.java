package tiewright.event;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Facts of the draw, the order of the ties, when play stands still, and the slots of the knockout. */
public sealed interface DrawFact extends Fact {

    /**
     * The pools were drawn in public; ties of an earlier draw are gone with it.
     *
     * @param spokenSeed the words spoken by the witness, from which anybody can replay the draw
     * @param pools the clubs of each pool by draw number
     */
    record PoolsDrawn(String spokenSeed, String witness, SortedMap<String, List<ClubId>> pools) implements DrawFact {
        public PoolsDrawn {
            SortedMap<String, List<ClubId>> copy = new TreeMap<>();
            pools.forEach((pool, clubs) -> copy.put(pool, List.copyOf(clubs)));
            pools = java.util.Collections.unmodifiableSortedMap(copy);
        }

        @Override
        public FactKind kind() {
            return FactKind.POOLS_DRAWN;
        }
    }

    /** The knockout was laid out; knockout ties of an earlier draw are gone with it. */
    record KnockoutDrawn(String spokenSeed, String witness) implements DrawFact {
        @Override
        public FactKind kind() {
            return FactKind.KNOCKOUT_DRAWN;
        }
    }

    /** A tie has its place in the event. Each side is a club or a source, never both. */
    record TieArranged(TieId tie, Stage stage, Optional<String> pool, int round, Slot home, Slot away)
            implements DrawFact {
        @Override
        public FactKind kind() {
            return FactKind.TIE_ARRANGED;
        }
    }

    /** The published start and court of a tie; empty = not fixed yet. */
    record TieTimed(TieId tie, Optional<LocalTime> start, Optional<String> court) implements DrawFact {
        @Override
        public FactKind kind() {
            return FactKind.TIE_TIMED;
        }
    }

    /**
     * A whole order of play is published; the times that it changes follow, and the notice that tells of them.
     *
     * @param version 1 for the first plan of the event
     * @param notice the number of the notice that comes with it
     * @param slotMinutes how long a rubber stands on its court in this plan, play and turnover
     * @param seed what the search began from, so that it can be run again; empty where nothing was searched
     * @param by who publishes it, as it is printed
     */
    record PlanPublished(int version, int notice, int slotMinutes, String seed, String reason, String by)
            implements DrawFact {
        @Override
        public FactKind kind() {
            return FactKind.PLAN_PUBLISHED;
        }
    }

    /**
     * Where and when one rubber stands in the published plan; its tie was timed just before.
     *
     * @param umpires the club on duty, where clubs umpire
     */
    record RubberTimed(TieId tie, RubberNo rubber, LocalTime start, String court, Optional<ClubId> umpires)
            implements DrawFact {
        @Override
        public FactKind kind() {
            return FactKind.RUBBER_TIMED;
        }
    }

    /** A tie will not be played and counts nowhere: the ruling says why. */
    record TieCalledOff(TieId tie, int ruling) implements DrawFact {
        @Override
        public FactKind kind() {
            return FactKind.TIE_CALLED_OFF;
        }
    }

    /**
     * By a ruling the tie begins again: what was named, called and entered for it counts no longer. A side whose club does
     * not come from elsewhere keeps it.
     */
    record TieRestarted(TieId tie, Optional<ClubId> home, Optional<ClubId> away, int ruling) implements DrawFact {
        @Override
        public FactKind kind() {
            return FactKind.TIE_RESTARTED;
        }
    }

    /** By a ruling the club stays in its slot, whatever the results say since. */
    record SlotKept(TieId tie, Side side, ClubId club, int ruling) implements DrawFact {
        @Override
        public FactKind kind() {
            return FactKind.SLOT_KEPT;
        }
    }

    /** The club that takes a slot is known. */
    record SlotFilled(TieId tie, Side side, ClubId club) implements DrawFact {
        @Override
        public FactKind kind() {
            return FactKind.SLOT_FILLED;
        }
    }

    /**
     * Play stands still on every court, for rain say: until a time of the event's day, or until somebody says that it goes on.
     *
     * @param until empty = it goes on
     * @param reason as it stands in the log; empty where it goes on
     */
    record HallStopped(Optional<LocalTime> until, String reason) implements DrawFact {
        @Override
        public FactKind kind() {
            return FactKind.HALL_STOPPED;
        }
    }
}
