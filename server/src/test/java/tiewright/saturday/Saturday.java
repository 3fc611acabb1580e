package tiewright.saturday;

import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import tiewright.event.FactKind;
import tiewright.event.Role;
import tiewright.http.Served;

/**
 * One day, from its seed. Each step draws from the seed and its own number alone, so that steps can be left out and the
 * others stay what they were as far as the day lets them.
 */
final class Saturday {
    private static final int LOOKED_AT = 3;

    /** How many people look at all that their first page leads to, at about two drawn steps and at the end. */
    private static final int GO_ROUND = Integer.getInteger("rounds", 2);

    private static final double SET_UP_BY_PAGES = 0.25;
    private static final int BEFORE_ALL = -1;
    private static final int BRISK = -2;
    private static final double BRISK_DAYS = 0.3;

    /** How many seconds pass between two steps: on some days much is done in an hour, on others an evening is reached. */
    private static final List<Integer> PACES = List.of(60, 100, 160, 240);

    /** Pages that hang on walls or ask questions. */
    private static final List<String> FOR_OFFICIALS =
            List.of("/paper/sheets", "/paper/cards", "/board", "/organiser/cases");

    /** What each club still needs takes long to work out, so the tables are looked at less often. */
    private static final List<String> FOR_ANYBODY =
            List.of("/", "/", "/", "/notices", "/notices", "/ties", "/ties", "/tables");

    private final long seed;
    private final int clubs;
    private final int steps;
    private final List<String> story = new ArrayList<>();
    private final Set<FactKind> happened = EnumSet.noneOf(FactKind.class);
    private final Set<Looked> looked = EnumSet.noneOf(Looked.class);

    /** A day that broke a promise: at which step, and what was done until then. */
    record Failure(long seed, int clubs, List<Integer> steps, int step, List<Broken> broken, List<String> story) {
        Set<Integer> promises() {
            return broken.stream().map(Broken::promise).collect(Collectors.toCollection(TreeSet::new));
        }

        @Override
        public String toString() {
            return "day " + seed + ", step " + step + ": "
                    + broken.stream().map(Broken::toString).collect(Collectors.joining("; ")) + "\n"
                    + Retold.test(seed, clubs, story);
        }
    }

    Saturday(long seed, int clubs, int steps) {
        this.seed = seed;
        this.clubs = clubs;
        this.steps = steps;
    }

    /** The first broken promise of the whole day; empty if every one held. */
    Optional<Failure> play() {
        return play(IntStream.range(0, steps).boxed().toList());
    }

    /** Only these steps of it, in their order. */
    Optional<Failure> play(List<Integer> only) {
        story.clear();
        Scene scene = new Scene(new Dice(seed), clubs);
        try (Served served = Served.empty(Scene.at(LocalTime.of(8, 30)))) {
            Promises promises = new Promises();
            Dice dice = Dice.of(seed, BEFORE_ALL);
            People people = dice.chance(SET_UP_BY_PAGES)
                    ? setUp(served, scene, dice)
                    : new People(served.given(scene.facts(), scene.notes()), scene);
            for (int step : only) {
                List<Broken> broken = step(served, people, promises, Dice.of(seed, step));
                if (!broken.isEmpty()) {
                    return Optional.of(new Failure(seed, clubs, only, step, broken, List.copyOf(story)));
                }
            }
            List<Broken> broken = goRound(served, people, promises, dice);
            served.ledger.facts(0).forEach(one -> happened.add(one.fact().kind()));
            return broken.isEmpty()
                    ? Optional.empty()
                    : Optional.of(
                            new Failure(seed, clubs, only, only.get(only.size() - 1), broken, List.copyOf(story)));
        }
    }

    /** The kinds of facts that this day had when it was over. */
    Set<FactKind> happened() {
        return happened;
    }

    /** What the promises met on it. */
    Set<Looked> looked() {
        return looked;
    }

    /** Through pages alone, by the organiser; the others come in when it is done. */
    private People setUp(Served served, Scene scene, Dice dice) {
        People people = new People(served);
        Log log = new SettingUp(served, people.of(Role.ORGANISER).get(0), scene, dice).run();
        log.sent().forEach(sent -> story.add(Retold.line(sent, LocalTime.of(8, 30))));
        story.add(Retold.OTHERS_COME_IN);
        people.comeIn(scene);
        return people;
    }

    /** Some people look at everything. */
    private List<Broken> goRound(Served served, People people, Promises promises, Dice dice) {
        return promises.look(Moment.of(served, Log.of(served), Rounds.of(dice.drawn(people.all(), GO_ROUND)), looked));
    }

    private List<Broken> step(Served served, People people, Promises promises, Dice dice) {
        served.at(served.clock.instant().plusSeconds(dice.between(5, dice.chance(0.1) ? 600 : 2 * pace())));
        if (dice.chance(0.01)) {
            story.add("        day.restarts();");
            served.restart();
        }
        Instant now = served.clock.instant();
        String clock = LocalTime.ofInstant(now, Scene.ZONE).toString().substring(0, 5);
        Log log = Log.of(served);
        goesOn(served, people, dice)
                .ifPresentOrElse(
                        next -> new Errand(next.who(), dice, clock, log).sendAt(next.page()),
                        () -> new Errand(drawn(people, dice), dice, clock, log).run());
        served.awaitPlans();
        served.at(now);
        log.sent().forEach(sent -> story.add(Retold.line(sent, LocalTime.ofInstant(now, Scene.ZONE))));
        List<Sight> pages = new ArrayList<>(log.seen());
        for (Person other : dice.drawn(people.all(), LOOKED_AT)) {
            pages.add(other.look(other.firstPage()));
        }
        pages.add(people.stranger().look(dice.any(FOR_ANYBODY)));
        if (dice.chance(0.1)) {
            pages.add(dice.any(people.of(Role.ORGANISER, Role.REFEREE)).look(dice.any(FOR_OFFICIALS)));
        }
        List<Broken> broken = promises.look(Moment.of(served, log, pages, looked));
        people.handOut(log);
        if (broken.isEmpty() && dice.chance(2.0 / steps)) {
            return goRound(served, people, promises, dice);
        }
        return broken;
    }

    /** On some days people do what the day waits for, mostly. */
    private Optional<Onwards.Next> goesOn(Served served, People people, Dice dice) {
        boolean brisk = Dice.of(seed, BRISK).chance(BRISK_DAYS);
        return brisk && dice.chance(0.7) ? new Onwards(served.ledger.event(), people, dice).next() : Optional.empty();
    }

    private int pace() {
        return PACES.get((int) Math.floorMod(seed, (long) PACES.size()));
    }

    private static Person drawn(People people, Dice dice) {
        int of = dice.between(1, 100);
        if (of <= 42) {
            return dice.any(people.of(Role.CAPTAIN));
        }
        if (of <= 85) {
            return dice.any(people.of(Role.DESK, Role.REFEREE, dice.chance(0.5) ? Role.VOLUNTEER : Role.DESK));
        }
        return of <= 93 ? dice.any(people.of(Role.ORGANISER)) : dice.any(people.of(Role.PLAYER, Role.PUBLIC));
    }
}
