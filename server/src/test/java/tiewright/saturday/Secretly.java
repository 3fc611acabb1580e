package tiewright.saturday;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** What a person of the hidden club does on the second day: the same facts, and more that nobody else may notice. */
final class Secretly {
    private static final List<String> NOTES = List.of("/captain/squad", "/captain/day");

    private final Person who;
    private final Dice dice;
    private final Presses presses;
    private final Log log;

    Secretly(Person who, Dice dice, String clock, Log log) {
        this.who = who;
        this.dice = dice;
        this.presses = new Presses(who, dice, clock, log);
        this.log = log;
    }

    void does(Log first) {
        for (Log.Sent sent : first.sent()) {
            if (sent.isDone() || sent.action().equals("/hurt")) {
                send(sent, fields -> fields);
                if (isSealing(sent)) {
                    send(sent, Secretly::turned);
                    send(sent, fields -> fields);
                }
            }
        }
        if (who.role() == tiewright.event.Role.CAPTAIN) {
            presses.press(who.look(dice.any(NOTES)));
        }
    }

    private static boolean isSealing(Log.Sent sent) {
        return sent.action().matches("/captain/(sheet|decider)/[^/]+")
                && sent.fields().contains(Map.entry("step", "seal"));
    }

    private void send(Log.Sent sent, UnaryOperator<List<Map.Entry<String, String>>> change) {
        List<Map.Entry<String, String>> fields = new ArrayList<>(Retold.fresh(who.look(sent.page()), sent.action()));
        change.apply(sent.fields()).stream()
                .filter(field -> !List.of("key", "seen").contains(field.getKey()))
                .forEach(fields::add);
        long before = log.acts();
        Sight answer = who.send(sent.action(), fields);
        log.sent(new Log.Sent(
                who, sent.page(), sent.action(), fields, answer, before, log.acts())); // it may hold a link
    }

    /** The pairs of the first two rubbers change places. */
    private static List<Map.Entry<String, String>> turned(List<Map.Entry<String, String>> fields) {
        return fields.stream()
                .map(field -> Map.entry(
                        field.getKey().startsWith("sheet-1-")
                                ? field.getKey().replace("sheet-1-", "sheet-2-")
                                : field.getKey().replace("sheet-2-", "sheet-1-"),
                        field.getValue()))
                .toList();
    }
}
