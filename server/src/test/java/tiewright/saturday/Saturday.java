package tiewright.saturday;

import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import tiewright.event.Role;
import tiewright.http.Served;

/**
 * One day, from its seed. Each step draws from the seed and its own number alone, so that steps can be left out and the
 * others stay what they were as far as the day lets them.
 */
final class Saturday {
    private static final int LOOKED_AT = 3;

    /** Pages that hang on walls or ask questions. */
    private static final List<String> FOR_OFFICIALS =
            List.of("/paper/sheets", "/paper/cards", "/board", "/organiser/cases");

    private final long seed;
    private final int clubs;
    private final int steps;
    private final List<String> story = new ArrayList<>();

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
            served.given(scene.facts(), scene.notes());
            People people = new People(served, scene);
            Promises promises = new Promises();
            for (int step : only) {
                List<Broken> broken = step(served, people, promises, Dice.of(seed, step));
                if (!broken.isEmpty()) {
                    return Optional.of(new Failure(seed, clubs, only, step, broken, List.copyOf(story)));
                }
            }
        }
        return Optional.empty();
    }

    private List<Broken> step(Served served, People people, Promises promises, Dice dice) {
        served.at(served.clock.instant().plusSeconds(dice.between(5, dice.chance(0.3) ? 400 : 150)));
        if (dice.chance(0.01)) {
            story.add("        day.restarts();");
            served.restart();
        }
        Instant now = served.clock.instant();
        String clock = LocalTime.ofInstant(now, Scene.ZONE).toString().substring(0, 5);
        Person who = drawn(people, dice);
        Log log = Log.of(served);
        new Errand(who, dice, clock, log).run();
        served.awaitPlans();
        served.at(now);
        log.sent().forEach(sent -> story.add(Retold.line(sent, LocalTime.ofInstant(now, Scene.ZONE))));
        List<Sight> looked = new ArrayList<>(log.seen());
        for (Person other : dice.drawn(people.all(), LOOKED_AT)) {
            looked.add(other.look(other.firstPage()));
        }
        looked.add(people.stranger().look(dice.any(List.of("/", "/notices", "/tables", "/ties"))));
        if (dice.chance(0.1)) {
            looked.add(dice.any(people.of(Role.ORGANISER, Role.REFEREE)).look(dice.any(FOR_OFFICIALS)));
        }
        List<Broken> broken = promises.look(new Moment(
                now, clock, served.ledger.event(), served.ledger.directory(), served.ledger.hurt(), log, looked));
        people.handOut(log);
        return broken;
    }

    private static Person drawn(People people, Dice dice) {
        int of = dice.between(1, 100);
        if (of <= 40) {
            return dice.any(people.of(Role.CAPTAIN));
        }
        if (of <= 85) {
            return dice.any(people.of(Role.DESK, Role.REFEREE, Role.VOLUNTEER, Role.DESK));
        }
        return of <= 92 ? dice.any(people.of(Role.ORGANISER)) : dice.any(people.of(Role.PLAYER, Role.PUBLIC));
    }
}
