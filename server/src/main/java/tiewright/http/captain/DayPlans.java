package tiewright.http.captain;

import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tiewright.event.ClubId;
import tiewright.http.answers.ClubAnswers;
import tiewright.http.visit.Background;
import tiewright.http.visit.Visit;
import tiewright.lineup.Budget;
import tiewright.lineup.day.DayPlan;
import tiewright.lineup.day.DayProblem;

/** The plans that clubs asked for last, one each, looked for in the background. */
final class DayPlans implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(DayPlans.class);
    private static final Duration MOST_TIME = Duration.ofSeconds(5);

    private final Map<ClubId, Job> jobs = new ConcurrentHashMap<>();
    private final Background searches = new Background("plan of a day");

    /** A plan that is being looked for, or was found. */
    record Job(
            DayProblem.Wanted wanted,
            Instant asked,
            long seq,
            Budget budget,
            CompletableFuture<Optional<DayPlan>> plan) {
        boolean isDone() {
            return plan.isDone();
        }

        boolean brokeOff() {
            return plan.isCompletedExceptionally();
        }

        /** What was found, waited for; empty where there was nothing to plan or the search broke off. */
        Optional<DayPlan> result() {
            return plan.exceptionally(failure -> Optional.empty()).join();
        }
    }

    Optional<Job> of(ClubId club) {
        return Optional.ofNullable(jobs.get(club));
    }

    void stop(ClubId club) {
        of(club).ifPresent(job -> job.budget().stop().press());
    }

    /** Begins to look for a plan of what is ahead of the visitor's club; one that it asked for before is stopped. */
    void begin(Visit visit, DayProblem.Wanted wanted) {
        stop(visit.club());
        Budget budget = Budget.ofSteps(DayPlan.USUAL_STEPS, 1).within(MOST_TIME);
        CompletableFuture<Optional<DayPlan>> plan = visit.ask(ClubAnswers::new)
                .dayAhead(wanted, 1)
                .map(day -> search(day, budget))
                .orElseGet(() -> CompletableFuture.completedFuture(Optional.empty()));
        jobs.put(
                visit.club(), new Job(wanted, visit.event().now(), visit.event().seq(), budget, plan));
    }

    private CompletableFuture<Optional<DayPlan>> search(DayProblem day, Budget budget) {
        return searches.begin(budget.stop(), () -> DayPlan.of(day, budget)).whenComplete((found, failure) -> {
            if (failure != null) {
                LOG.error("A search for the plan of a day broke off", failure);
            }
        });
    }

    @Override
    public void close() {
        searches.close();
    }
}
