package tiewright.timetable;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tiewright.conditions.Conditions;
import tiewright.conditions.DeciderKind;
import tiewright.conditions.Setting;
import tiewright.conditions.TiePlay;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.Stage;
import tiewright.event.TieId;

/** Works out one way after the other to shorten a day. */
final class Cuts {
    /** Part of a rubber that is lost to somebody when it is moved to another day (assumption of ours). */
    private static final double MOVED = 0.5;

    private final Event event;
    private final PlanAsked asked;
    private final Budget budget;
    private final PlanProblem problem;
    private final Plan asIs;
    private final Told told;
    private final Leaving leaving;

    Cuts(Event event, PlanAsked asked, Budget budget) {
        this.event = event;
        this.asked = asked;
        this.budget = budget;
        this.problem = PlanProblem.of(event, asked);
        this.asIs = plan(problem).orElseThrow(() -> new IllegalStateException("ask Replan.fault before"));
        this.told = new Told(event);
        this.leaving = new Leaving(event, FrozenStarts.of(problem).problem());
    }

    /** Empty where the cut changes nothing here. */
    Optional<ReplanOption> option(Cut cut) {
        return switch (cut) {
            case AS_IS -> Optional.of(option(cut, Optional.empty(), asIs, List.of(), 0, asIs.moved()));
            case RUBBER_BY_RUBBER -> rubberByRubber();
            case SHORTER_GAMES -> shorterGames();
            case RALLY_SCORING -> rallyScoring();
            case NO_DECIDER -> noDecider();
            case FEWER_ROUNDS -> fewerRounds();
            case SHARED_POINTS -> sharedPoints();
            case PLACINGS_BY_LOT -> placingsByLot();
            case NEXT_DAY -> nextDay();
        };
    }

    /** Empty where what is left cannot be planned at all. */
    private Optional<Plan> plan(PlanProblem what) {
        Planned planned = Planner.plan(what, budget);
        return switch (planned.kind()) {
            case FOUND -> Optional.of(((Planned.Found) planned).plan());
            case BROKEN -> Optional.of(((Planned.Broken) planned).plan());
            case IMPOSSIBLE -> ((Planned.Impossible) planned).asIs();
        };
    }

    private ReplanOption option(
            Cut cut,
            Optional<Conditions> conditions,
            Plan plan,
            List<TieId> notPlayed,
            double cost,
            List<Reason> fairness) {
        Set<ClubId> clubs = told.clubs(plan, notPlayed, conditions.isPresent());
        return new ReplanOption(
                cut, conditions, plan, Optional.empty(), notPlayed, fairness, cost, clubs, told.people(clubs));
    }

    /** Only where the day is shorter for it. */
    private Optional<ReplanOption> rubberByRubber() {
        if (problem.play() == TiePlay.RUBBER_BY_RUBBER) {
            return Optional.empty();
        }
        Conditions others = event.conditions().with(Setting.TIE_PLAY, TiePlay.RUBBER_BY_RUBBER.code());
        return plan(problem.rubberByRubber())
                .filter(plan -> plan.score().breaches() == 0
                        && plan.score().of(Part.LENGTH) < asIs.score().of(Part.LENGTH))
                .map(plan -> option(
                        Cut.RUBBER_BY_RUBBER,
                        Optional.of(others),
                        plan,
                        List.of(),
                        0,
                        List.of(Reason.of("fair-rubber-by-rubber"))));
    }

    /** One game instead of several, else to fewer points: as many as still fit, or the fewest. */
    private Optional<ReplanOption> shorterGames() {
        Conditions now = event.conditions();
        if (now.bestOf() > 1) {
            Conditions one = now.with(Setting.BEST_OF, "1");
            return scored(Cut.SHORTER_GAMES, one, Reason.of("fair-one-game").with("games", now.bestOf()));
        }
        List<Conditions> shorter = Shortening.targets(now.scoring()).stream()
                .map(format -> now.with(Setting.SCORING, format.code()))
                .toList();
        Optional<Conditions> chosen = shorter.stream()
                .filter(this::canFit)
                .findFirst()
                .or(() -> shorter.stream().reduce((first, last) -> last));
        return chosen.flatMap(conditions -> scored(
                Cut.SHORTER_GAMES,
                conditions,
                Reason.of("fair-shorter-games")
                        .with("points", conditions.scoring().target())));
    }

    private Optional<ReplanOption> rallyScoring() {
        return Shortening.asRally(event.conditions().scoring())
                .map(format -> event.conditions().with(Setting.SCORING, format.code()))
                .filter(conditions -> slot(conditions) < problem.slotMinutes())
                .flatMap(conditions -> scored(
                        Cut.RALLY_SCORING,
                        conditions,
                        Reason.of("fair-rally-scoring")
                                .with("points", conditions.scoring().target())));
    }

