package tiewright.timetable;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.conditions.Conditions;
import tiewright.conditions.DeciderKind;
import tiewright.conditions.Setting;
import tiewright.conditions.TiePlay;
import tiewright.event.Event;

/** Ways to shorten a day in which every tie is played: otherwise laid out, to fewer points, without deciders. */
final class ScoringCuts {
    private final Uncut day;

    ScoringCuts(Uncut day) {
        this.day = day;
    }

    /** Only where the day is shorter for it. */
    Optional<ReplanOption> rubberByRubber() {
        if (day.problem().play() == TiePlay.RUBBER_BY_RUBBER) {
            return Optional.empty();
        }
        Conditions others = day.event().conditions().with(Setting.TIE_PLAY, TiePlay.RUBBER_BY_RUBBER.code());
        return day.plan(day.problem().rubberByRubber())
                .filter(plan -> plan.score().breaches() == 0
                        && plan.score().of(Part.LENGTH) < day.asIs().score().of(Part.LENGTH))
                .map(plan -> day.option(
                        Cut.RUBBER_BY_RUBBER,
                        Optional.of(others),
                        plan,
                        new Uncut.Price(List.of(), 0, List.of(Reason.of("fair-rubber-by-rubber")))));
    }

    /** One game instead of several, else to fewer points: as many as still fit, or the fewest. */
    Optional<ReplanOption> shorterGames() {
        Conditions now = day.event().conditions();
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

    Optional<ReplanOption> rallyScoring() {
        return Shortening.asRally(day.event().conditions().scoring())
                .map(format -> day.event().conditions().with(Setting.SCORING, format.code()))
                .filter(conditions -> slot(conditions) < day.problem().slotMinutes())
                .flatMap(conditions -> scored(
                        Cut.RALLY_SCORING,
                        conditions,
                        Reason.of("fair-rally-scoring")
                                .with("points", conditions.scoring().target())));
    }

    private boolean canFit(Conditions conditions) {
        PlanProblem shorter = day.problem().withSlot(slot(conditions));
        return shorter.closes()
                .map(closes -> Clock.minute(shorter.start())
                                + Bounds.of(new Board(shorter)).minutes()
                        <= Clock.minute(closes))
                .orElse(true);
    }

    private Optional<ReplanOption> scored(Cut cut, Conditions conditions, Reason fairness) {
        double share = play(conditions) / play(day.event().conditions());
        List<Reason> reasons = new ArrayList<>(List.of(fairness));
        if (day.event().ties().values().stream().anyMatch(tie -> !tie.cards().isEmpty())) {
            reasons.add(Reason.of("fair-earlier-scored-otherwise"));
        }
        return day.plan(day.problem().withSlot(slot(conditions)))
                .map(plan -> day.option(
                        cut,
                        Optional.of(conditions),
                        plan,
                        new Uncut.Price(List.of(), freeRubbers() * Math.max(0, 1 - share), reasons)));
    }

    /** The slot as it would be: its play in the proportion of the rallies, to the nearest minute, and the same turnover. */
    private int slot(Conditions conditions) {
        return Shortening.slot(
                day.problem().slotMinutes(),
                day.asked().pace().turnoverMinutes(),
                planned(conditions) / planned(day.event().conditions()));
    }

    /** Minutes of play that a slot holds. */
    private double planned(Conditions conditions) {
        return conditions.bestOf() == 1
                ? play(conditions)
                : SlotLength.of(conditions, day.asked().pace())
                        - day.asked().pace().turnoverMinutes();
    }

    private double play(Conditions conditions) {
        return RubberTime.of(conditions, day.asked().pace()).mean();
    }

    private int freeRubbers() {
        return day.problem().ties().stream()
                .filter(tie ->
                        day.problem().pins().stream().noneMatch(pin -> pin.tie().equals(tie.id())))
                .mapToInt(tie -> tie.rubbers().size())
                .sum();
    }

    Optional<ReplanOption> noDecider() {
        Event event = day.event();
        Conditions now = event.conditions();
        double expected =
                ExpectedDeciders.of(day.problem().ties(), tie -> event.tie(tie).map(event::progress));
        if (expected == 0) {
            return Optional.empty();
        }
        Reason fairness = Reason.of("fair-no-decider")
                .with("count", ExpectedDeciders.said(expected))
                .with("ties", day.problem().ties().size())
                .with("minutes", day.problem().slotMinutes());
        return Optional.of(day.option(
                Cut.NO_DECIDER,
                Optional.of(now.with(Setting.DECIDER, DeciderKind.NONE.code())),
                day.unchanged(),
                new Uncut.Price(List.of(), expected, List.of(fairness))));
    }
}
