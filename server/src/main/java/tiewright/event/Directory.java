package tiewright.event;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.conditions.Plays;

/** The names behind the codes: kept beside the ledger, erased on a date, after which the codes stand alone. */
public record Directory(Map<PlayerId, Person> people) {
    /**
     * @param name as called on court, in any script
     * @param bornYear only where a rule needs it
     * @param plays the rubbers that the player states to play in beside open ones; for the organiser and the own club alone
     */
    public record Person(String name, OptionalInt bornYear, Optional<Plays> plays) {
        /** Somebody who states nothing about rubbers. */
        public Person(String name, OptionalInt bornYear) {
            this(name, bornYear, Optional.empty());
        }
    }

    public static final Directory EMPTY = new Directory(Map.of());

    /** Under this age a player is shown with first name and initial only. */
    static final int ADULT = 18;

    public Directory {
        people = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(people));
    }

    /** The full name, or the code when the name is not known or was erased. */
    public String name(PlayerId player) {
        return person(player).map(Person::name).orElse(player.code());
    }

    public Optional<Person> person(PlayerId player) {
        return Optional.ofNullable(people.get(player));
    }

    /** What the player states to play in beside open rubbers. */
    public Optional<Plays> plays(PlayerId player) {
        return person(player).flatMap(Person::plays);
    }

    /** Everybody who states what to play in. */
    public Map<PlayerId, Plays> stated() {
        Map<PlayerId, Plays> stated = new LinkedHashMap<>();
        people.forEach((player, person) -> person.plays().ifPresent(plays -> stated.put(player, plays)));
        return stated;
    }

    /** A minor: turns 18 in the year of the event or later, or is younger. Without a birth year nobody is taken for one. */
    public boolean isMinor(PlayerId player, int year) {
        return person(player)
                .filter(person -> person.bornYear().isPresent())
                .filter(person -> year - person.bornYear().getAsInt() <= ADULT)
                .isPresent();
    }

    /** What is left of the names once private data are deleted: no birth year, no statement, no full name, nothing of a minor. */
    public Directory erased(NamesKept names, int year) {
        Map<PlayerId, Person> kept = new LinkedHashMap<>();
        if (names == NamesKept.INITIALS) {
            people.forEach((player, person) -> {
                String name = person.name().strip();
                if (!isMinor(player, year) && name.indexOf(' ') > 0) {
                    kept.put(player, new Person(shortened(name), OptionalInt.empty()));
                }
            });
        }
        return new Directory(kept);
    }

    /** The name as strangers may read it: minors by first name and initial. */
    public String publicName(PlayerId player, int year) {
        String full = name(player);
        if (!isMinor(player, year)) {
            return full;
        }
        return shortened(full);
    }

    private static String shortened(String full) {
        int blank = full.lastIndexOf(' ');
        return blank < 0
                ? full
                : full.substring(0, blank) + " " + full.substring(blank + 1, full.offsetByCodePoints(blank + 1, 1))
                        + ".";
    }
}
