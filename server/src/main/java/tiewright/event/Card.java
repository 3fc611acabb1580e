package tiewright.event;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.scoring.Score;

/** Everything that was entered for one rubber, in the order of receipt, and what counts of it. */
public record Card(List<Entry> entries) {
    public static final Card NONE = new Card(List.of());

    /**
     * One entry.
     *
     * @param asItStood what the card says of a retired rubber where the table counts something else; else empty
     * @param settles entered to settle or correct the rubber, so it counts alone
     * @param reason why it was corrected or taken back; empty for a first reading
     */
    public record Entry(
            long seq,
            List<Score> games,
            How how,
            List<Score> asItStood,
            Actor by,
            Instant receivedAt,
            boolean settles,
            boolean takenBack,
            String reason) {
        boolean reads(Entry other) {
            return games.equals(other.games) && how == other.how;
        }
    }

    public enum Standing {
        /** nothing entered */
        EMPTY,
        /** one source */
        RECORDED,
        /** two sources agree */
        CONFIRMED,
        /** two sources differ: counts nowhere until a person settles it from the card */
        HELD,
        /** settled or corrected by a person */
        SETTLED
    }

    public Card {
        entries = List.copyOf(entries);
    }

    Card with(Entry entry) {
        List<Entry> more = new ArrayList<>(entries);
        more.add(entry);
        return new Card(more);
    }

    /** The entries since the last that was settled or taken back, that one included unless it took back. */
    public List<Entry> inForce() {
        List<Entry> kept = new ArrayList<>();
        for (Entry entry : entries) {
            if (entry.settles() || entry.takenBack()) {
                kept.clear();
            }
            if (!entry.takenBack()) {
                kept.add(entry);
            }
        }
        return kept;
    }

    public Standing standing() {
        List<Entry> now = inForce();
        if (now.isEmpty()) {
            return Standing.EMPTY;
        }
        Entry first = now.get(0);
        if (now.stream().anyMatch(entry -> !entry.reads(first))) {
            return Standing.HELD;
        }
        if (first.settles()) {
            return Standing.SETTLED;
        }
        return now.stream().anyMatch(entry -> !entry.by().isSameSourceAs(first.by()))
                ? Standing.CONFIRMED
                : Standing.RECORDED;
    }

    /** The score that counts; empty while nothing is entered or two entries differ. */
    public Optional<RubberScore> score(RubberNo rubber) {
        Standing standing = standing();
        if (standing == Standing.EMPTY || standing == Standing.HELD) {
            return Optional.empty();
        }
        Entry first = inForce().get(0);
        return Optional.of(new RubberScore(rubber, first.games(), first.how()));
    }

    /** The readings that differ, each once, when the rubber is held. */
    public List<Entry> readings() {
        List<Entry> distinct = new ArrayList<>();
        for (Entry entry : inForce()) {
            if (distinct.stream().noneMatch(entry::reads)) {
                distinct.add(entry);
            }
        }
        return distinct;
    }
}
