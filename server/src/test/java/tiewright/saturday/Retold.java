package tiewright.saturday;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jsoup.nodes.Element;
import tiewright.event.Role;
import tiewright.http.Served;

/**
 * A day as it was played, told again by who sent what and when: each form is taken fresh from its page and filled in as it was.
 * A failing day is printed so, to be pasted into a test.
 */
final class Retold implements AutoCloseable {
    /** The line after which an event that was made through pages has all its people. */
    static final String OTHERS_COME_IN = "        day.othersComeIn();";

    private static final List<String> MADE_ANEW = List.of("key", "seen");

    private final Served served = Served.empty(Scene.at(LocalTime.of(8, 30)));
    private final Promises promises = new Promises();
    private final Scene scene;
    private final People people;

    /** The morning of a day: its clubs, squads, conditions and times. */
    Retold(long seed, int clubs) {
        this(seed, clubs, true);
    }

    private Retold(long seed, int clubs, boolean stands) {
        scene = new Scene(new Dice(seed), clubs);
        people = stands ? new People(served.given(scene.facts(), scene.notes()), scene) : new People(served);
    }

    /** There is an organiser and nothing else; {@link #othersComeIn} once the event stands. */
    static Retold fromNothing(long seed, int clubs) {
        return new Retold(seed, clubs, false);
    }

    void othersComeIn() {
        people.comeIn(scene);
    }

    /** How a step of a played day reads in such a test. */
    static String line(Log.Sent sent, LocalTime clock) {
        StringBuilder line = new StringBuilder("        day.sends(\"" + clock + "\", \"" + sent.who() + "\", \""
                + sent.page() + "\", \"" + sent.action() + "\"");
        sent.fields().stream()
                .filter(field ->
                        !MADE_ANEW.contains(field.getKey()) && !field.getValue().isEmpty())
                .forEach(field -> line.append(", \"")
                        .append(quoted(field.getKey() + "=" + field.getValue()))
                        .append('"'));
        return line.append("); // ")
                .append(sent.answer().status())
                .append(sent.isDone() ? ", " + (sent.after() - sent.before()) + " facts" : "")
                .toString();
    }

    private static String quoted(String text) {
        return text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n");
    }

    /** The test to paste. */
    static String test(long seed, int clubs, List<String> lines) {
        String begins = lines.contains(OTHERS_COME_IN) ? "Retold.fromNothing" : "new Retold";
        return "@Test\nvoid day_" + seed + "_of_" + clubs + "_clubs() {\n    try (Retold day = " + begins + "(" + seed
                + "L, " + clubs + ")) {\n" + String.join("\n", lines) + "\n    }\n}";
    }

    /** Somebody sends a form of a page at a time of the day; every promise must hold after it. */
    Log.Sent sends(String clock, String who, String page, String action, String... typed) {
        served.at(Scene.at(LocalTime.parse(clock)));
        Person person = people.named(who);
        Log log = Log.of(served);
        Sight form = person.look(page);
        log.saw(form);
        List<Map.Entry<String, String>> fields = new ArrayList<>(fresh(form, action));
        Arrays.stream(typed)
                .map(field -> field.split("=", 2))
                .forEach(field -> fields.add(Map.entry(field[0], field[1])));
        long before = log.acts();
        Sight answer = person.send(action, fields);
        log.saw(answer);
        Log.Sent sent = new Log.Sent(person, page, action, fields, answer, before, log.acts());
        log.sent(sent);
        served.awaitPlans();
        served.at(Scene.at(LocalTime.parse(clock)));
        assertThat(look(log)).as(clock + " " + who + " " + action).isEmpty();
        people.handOut(log);
        return sent;
    }

    void restarts() {
        served.restart();
    }

    /** What makes a form of this page this very form. */
    static List<Map.Entry<String, String>> fresh(Sight page, String action) {
        Optional<Element> form = page.forms().stream()
                .filter(one -> page.action(one).equals(action))
                .findFirst();
        return form.stream()
                .flatMap(one -> one.select("input[type=hidden]").stream())
                .filter(field -> MADE_ANEW.contains(field.attr("name")))
                .map(field -> Map.entry(field.attr("name"), field.attr("value")))
                .toList();
    }

    private List<Broken> look(Log log) {
        List<Sight> looked = new ArrayList<>(log.seen());
        people.all().forEach(person -> looked.add(person.look(person.firstPage())));
        for (Person stranger : people.of(Role.PUBLIC)) {
            List.of("/", "/notices", "/tables", "/ties").forEach(page -> looked.add(stranger.look(page)));
        }
        return promises.look(Moment.of(served, log, looked, EnumSet.noneOf(Looked.class)));
    }

    @Override
    public void close() {
        served.close();
    }
}
