package tiewright.saturday;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jsoup.nodes.Element;
import tiewright.http.Served;

/**
 * A day as it was played, told again by who sent what and when: each form is taken fresh from its page and filled in as it was.
 * A failing day is printed so, to be pasted into a test.
 */
final class Retold implements AutoCloseable {
    private static final List<String> MADE_ANEW = List.of("key", "seen");

    private final Served served = Served.empty(Scene.at(LocalTime.of(8, 30)));
    private final Promises promises = new Promises();
    private final People people;

    /** The morning of a day: its clubs, squads, conditions and times. */
    Retold(long seed, int clubs) {
        Scene scene = new Scene(new Dice(seed), clubs);
        served.given(scene.facts(), scene.notes());
        people = new People(served, scene);
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
        return "@Test\nvoid day_" + seed + "_of_" + clubs + "_clubs() {\n    try (Retold day = new Retold(" + seed
                + "L, " + clubs + ")) {\n" + String.join("\n", lines) + "\n    }\n}";
    }

    /** Somebody sends a form of a page at a time of the day; every promise must hold after it. */
    Log.Sent sends(String clock, String who, String page, String action, String... typed) {
        served.at(Scene.at(LocalTime.parse(clock)));
        Person person = people.all().stream()
                .filter(one -> one.toString().equals(who))
                .findFirst()
                .orElseThrow();
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
        served.at(Scene.at(LocalTime.parse(clock)));
        assertThat(look(clock, log)).as(clock + " " + who + " " + action).isEmpty();
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

    private List<Broken> look(String clock, Log log) {
        List<Sight> looked = new ArrayList<>(log.seen());
        people.all().forEach(person -> looked.add(person.look(person.firstPage())));
        for (String page : List.of("/", "/notices", "/tables", "/ties")) {
            looked.add(people.stranger().look(page));
        }
        return promises.look(new Moment(
                served.clock.instant(),
                clock.substring(0, 5),
                served.ledger.event(),
                served.ledger.directory(),
                served.ledger.hurt(),
                log,
                looked));
    }

    @Override
    public void close() {
        served.close();
    }
}
