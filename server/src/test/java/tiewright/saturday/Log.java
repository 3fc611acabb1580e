package tiewright.saturday;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.LongSupplier;
import java.util.stream.Collectors;

/** What was seen and sent in one step of a day. */
final class Log {
    private final LongSupplier seq;
    private final List<Sight> seen = new ArrayList<>();
    private final List<Sent> sent = new ArrayList<>();
    private final List<Sent> again = new ArrayList<>();

    /**
     * A form that was sent.
     *
     * @param before the last fact before it
     * @param after the last fact after it
     */
    record Sent(
            Person who, String action, List<Map.Entry<String, String>> fields, Sight answer, long before, long after) {
        /** The service went on to another page, as it does once a form was taken. */
        boolean isTaken() {
            return answer.status() == 200 && !answer.path().equals(action);
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
                    + (after > before ? " (facts " + (before + 1) + " to " + after + ")" : "");
        }
    }

    Log(LongSupplier seq) {
        this.seq = seq;
    }

    long seq() {
        return seq.getAsLong();
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
