package tiewright.ledger;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Takes the power away from a ledger that writes, at moments spread over its whole life, so that the disk loses what nobody forced to it, and
 * looks after each cut for everything that had been acknowledged. The file is old and full of holes.
 */
final class PowerCuts {
    /** Writes and forced writes of an opening, of the first seconds, of a longer life and of a closing, as far as they go. */
    private static final int OPENING = 12;

    private static final int FIRST = 60;
    private static final int LATER = 400;
    private static final int CLOSING = 8;
    /** After so many other cuts it begins again with the old folder. */
    private static final int LIVES = 6;

    private final Path place;
    private final Path old;
    private final Random random;
    private final Map<Kills.When, Tally> tallies = new EnumMap<>(Kills.When.class);
    private Path lived;
    private int lives;
    private int others;

    PowerCuts(Path place, Random random) throws SQLException, IOException {
        this.place = place;
        this.old = place.resolve("old");
        this.lived = old;
        this.random = random;
        OldFolder.make(old);
    }

    Map<Kills.When, Tally> tallies() {
        return tallies;
    }

    /** One life and its end. The folder is the old one, or what the last cut left. */
    void cut(Kills.When when) throws IOException {
        boolean beginsAgain = when == Kills.When.FIRST_SECOND || others++ % LIVES == 0;
        Path folder = OldFolder.copy(beginsAgain ? old : lived, place.resolve("life-" + lives++));
        List<Appender.Acknowledged> answers = new ArrayList<>();
        try {
            live(folder, when, answers);
        } catch (LedgerException | IllegalStateException thePowerIsGone) {
            if (!UnsureDisk.isOff()) {
                throw thePowerIsGone;
            }
        }
        // in a place of its own: the life that was cut off may still hold locks on its files
        Path found = OldFolder.copy(folder, place.resolve("found-" + lives));
        UnsureDisk.comesBack(folder, found, random);
        OldFolder.clear(folder);
        look(found, when, answers);
    }

    private void live(Path folder, Kills.When when, List<Appender.Acknowledged> answers) throws IOException {
        Appender.Moment clock = new Appender.Moment();
        if (when == Kills.When.STARTING) {
            UnsureDisk.cutAfter(1 + random.nextInt(OPENING));
        }
        try (Ledger ledger = UnsureDisk.ledger(folder, clock)) {
            int few = random.nextInt(10);
            switch (when) {
                case FIRST_SECOND -> UnsureDisk.cutAfter(1 + random.nextInt(FIRST));
                case LATER -> UnsureDisk.cutAfter(1 + random.nextInt(LATER));
                default -> {}
            }
            for (int number = Steps.in(ledger).size(); when != Kills.When.CLOSING || few-- > 0; number++) {
                clock.at(number);
                Answer answer = ledger.decide(Steps.request(number), Steps.step(number));
                answers.add(Appender.Acknowledged.of(number, (Answer.Done) answer));
            }
            UnsureDisk.cutAfter(1 + random.nextInt(CLOSING));
        }
    }

    /** Looks in a copy half of the time, so that the next life opens what the cut has left and not what the look has closed. */
    private void look(Path folder, Kills.When when, List<Appender.Acknowledged> answers) throws IOException {
        Path looked = random.nextBoolean() ? OldFolder.copy(folder, place.resolve("copy")) : folder;
        try (Ledger ledger = Ledger.open(looked, Asked.CLOCK)) {
            tallies.computeIfAbsent(when, kind -> new Tally()).look(ledger, answers);
        }
        if (!lived.equals(old)) {
            OldFolder.clear(lived);
        }
        lived = folder;
    }
}
