package tiewright.event;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Collections;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import tiewright.conditions.Conditions;

/** Facts of the weeks before: the event, its conditions, who takes part, who may act. */
public sealed interface SetUpFact extends Fact {

    /** What the event is; a later one replaces the earlier. Times are in the event's zone. */
    record EventDescribed(
            String name, LocalDate date, String venue, ZoneId zone, LocalTime starts, Optional<LocalTime> venueCloses)
            implements SetUpFact {
        /** A time on the day of the event, in its zone, as a moment. */
        public Instant at(LocalTime time) {
            return date.atTime(time).atZone(zone).toInstant();
        }

        @Override
        public FactKind kind() {
            return FactKind.EVENT_DESCRIBED;
        }
    }

    /**
     * The whole conditions of play as they hold from now on.
     *
     * @param version 1 for the first, one more for each change
     * @param ruling the numbered ruling that allows the change, needed after the first sheet was sealed
     */
    record ConditionsPublished(int version, Conditions conditions, OptionalInt ruling) implements SetUpFact {
        @Override
        public FactKind kind() {
            return FactKind.CONDITIONS_PUBLISHED;
        }
    }

    /** A captain ticked that this version was read. */
    record ConditionsRead(ClubId club, int version) implements SetUpFact {
        @Override
        public FactKind kind() {
            return FactKind.CONDITIONS_READ;
        }
    }

    /** A club takes part; a later one of the same code replaces the earlier. Seed 1 is the strongest. */
    record ClubEntered(ClubId club, String name, Optional<String> town, OptionalInt seed) implements SetUpFact {
        @Override
        public FactKind kind() {
            return FactKind.CLUB_ENTERED;
        }
    }

    /** A club was entered by mistake or left before the draw. */
    record ClubRemoved(ClubId club) implements SetUpFact {
        @Override
        public FactKind kind() {
            return FactKind.CLUB_REMOVED;
        }
    }

    /**
     * A player stands in a squad; a later one of the same code replaces the earlier. The name lies in the directory.
     *
     * @param rank place in the club's order of strength, 1 the strongest
     * @param from not here before this time
     * @param until leaves at this time
     * @param deputy may act for the captain
     */
    record PlayerEntered(
            PlayerId player,
            ClubId club,
            OptionalInt rank,
            Optional<LocalTime> from,
            Optional<LocalTime> until,
            boolean deputy)
            implements SetUpFact {
        @Override
        public FactKind kind() {
            return FactKind.PLAYER_ENTERED;
        }
    }

    record PlayerRemoved(PlayerId player) implements SetUpFact {
        @Override
        public FactKind kind() {
            return FactKind.PLAYER_REMOVED;
        }
    }

    /** A court and the hours it can be used; {@code usable} false takes it out of use. */
    record CourtSet(String court, Optional<LocalTime> from, Optional<LocalTime> until, boolean usable)
            implements SetUpFact {
        @Override
        public FactKind kind() {
            return FactKind.COURT_SET;
        }
    }

    /** The desk saw the player (or takes that back). */
    record CheckedIn(PlayerId player, boolean present) implements SetUpFact {
        @Override
        public FactKind kind() {
            return FactKind.CHECKED_IN;
        }
    }

    /**
     * A personal link was made. The secret itself is nowhere kept.
     *
     * @param link its public name, such as {@code L7}
     * @param hash SHA-256 of the secret, lower-case hex
     * @param label for whom, in words the organiser chose
     */
    record LinkIssued(
            String link, Role role, Optional<ClubId> club, Optional<PlayerId> player, String label, String hash)
            implements SetUpFact {
        @Override
        public FactKind kind() {
            return FactKind.LINK_ISSUED;
        }
    }

    /** Where help is: first aid, defibrillator, the number to call. What is not known is empty. */
    record SafetyDescribed(String firstAid, String defibrillator, String emergency) implements SetUpFact {
        public static final SafetyDescribed NOTHING = new SafetyDescribed("", "", "");

        @Override
        public FactKind kind() {
            return FactKind.SAFETY_DESCRIBED;
        }
    }

    /**
     * On this day, at its beginning in the event's zone, everything private is deleted; a later one replaces the earlier.
     *
     * @param names what stands for players afterwards
     */
    record DeletionDated(LocalDate date, NamesKept names) implements SetUpFact {
        @Override
        public FactKind kind() {
            return FactKind.DELETION_DATED;
        }
    }

    /**
     * Everything private was deleted, and every personal link ended but the organisers'.
     *
     * @param counts how much of each kind; nothing of what it said
     */
    record DataErased(SortedMap<String, Integer> counts) implements SetUpFact {
        public DataErased {
            counts = Collections.unmodifiableSortedMap(new TreeMap<>(counts));
        }

        @Override
        public FactKind kind() {
            return FactKind.DATA_ERASED;
        }
    }

    /** A captain or deputy lets a link of the own club read what the club keeps for itself. */
    record LinkLetIn(String link) implements SetUpFact {
        @Override
        public FactKind kind() {
            return FactKind.LINK_LET_IN;
        }
    }

    record LinkRevoked(String link) implements SetUpFact {
        @Override
        public FactKind kind() {
            return FactKind.LINK_REVOKED;
        }
    }

    /**
     * How sheets are opened when an organiser also captains a club.
     *
     * @param neutral the label of the second person who opens; empty = the tool opens by itself at the deadline
     * @param link that person's link: no other opens; empty in what older versions wrote, where any with that label does
     */
    record OpeningChosen(boolean organiserIsCaptain, Optional<String> neutral, Optional<String> link)
            implements SetUpFact {
        public OpeningChosen(boolean organiserIsCaptain, Optional<String> neutral) {
            this(organiserIsCaptain, neutral, Optional.empty());
        }

        /** Whether it names a neutral person, and this is who. */
        public boolean isNeutral(Actor by) {
            return organiserIsCaptain
                    && neutral.isPresent()
                    && (link.isPresent() ? by.link().equals(link) : by.name().equals(neutral.get()));
        }

        @Override
        public FactKind kind() {
            return FactKind.OPENING_CHOSEN;
        }
    }
}
