package tiewright.saturday;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicLong;
import tiewright.event.FactKind;

/** Plays days one after the other, as many at once as there are processors. */
final class Days {
    private final int clubs;
    private final int steps;
    private final Set<FactKind> happened = ConcurrentHashMap.newKeySet();
    private final Set<Looked> looked = ConcurrentHashMap.newKeySet();

    Days(int clubs, int steps) {
        this.clubs = clubs;
        this.steps = steps;
    }

    /** The earliest of the days that broke a promise before anybody noticed, made short; empty if every day held. */
    Optional<Saturday.Failure> firstFailure(long first, int days) {
        Map<Long, Saturday.Failure> failures = new ConcurrentSkipListMap<>();
        AtomicLong next = new AtomicLong(first);
        int hands = Runtime.getRuntime().availableProcessors();
        ExecutorService pool = Executors.newFixedThreadPool(hands);
        try {
            List<Future<?>> all = new ArrayList<>();
            for (int hand = 0; hand < hands; hand++) {
                all.add(pool.submit(() -> {
                    for (long seed = next.getAndIncrement();
                            seed < first + days && failures.isEmpty();
                            seed = next.getAndIncrement()) {
                        play(seed).ifPresent(failure -> failures.put(failure.seed(), failure));
                    }
                }));
            }
            for (Future<?> one : all) {
                one.get();
            }
        } catch (ExecutionException broken) {
            throw new IllegalStateException(broken);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        } finally {
            pool.shutdownNow();
        }
        return failures.values().stream().findFirst().map(this::made);
    }

    /** The kinds of facts of which no day so far had one: what people never did. */
    Set<FactKind> neverHappened() {
        Set<FactKind> never = EnumSet.allOf(FactKind.class);
        never.removeAll(happened);
        return never;
    }

    /** What no promise met on any day so far. */
    Set<Looked> neverLooked() {
        Set<Looked> never = EnumSet.allOf(Looked.class);
        never.removeAll(looked);
        return never;
    }

    private Optional<Saturday.Failure> play(long seed) {
        try {
            Saturday day = new Saturday(seed, clubs, steps);
            Optional<Saturday.Failure> failure = day.play();
            happened.addAll(day.happened());
            looked.addAll(day.looked());
            return failure;
        } catch (RuntimeException bug) {
            throw new IllegalStateException("day " + seed, bug);
        }
    }

    private Saturday.Failure made(Saturday.Failure failure) {
        return new Shortest(new Saturday(failure.seed(), clubs, steps), Integer.getInteger("tries", 25)).of(failure);
    }
}
