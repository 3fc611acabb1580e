package tiewright.ledger;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * Kills a process that writes, at moments spread over its whole life, and looks after each kill for everything that it had
 * acknowledged. All processors are busy meanwhile and the file is old and full of holes. DEVELOPERS.md has the command for many kills.
 */
final class Kills {
    private static final long SECOND = TimeUnit.SECONDS.toNanos(1);
    /** What a database has not yet settled after its opening is lost within so many answers; on a busy machine that is a while. */
    private static final int FIRST_ANSWERS = 30;
    /** After so many other kills it begins again with the old folder, as for each in the first second. */
    private static final int LIVES = 6;

    private final Path place;
    private final Path old;
    private final Path lived;
    private final Random random;
    private final long longest;
    private final Map<When, Tally> tallies = new EnumMap<>(When.class);
    private int kills;

    /** Where in the life of the process the kill falls; a third of all kills in the first second of its writing. */
    enum When {
        STARTING,
        FIRST_SECOND,
        LATER,
        CLOSING;

        /** A third in the first second, the rest over start, later life and end. */
        static When of(int kill) {
            return switch (kill % 6) {
                case 0, 3 -> FIRST_SECOND;
                case 1, 4 -> LATER;
                case 2 -> STARTING;
                default -> CLOSING;
            };
        }
    }

    /** @param longest nanoseconds that a process lives at most after its first second of writing */
    Kills(Path place, Random random, long longest) throws SQLException, IOException {
        this.longest = longest;
        this.place = place;
        this.old = place.resolve("old");
        this.lived = place.resolve("lived");
        this.random = random;
        OldFolder.make(old);
    }

    Map<When, Tally> tallies() {
        return tallies;
    }

    /** One life of the process and its end. The folder is the old one, or the one that the last kill left. */
    void kill(When when) throws IOException, InterruptedException {
        if (when == When.FIRST_SECOND || kills++ % LIVES == 0) {
            OldFolder.copy(old, lived);
        }
        List<Appender.Acknowledged> acknowledged = new ArrayList<>();
        Appender child = Appender.start(lived);
        switch (when) {
            case STARTING -> pause(2 * SECOND);
            case FIRST_SECOND -> {
                long end = System.nanoTime() + SECOND;
                int most = 1 + random.nextInt(FIRST_ANSWERS);
                do {
                    acknowledged.add(child.next());
                } while (acknowledged.size() < most && System.nanoTime() < end);
            }
            case LATER -> {
                acknowledged.add(child.next());
                LockSupport.parkNanos(SECOND);
                pause(longest);
            }
            case CLOSING -> {
                acknowledged.add(child.next());
                pause(SECOND);
                child.beginToEnd();
                pause(SECOND / 2);
            }
        }
        acknowledged.addAll(child.kill());
        look(tallies.computeIfAbsent(when, kind -> new Tally()), acknowledged);
    }

    /** Looks in a copy half of the time, so that the next process opens what the kill has left and not what the look has closed. */
    private void look(Tally tally, List<Appender.Acknowledged> acknowledged) throws IOException {
        Path folder = random.nextBoolean() ? OldFolder.copy(lived, place.resolve("copy")) : lived;
        try (Ledger ledger = Ledger.open(folder, Asked.CLOCK)) {
            tally.look(ledger, acknowledged);
        }
    }

    /** Up to so long; finer than a write takes, so that the kill falls into any part of one. */
    private void pause(long most) {
        long end = System.nanoTime() + (long) (random.nextDouble() * most);
        while (System.nanoTime() < end) {
            LockSupport.parkNanos(10_000);
        }
    }

    /** Keeps every processor at work until it is closed. */
    static final class Busy implements AutoCloseable {
        private volatile boolean ended;

        /** As many as others have left idle: a machine that is busy already needs no help. */
        static Busy everyProcessor() {
            Busy busy = new Busy();
            int processors = Runtime.getRuntime().availableProcessors();
            double load = ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
            for (int i = (int) Math.max(0, load); i < processors; i++) {
                Thread work = new Thread(busy::work, "busy");
                work.setDaemon(true);
                work.start();
            }
            return busy;
        }

        private void work() {
            while (!ended) {
                Thread.onSpinWait();
            }
        }

        @Override
        public void close() {
            ended = true;
        }
    }

    /** {@code [number of kills [seed]]}; ends with 1 if anything was lost, doubled or half done. */
    @SuppressWarnings("try") // other work is there to be in the way, not to be called
    public static void main(String[] args) throws Exception {
        int number = args.length > 0 ? Integer.parseInt(args[0]) : 500;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : System.nanoTime() & 0xffffff;
        System.out.println("seed " + seed);
        Path place = Files.createTempDirectory("tiewright-kills");
        Kills kills = new Kills(place, new Random(seed), 3 * SECOND);
        try (Busy busy = Busy.everyProcessor()) {
            for (int kill = 0; kill < number; kill++) {
                kills.kill(When.of(kill));
                if ((kill + 1) % 20 == 0 || kill + 1 == number) {
                    System.out.println("after " + (kill + 1) + " kills");
                    kills.tallies.forEach((when, tally) -> System.out.println("  " + when + " " + tally));
                }
            }
        }
        kills.tallies.values().forEach(tally -> tally.wrong().forEach(System.out::println));
        for (String folder : List.of("old", "lived", "copy")) {
            OldFolder.clear(place.resolve(folder));
        }
        Files.delete(place);
        boolean clean = kills.tallies.values().stream().allMatch(Tally::isClean);
        System.exit(clean ? 0 : 1);
    }
}
