package tiewright.saturday;

import java.util.ArrayList;
import java.util.List;

/** Somebody looks at everything that the own first page leads to. */
final class Rounds {
    private static final String NO_PAGE =
            "/enter.*|/language.*|/my|/leave|.*[.](csv|ics|zip)|.*/qr.*|/captain/(proposal|day)/?.*";

    private Rounds() {}

    /** The pages that each of these people can open from the first one. */
    static List<Sight> of(List<Person> people) {
        List<Sight> seen = new ArrayList<>();
        for (Person person : people) {
            Sight first = person.look(person.firstPage());
            seen.add(first);
            first.ways().stream().filter(way -> !way.matches(NO_PAGE)).forEach(way -> seen.add(person.look(way)));
        }
        return seen;
    }
}
