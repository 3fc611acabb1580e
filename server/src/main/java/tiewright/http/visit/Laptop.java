package tiewright.http.visit;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import tiewright.clock.WitnessedClock;
import tiewright.ledger.Copies;
import tiewright.ledger.Ledger;

/** The machine that the service runs on: which time it shows, whether it slept, which copies it makes. Safe for any number of threads. */
public final class Laptop {
    private final WitnessedClock clock;
    private final Optional<Copies> copies;
    private final boolean isRehearsal;
    private boolean isTimeSaid;
    private Optional<Slept> slept = Optional.empty();

    /** From the last look before the machine stood still to the first one after it. */
    public record Slept(Instant from, Instant to) {}

    /**
     * How the copies stand.
     *
     * @param at when the newest one that could be read back was made
     * @param isAmber it is old, or the next one did not come about
     * @param trouble why it did not, as the machine says it; empty where it did
     */
    public record Copied(
            String folder, Optional<Instant> at, String file, long facts, boolean isAmber, String trouble) {}

    /**
     * @param copies into which folder copies go
     * @param isRehearsal what goes on here does not count
     */
    public Laptop(WitnessedClock clock, Ledger ledger, Optional<Path> copies, boolean isRehearsal) {
        this.clock = clock;
        this.copies = copies.map(folder -> new Copies(ledger, folder, System::nanoTime));
        this.isRehearsal = isRehearsal;
        this.isTimeSaid = clock.isBelieved();
    }

    public WitnessedClock clock() {
        return clock;
    }

    /** Makes a copy if it is time. */
    public void copyIfDue() {
        copies.ifPresent(all -> all.look(clock.instant()));
    }

    /** Makes a copy now, where somebody said into which folder. */
    public void copyNow() {
        copies.ifPresent(all -> all.make(clock.instant()));
    }

    /** How the copies stand; empty where nobody said into which folder they go. */
    public Optional<Copied> copied() {
        return copies.map(all -> {
            Copies.State state = all.state();
            return new Copied(
                    all.folder().toString(),
                    state.at(),
                    state.file().map(Path::getFileName).map(Path::toString).orElse(""),
                    state.facts(),
                    state.isOld() || !state.trouble().isEmpty(),
                    state.trouble());
        });
    }

    public boolean isRehearsal() {
        return isRehearsal;
    }

    /** After each start, until a person has held the machine's time against a clock of the hall; not while that time is in doubt. */
    public synchronized boolean asksForTime() {
        return !isTimeSaid && clock.doubt().isEmpty();
    }

    /** Says nothing of a time in doubt, which is not what the machine shows. */
    public synchronized void timeIsRight() {
        isTimeSaid |= clock.doubt().isEmpty();
    }

    /** A person looked at a clock of the hall and said which time is right. */
    public synchronized void decide(boolean machineIsRight) {
        clock.decide(machineIsRight);
        isTimeSaid = true;
    }

    /** Nothing was looked after between these moments; an earlier sleep of which nobody has read yet is part of it. */
    public synchronized void slept(Instant from, Instant to) {
        slept = Optional.of(new Slept(slept.map(Slept::from).orElse(from), to));
    }

    /** Empty once somebody has read of it. */
    public synchronized Optional<Slept> slept() {
        return slept;
    }

    public synchronized void sleepIsKnown() {
        slept = Optional.empty();
    }
}