    private boolean canFit(Conditions conditions) {
        PlanProblem shorter = problem.withSlot(slot(conditions));
        return shorter.closes()
                .map(closes -> Clock.minute(shorter.start())
                                + Bounds.of(new Board(shorter)).minutes()
                        <= Clock.minute(closes))
                .orElse(true);
    }

    private Optional<ReplanOption> scored(Cut cut, Conditions conditions, Reason fairness) {
        double share = play(conditions) / play(event.conditions());
        List<Reason> reasons = new ArrayList<>(List.of(fairness));
        if (event.ties().values().stream().anyMatch(tie -> !tie.cards().isEmpty())) {
            reasons.add(Reason.of("fair-earlier-scored-otherwise"));
        }
        return plan(problem.withSlot(slot(conditions)))
                .map(plan -> option(
                        cut,
                        Optional.of(conditions),
                        plan,
                        List.of(),
                        freeRubbers() * Math.max(0, 1 - share),
                        reasons));
    }

    /** The slot as it would be: its play in the proportion of the rallies, to the nearest minute, and the same turnover. */
    private int slot(Conditions conditions) {
        return Shortening.slot(
                problem.slotMinutes(),
                asked.pace().turnoverMinutes(),
                planned(conditions) / planned(event.conditions()));
    }

    /** Minutes of play that a slot holds. */
    private double planned(Conditions conditions) {
        return conditions.bestOf() == 1
                ? play(conditions)
                : SlotLength.of(conditions, asked.pace()) - asked.pace().turnoverMinutes();
    }

    private double play(Conditions conditions) {
        return RubberTime.of(conditions, asked.pace()).mean();
    }

    private int freeRubbers() {
        return problem.ties().stream()
                .filter(tie ->
                        problem.pins().stream().noneMatch(pin -> pin.tie().equals(tie.id())))
                .mapToInt(tie -> tie.rubbers().size())
                .sum();
    }

    private Optional<ReplanOption> noDecider() {
        Conditions now = event.conditions();
        if (!now.expectsDeciders()) {
            return Optional.empty();
        }
        double expected = problem.ties().size() * Shortening.levelChance(now.rubbers());
        Reason fairness =
                Reason.of("fair-no-decider").with("count", Math.round(expected)).with("minutes", problem.slotMinutes());
        return Optional.of(option(
                Cut.NO_DECIDER,
                Optional.of(now.with(Setting.DECIDER, DeciderKind.NONE.code())),
                asIs,
                List.of(),
                expected,
                List.of(fairness)));
    }

    private Optional<ReplanOption> fewerRounds() {
        List<TieId> out = leaving.lastRounds();
        PlanProblem shorter = Leaving.without(problem, out);
        return out.isEmpty() ? Optional.empty() : leftOut(Cut.FEWER_ROUNDS, shorter, out, fewerRounds(shorter));
    }

    private List<Reason> fewerRounds(PlanProblem shorter) {
        List<Reason> reasons = new ArrayList<>(List.of(Reason.of("fair-opponents-unequal")));
        Set<Long> counts = new HashSet<>();
        for (ClubId club : new Board(problem).clubs()) {
            counts.add(ties(problem, club) - ties(shorter, club));
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

    private Optional<ReplanOption> sharedPoints() {
        List<TieId> out = leaving.lastThatDoNotFit(tie -> tie.stage() == Stage.POOL);
        return out.isEmpty() || out.size() == problem.ties().size()
                ? Optional.empty()
                : leftOut(
                        Cut.SHARED_POINTS,
                        Leaving.without(problem, out),
                        out,
                        List.of(Reason.of("fair-shared-points").with("ties", out)));
    }

    private Optional<ReplanOption> placingsByLot() {
        List<TieId> out = leaving.forPlaces();
        return out.isEmpty() || out.size() == problem.ties().size()
                ? Optional.empty()
                : leftOut(
                        Cut.PLACINGS_BY_LOT,
                        Leaving.without(problem, out),
                        out,
                        List.of(Reason.of("fair-placings-by-lot").with("ties", out)));
    }

    private Optional<ReplanOption> nextDay() {
        List<TieId> out = leaving.lastThatDoNotFit(tie -> true);
        if (out.isEmpty() || out.size() == problem.ties().size()) {
            return Optional.empty();
        }
        PlanProblem today = Leaving.without(problem, out);
        PlanProblem whole = PlanProblem.of(
                event, PlanAsked.wholeDay().withPace(asked.pace()).withSlot(problem.slotMinutes()));
        List<PlanTie> moved =
                whole.ties().stream().filter(tie -> out.contains(tie.id())).toList();
        Optional<Plan> next = plan(whole.withTies(moved));
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
        int rubbers = problem.ties().stream()
                .filter(tie -> out.contains(tie.id()))
                .mapToInt(tie -> tie.rubbers().size())
                .sum();
        return plan(rest).map(plan -> option(cut, Optional.empty(), plan, out, rubbers, fairness));
    }
}
