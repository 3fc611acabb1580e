package tiewright.timetable;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tiewright.event.ClubId;
import tiewright.event.Stage;
import tiewright.event.TieId;

/** Ways to shorten a day by ties that are not played, or not on it. */
final class LeavingCuts {
    /** Part of a rubber that is lost to somebody when it is moved to another day (assumption of ours). */
    private static final double MOVED = 0.5;

    private final Uncut day;
    private final Leaving leaving;

    LeavingCuts(Uncut day) {
        this.day = day;
        this.leaving = new Leaving(day.event(), FrozenStarts.of(day.problem()).problem());
    }

    Optional<ReplanOption> fewerRounds() {
        List<TieId> out = leaving.lastRounds();
        PlanProblem shorter = Leaving.without(day.problem(), out);
        return out.isEmpty() ? Optional.empty() : leftOut(Cut.FEWER_ROUNDS, shorter, out, fewerRounds(shorter));
    }

    private List<Reason> fewerRounds(PlanProblem shorter) {
        List<Reason> reasons = new ArrayList<>(List.of(Reason.of("fair-opponents-unequal")));
        Set<Long> counts = new HashSet<>();
        for (ClubId club : new Board(day.problem()).clubs()) {
            counts.add(ties(day.problem(), club) - ties(shorter, club));
        }
        reasons.add(
                counts.size() == 1
                        ? Reason.of("fair-ties-fewer")
                                .with("count", counts.iterator().next())
                        : Reason.of("fair-ties-fewer-unequal"));
        return reasons;
    }

    private static long ties(PlanProblem of, ClubId club) {
        return of.ties().stream()
                .filter(tie -> tie.stage() == Stage.POOL && tie.clubs().contains(club))
                .count();
    }

    Optional<ReplanOption> sharedPoints() {
        List<TieId> out = leaving.lastThatDoNotFit(tie -> tie.stage() == Stage.POOL);
        return out.isEmpty() || out.size() == day.problem().ties().size()
                ? Optional.empty()
                : leftOut(
                        Cut.SHARED_POINTS,
                        Leaving.without(day.problem(), out),
                        out,
                        List.of(Reason.of("fair-shared-points").with("ties", out)));
    }

    Optional<ReplanOption> placingsByLot() {
        List<TieId> out = leaving.forPlaces();
        return out.isEmpty() || out.size() == day.problem().ties().size()
                ? Optional.empty()
                : leftOut(
                        Cut.PLACINGS_BY_LOT,
                        Leaving.without(day.problem(), out),
                        out,
                        List.of(Reason.of("fair-placings-by-lot").with("ties", out)));
    }

    Optional<ReplanOption> nextDay() {
        List<TieId> out = leaving.lastThatDoNotFit(tie -> true);
        if (out.isEmpty() || out.size() == day.problem().ties().size()) {
            return Optional.empty();
        }
        PlanProblem today = Leaving.without(day.problem(), out);
        PlanProblem whole = PlanProblem.of(
                day.event(),
                PlanAsked.wholeDay()
                        .withPace(day.asked().pace())
                        .withSlot(day.problem().slotMinutes()));
        List<PlanTie> moved =
                whole.ties().stream().filter(tie -> out.contains(tie.id())).toList();
        Optional<Plan> next = day.plan(whole.withTies(moved));
        return leftOut(
                        Cut.NEXT_DAY,
                        today,
                        out,
                        List.of(Reason.of("fair-next-day").with("ties", out)))
                .filter(option -> next.isPresent())
                .map(option -> onTheNextDay(option, next.orElseThrow()));
    }

    private static ReplanOption onTheNextDay(ReplanOption option, Plan next) {
        return new ReplanOption(
                option.cut(),
                option.conditions(),
                option.plan(),
                Optional.of(next),
                List.of(),
                option.fairness(),
                MOVED * option.cost(),
                option.clubs(),
                option.people());
    }

    private Optional<ReplanOption> leftOut(Cut cut, PlanProblem rest, List<TieId> out, List<Reason> fairness) {
        int rubbers = day.problem().ties().stream()
                .filter(tie -> out.contains(tie.id()))
                .mapToInt(tie -> tie.rubbers().size())
                .sum();
        return day.plan(rest)
                .map(plan -> day.option(cut, Optional.empty(), plan, new Uncut.Price(out, rubbers, fairness)));
    }
}
