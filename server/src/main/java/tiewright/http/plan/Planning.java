package tiewright.http.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tiewright.http.answers.PlanAnswers;
import tiewright.http.visit.Background;
import tiewright.search.Stop;
import tiewright.timetable.Budget;
import tiewright.timetable.Pin;
import tiewright.timetable.PlanScore;
import tiewright.timetable.Planned;

/**
 * Searches for an order of play, off the requests and one after the other: a page starts one, looks how far it is and takes
 * what it found. Drafts live here only, until one is published or the service ends.
 */
final class Planning implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Planning.class);

    /** Short searches are over before the page is asked for. */
    private static final long PATIENCE_MS = 300;

    /** No search takes as long. */
    private static final long WHILE_IT_LASTS_MS = 150_000;

    private final Background searches = new Background("order of play");
    private final AtomicInteger numbers = new AtomicInteger();
    private Optional<Search<PlanAsk, Planned>> plan = Optional.empty();
    private Optional<Search<BreakAsk, PlanAnswers.Ways>> replan = Optional.empty();
    private List<Pin> pins = List.of();

    /**
     * A search that goes on or is over.
     *
     * @param number of no other search of this run of the service
     * @param asked what was asked for
     * @param seen the last fact that the event had when it was asked
     */
    record Search<A, R>(int number, A asked, long seen, Stop stop, Progress progress, CompletableFuture<R> result) {
        boolean isRunning() {
            return !result.isDone();
        }

        boolean hasFailed() {
            return result.isCompletedExceptionally();
        }

        /** What was found; empty while it goes on, and when it broke off. */
        Optional<R> found() {
            return result.isDone() && !result.isCompletedExceptionally()
                    ? Optional.of(result.join())
                    : Optional.empty();
        }

        /** Waits a little, so that what is found at once is shown at once. */
        void await(long milliseconds) {
            try {
                result.get(milliseconds, TimeUnit.MILLISECONDS);
            } catch (TimeoutException | ExecutionException seenLater) {
                // the page says how far it is, or that it broke off
            } catch (InterruptedException interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    /** How often something better was found, and the last of it. */
    static final class Progress {
        private int better;
        private Optional<PlanScore> best = Optional.empty();

        synchronized void heard(PlanScore score) {
            better++;
            best = Optional.of(score);
        }

        synchronized int better() {
            return better;
        }

        synchronized Optional<PlanScore> best() {
            return best;
        }
    }

    synchronized Optional<Search<PlanAsk, Planned>> plan() {
        return plan;
    }

    synchronized Optional<Search<BreakAsk, PlanAnswers.Ways>> replan() {
        return replan;
    }

    synchronized List<Pin> pins() {
        return pins;
    }

    /** Puts a tie or rubber somewhere for the next plans; what was put there before is not any more. */
    synchronized void pin(Pin pin) {
        List<Pin> more = new ArrayList<>(pins);
        more.removeIf(other -> other.tie().equals(pin.tie()) && other.rubber().equals(pin.rubber()));
        more.add(pin);
        pins = List.copyOf(more);
    }

    /** @param which as counted in {@link #pins()}, from 0 */
    synchronized void unpin(int which) {
        List<Pin> fewer = new ArrayList<>(pins);
        if (which >= 0 && which < fewer.size()) {
            fewer.remove(which);
        }
        pins = List.copyOf(fewer);
    }

    synchronized void forgetPins() {
        pins = List.of();
    }

    /** The search that was going on is stopped: nobody waits for it any more. */
    void startPlan(PlanAsk asked, long seen, Function<Budget, Planned> work) {
        Search<PlanAsk, Planned> search = begin(asked, seen, asked.budget(), work);
        synchronized (this) {
            plan.ifPresent(before -> before.stop().press());
            plan = Optional.of(search);
        }
        search.await(PATIENCE_MS);
    }

    void startReplan(BreakAsk asked, long seen, Function<Budget, PlanAnswers.Ways> work) {
        Search<BreakAsk, PlanAnswers.Ways> search = begin(asked, seen, asked.budget(), work);
        synchronized (this) {
            replan.ifPresent(before -> before.stop().press());
            replan = Optional.of(search);
        }
        search.await(PATIENCE_MS);
    }

    /** Waits until no search goes on. */
    void await() {
        plan().ifPresent(search -> search.await(WHILE_IT_LASTS_MS));
        replan().ifPresent(search -> search.await(WHILE_IT_LASTS_MS));
    }

    private <A, R> Search<A, R> begin(A asked, long seen, Budget budget, Function<Budget, R> work) {
        Progress progress = new Progress();
        CompletableFuture<R> result = searches.begin(budget.stop(), () -> work.apply(budget.telling(progress::heard)))
                .whenComplete((found, failure) -> {
                    if (failure != null) {
                        LOG.error("A search for an order of play broke off", failure);
                    }
                });
        return new Search<>(numbers.incrementAndGet(), asked, seen, budget.stop(), progress, result);
    }

    @Override
    public void close() {
        searches.close();
    }
}
