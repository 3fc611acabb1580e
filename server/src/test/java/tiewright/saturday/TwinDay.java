package tiewright.saturday;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import tiewright.event.ClubId;
import tiewright.event.Role;
import tiewright.http.Served;

/**
 * One day played twice at once. On the second one club also notes what it likes and seals each of its sheets three times, the last
 * time as on the first. Nobody outside that club may get another byte.
 */
final class TwinDay {
    private static final int ALL_PAGES_EVERY = 40;
    private static final String NO_PAGE = "/enter.*|/language.*|/my";

    /** How far a search in the background has come is a matter of the machine's speed, and so is what is pressed next. */
    private static final String SEARCHES = "/organiser/(plan|day-breaks)(/.*)?";

    private final long seed;
    private final int steps;
    private final ClubId hidden;
    private final Scene scene;

    TwinDay(long seed, int clubs, int steps) {
        this.seed = seed;
        this.steps = steps;
        this.scene = new Scene(new Dice(seed), clubs);
        this.hidden = scene.clubs().get(0);
    }

    /** Where the two days differ first for somebody outside the club; empty if nowhere. */
    Optional<String> firstDifference() {
        try (Served one = begun();
                Served other = begun()) {
            People ours = new People(one, scene);
            People theirs = new People(other, scene);
            for (int step = 0; step < steps; step++) {
                Optional<String> differs = step(step, one, ours, other, theirs);
                if (differs.isPresent()) {
                    return Optional.of("twin day " + seed + ", step " + step + ": " + differs.get());
                }
            }
        }
        return Optional.empty();
    }

    private Served begun() {
        return Served.empty(Scene.at(LocalTime.of(8, 30))).given(scene.facts(), scene.notes());
    }

    private Optional<String> step(int step, Served one, People ours, Served other, People theirs) {
        Dice dice = Dice.of(seed, step);
        one.at(one.clock.instant().plusSeconds(dice.between(5, 300)));
        other.at(one.clock.instant());
        String clock =
                LocalTime.ofInstant(one.clock.instant(), Scene.ZONE).toString().substring(0, 5);
        Person who = dice.chance(0.4) ? dice.any(ours.of(Role.CAPTAIN)) : dice.any(ours.all());
        Person twin = twin(theirs, who);
        Log log = Log.of(one);
        Log twins = Log.of(other);
        new Errand(who, Dice.of(seed, -step), clock, log).leaving(SEARCHES).run();
        if (isHidden(who)) {
            new Secretly(twin, Dice.of(~seed, step), clock, twins).does(log);
        } else {
            new Errand(twin, Dice.of(seed, -step), clock, twins)
                    .leaving(SEARCHES)
                    .run();
        }
        ours.handOut(log);
        theirs.handOut(twins);
        one.at(one.clock.instant());
        other.at(one.clock.instant());
        List<Sight> first = new ArrayList<>(isHidden(who) ? List.of() : log.seen());
        List<Sight> second = new ArrayList<>(isHidden(who) ? List.of() : twins.seen());
        boolean all = step % ALL_PAGES_EVERY == ALL_PAGES_EVERY - 1;
        for (Person outside : all ? ours.all() : dice.drawn(ours.all(), 2)) {
            if (!isHidden(outside)) {
                looks(outside, all, first);
                looks(twin(theirs, outside), all, second);
            }
        }
        return difference(first, second, one, other);
    }

    /** The first page, and from time to time every page to which it leads. */
    private static void looks(Person person, boolean all, List<Sight> seen) {
        Sight first = person.look(person.firstPage());
        seen.add(first);
        if (all) {
            first.ways().stream().filter(way -> !way.matches(NO_PAGE)).forEach(way -> seen.add(person.look(way)));
        }
    }

    private boolean isHidden(Person person) {
        return person.club().filter(hidden::equals).isPresent();
    }

    private static Person twin(People people, Person person) {
        return people.all().stream()
                .filter(one -> one.toString().equals(person.toString()))
                .findFirst()
                .orElseThrow();
    }

    private static Optional<String> difference(List<Sight> first, List<Sight> second, Served one, Served other) {
        for (int i = 0; i < Math.min(first.size(), second.size()); i++) {
            String here = bytes(first.get(i), one);
            String there = bytes(second.get(i), other);
            if (!here.equals(there)) {
                return Optional.of(first.get(i) + " and " + second.get(i) + ": " + lines(here, there));
            }
        }
        return first.size() == second.size() ? Optional.empty() : Optional.of("one page more or less");
    }

    private static String lines(String here, String there) {
        List<String> ours = here.lines().toList();
        List<String> theirs = there.lines().toList();
        for (int i = 0; i < Math.min(ours.size(), theirs.size()); i++) {
            if (!ours.get(i).equals(theirs.get(i))) {
                return "\"" + ours.get(i).strip() + "\" and \"" + theirs.get(i).strip() + "\"";
            }
        }
        return ours.size() + " and " + theirs.size() + " lines";
    }

    /** All that was sent, but what is made by chance for each form, link, device and receipt, and the address of the service. */
    private static String bytes(Sight sight, Served served) {
        Document page = sight.page().clone();
        page.select("a[href^=mailto:]").attr("href", "mailto:"); // holds a link
        for (Element field : page.select("input[name=key],input[name=seen]")) {
            field.attr("value", "");
        }
        if (page.html().contains("/enter/")) {
            page.select("svg path").remove();
        }
        return sight.status() + " " + sight.path() + "\n"
                + page.outerHtml()
                        .replace(served.service.url(), "")
                        .replaceAll("/enter/[A-Za-z0-9_-]+", "/enter/")
                        .replaceAll("\\b([0-9a-f]{64}|[0-9a-f]{12})\\b", "");
    }
}
