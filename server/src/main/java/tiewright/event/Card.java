package tiewright.event;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.scoring.Score;

/** Everything that was entered for one rubber, in the order of receipt, and what counts of it. */
public record Card(List<Entry> entries) {
    public static final Card NONE = new Card(List.of());

    /** What an entry is for. */
    public enum Purpose {
        /** somebody read the card */
        READS,
        /** a person settles or corrects the rubber, so it counts alone */
        SETTLES,
        /** the rubber was never played: what was entered before counts no longer, nor does this */
        TAKES_BACK
    }

    /**
     * What somebody says of the rubber.
     *
     * @param games points of each game in order, home first, as the table counts them
     * @param asItStood what the card says of a retired rubber where the table counts something else; else empty
     */
    public record Written(List<Score> games, How how, List<Score> asItStood) {
        public Written {
            games = List.copyOf(games);
            asItStood = List.copyOf(asItStood);
        }

        /** As far as the table counts it. */
        boolean countsLike(Written other) {
            return games.equals(other.games) && how == other.how;
        }
    }

    /**
     * One entry.
     *
     * @param because why it was corrected or taken back; empty for a first reading
     */
    public record Entry(long seq, Actor by, Instant receivedAt, Written written, Purpose purpose, Because because) {
        static Entry of(Recorded recorded, Written written, Purpose purpose, Because because) {
            return new Entry(recorded.seq(), recorded.by(), recorded.receivedAt(), written, purpose, because);
        }

        public List<Score> games() {
            return written.games();
        }

        public How how() {
            return written.how();
        }

        public List<Score> asItStood() {
            return written.asItStood();
        }

        public boolean settles() {
            return purpose == Purpose.SETTLES;
        }

        public boolean takenBack() {
            return purpose == Purpose.TAKES_BACK;
        }

        boolean reads(Entry other) {
            return written.countsLike(other.written);
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

    /** What was entered up to this moment. */
    Card until(Instant at) {
        return new Card(entries.stream()
                .filter(entry -> !entry.receivedAt().isAfter(at))
                .toList());
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
