package tiewright.saturday;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import tiewright.event.Directory;
import tiewright.event.PlayerId;
import tiewright.event.Role;

/** Whoever turns eighteen after this year is shown to strangers, and on whatever can hang on a wall, by first name alone. */
final class MinorsAreShort implements Promise {
    private static final int OF_AGE = 18;
    private static final String FOR_WALLS = "/paper.*|/board|/chart";

    @Override
    public List<Broken> broken(Moment moment) {
        List<String> minors = moment.directory().people().entrySet().stream()
                .filter(MinorsAreShort::isMinor)
                .map(person -> person.getValue().name())
                .filter(name -> isNobodyElse(moment, name))
                .distinct()
                .toList();
        if (!minors.isEmpty()) {
            moment.met(Looked.MINOR);
        }
        return moment.sights().stream()
                .filter(sight ->
                        sight.who().role() == Role.PUBLIC || sight.path().matches(FOR_WALLS))
                .flatMap(sight -> named(sight, minors))
                .toList();
    }

    private static Stream<Broken> named(Sight sight, List<String> minors) {
        return minors.stream()
                .filter(name -> hangs(sight).contains(name))
                .map(name -> new Broken(5, sight + " shows " + name + ", who is a minor, by the full name"));
    }

    /** Paper has no head: who reads the page stands there, for that person alone. */
    private static String hangs(Sight sight) {
        return sight.path().startsWith("/paper")
                ? sight.page().select("main,.print-line").text()
                : sight.page().text();
    }

    private static boolean isMinor(Map.Entry<PlayerId, Directory.Person> person) {
        return person.getValue().bornYear().isPresent()
                && Scene.DATE.getYear() - person.getValue().bornYear().getAsInt() < OF_AGE;
    }

    private static boolean isNobodyElse(Moment moment, String name) {
        return moment.directory().people().entrySet().stream()
                .filter(person -> person.getValue().name().equals(name))
                .allMatch(MinorsAreShort::isMinor);
    }
}
