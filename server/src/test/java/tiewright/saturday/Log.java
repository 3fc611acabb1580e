package tiewright.saturday;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.LongSupplier;
import java.util.stream.Collectors;
import tiewright.http.Served;
import tiewright.sheet.Exchanges;

/** What was seen and sent in one step of a day. */
final class Log {
    private final LongSupplier acts;
    private final List<Sight> seen = new ArrayList<>();
    private final List<Sent> sent = new ArrayList<>();
    private final List<Sent> again = new ArrayList<>();

    /**
     * A form that was sent.
     *
     * @param page where the form stood
     * @param before how many facts people had made before it
     * @param after how many after it
     */
    record Sent(
            Person who,
            String page,
            String action,
            List<Map.Entry<String, String>> fields,
            Sight answer,
            long before,
            long after) {
        /** The service went on from there, as it does once a form was taken: to another page, or to the one where the form stood. */
        boolean isTaken() {
            return answer.status() == 200 && answer.led();
        }

        boolean isDone() {
            return after > before;
        }

        @Override
        public String toString() {
            String typed = fields.stream()
                    .filter(field -> !List.of("key", "seen").contains(field.getKey())
                            && !field.getValue().isEmpty())
                    .map(Map.Entry::toString)
                    .collect(Collectors.joining(" "));
            return who + " sends " + action + " " + typed + " -> " + answer.status() + " " + answer.path()
                    + (after > before ? " (" + (after - before) + " facts)" : "");
        }
    }

    private Log(LongSupplier acts) {
        this.acts = acts;
    }

    /** Counts what people did; what the service opens by itself meanwhile is nobody's act. */
    static Log of(Served served) {
        return new Log(() -> served.ledger.facts(0).stream()
                .filter(recorded -> !recorded.by().equals(Exchanges.AUTOMATIC))
                .count());
    }

    /** How many facts people have made so far. */
    long acts() {
        return acts.getAsLong();
    }

    void saw(Sight sight) {
        seen.add(sight);
    }

    void sent(Sent one) {
        sent.add(one);
    }

    void sentAgain(Sent one) {
        again.add(one);
    }

    List<Sight> seen() {
        return List.copyOf(seen);
    }

    List<Sent> sent() {
        return List.copyOf(sent);
    }

    List<Sent> again() {
        return List.copyOf(again);
    }
}
