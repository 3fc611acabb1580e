package tiewright.film;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.stream.IntStream;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;

/**
 * Rallies as they are typed while a film runs: a line a rally, in the line a key for each thing that is noted ({@link RallyKey}), in any
 * order, blanks between them or not. The players are 1 and 2 of side one, 3 and 4 of side two, right before left as the game began; a number
 * belongs to the key before it. {@code @} and a word is the time on the film. So {@code @0:18 a q e3 l3 n}.
 */
public final class RallyKeys {
    private RallyKeys() {}

    /**
     * @param rallies that can be read
     * @param faults what cannot be, rally by rally
     */
    public record Typed(List<RallyNote> rallies, List<Refusal> faults) {
        public Typed {
            rallies = List.copyOf(rallies);
            faults = List.copyOf(faults);
        }

        /** The rallies before the first one that cannot be read: they still follow from each other. */
        public List<RallyNote> upToFault() {
            return IntStream.range(0, rallies.size())
                    .takeWhile(i -> rallies.get(i).number() == i + 1)
                    .mapToObj(rallies::get)
                    .toList();
        }
    }

    /** Empty lines are no rallies. */
    public static Typed read(String text, Start start) {
        List<RallyNote> rallies = new ArrayList<>();
        List<Refusal> faults = new ArrayList<>();
        List<String> lines = text.lines().filter(line -> !line.isBlank()).toList();
        for (int i = 0; i < lines.size(); i++) {
            TypedRally typed = new TypedRally(start, i + 1);
            typed.read(lines.get(i)).ifPresent(rallies::add);
            faults.addAll(typed.faults());
        }
        return new Typed(rallies, faults);
    }

    /**
     * The rallies as they would be typed; the numbers are given anew.
     *
     * @return empty where the notes hold a word for which there is no key
     */
    public static Optional<String> write(List<RallyNote> rallies, Start start) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < rallies.size(); i++) {
            RallyNote rally = rallies.get(i);
            RallyNote numbered = new RallyNote(i + 1, rally.ending(), rally.player(), rally.server(), rally.detail());
            Optional<String> line = line(numbered, start);
            if (line.flatMap(keys -> new TypedRally(start, numbered.number()).read(keys))
                    .filter(numbered::equals)
                    .isEmpty()) {
                return Optional.empty();
            }
            text.append(line.get()).append('\n');
        }
        return Optional.of(text.toString());
    }

    private static Optional<String> line(RallyNote rally, Start start) {
        Detail detail = rally.detail();
        StringJoiner line = new StringJoiner(" ");
        detail.filmTime().ifPresent(time -> line.add("@" + time));
        rally.server().ifPresent(server -> line.add("=" + number(server, start)));
        Written written = new Written(line, start);
        written.add(RallyKey.Note.SIGNAL, detail.signal(), Optional.empty());
        written.add(RallyKey.Note.SERVE, detail.serve(), Optional.empty());
        written.add(RallyKey.Note.RETURN, detail.returned(), Optional.empty());
        written.add(RallyKey.Note.THIRD, detail.third(), detail.thirdTo());
        written.add(RallyKey.Note.ENDING, Optional.of(rally.ending().code()), rally.player());
        written.add(RallyKey.Note.WHERE, detail.where(), Optional.empty());
        written.add(RallyKey.Note.CALL, detail.call(), detail.callBy());
        written.add(RallyKey.Note.CALL_END, detail.callEnd(), Optional.empty());
        written.add(RallyKey.Note.MARK, detail.mark(), Optional.empty());
        return written.complete ? Optional.of(line.toString()) : Optional.empty();
    }

    /** A line while it is written; not complete once something has no key. */
    private static final class Written {
        private final StringJoiner line;
        private final Start start;
        private boolean complete = true;

        private Written(StringJoiner line, Start start) {
            this.line = line;
            this.start = start;
        }

        private void add(RallyKey.Note note, Optional<String> value, Optional<PlayerId> player) {
            if (value.isEmpty()) {
                complete &= player.isEmpty();
                return;
            }
            RallyKey.of(note, value.get())
                    .ifPresentOrElse(
                            key -> line.add(key.key()
                                    + player.map(who -> number(who, start)).orElse("")),
                            () -> complete = false);
        }
    }

    private static String number(PlayerId player, Start start) {
        return Integer.toString(start.players().indexOf(player) + 1);
    }
}
