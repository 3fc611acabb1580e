package tiewright.film;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;

/** One line of keys while it is read. */
final class TypedRally {
    private static final char FILM_TIME = '@';

    private final Start start;
    private final int number;
    private final Map<RallyKey.Note, RallyKey> keys = new EnumMap<>(RallyKey.Note.class);
    private final Map<RallyKey.Note, PlayerId> players = new EnumMap<>(RallyKey.Note.class);
    private final List<Refusal> faults = new ArrayList<>();
    private Optional<String> filmTime = Optional.empty();
    private Optional<RallyKey> last = Optional.empty();

    TypedRally(Start start, int number) {
        this.start = start;
        this.number = number;
    }

    List<Refusal> faults() {
        return faults;
    }

    /** The rally; empty after a fault. */
    Optional<RallyNote> read(String line) {
        for (String word : line.strip().split("\\s+")) {
            if (word.charAt(0) == FILM_TIME) {
                filmTime(word.substring(1));
            } else {
                word.chars().forEach(typed -> key((char) typed));
            }
        }
        keys.values().stream()
                .filter(key -> key.names() == RallyKey.Names.MUST && !players.containsKey(key.note()))
                .forEach(key -> fault("film.key-without-player", key.key()));
        if (!keys.containsKey(RallyKey.Note.ENDING)) {
            faults.add(Refusal.of("film.keys-without-ending").with("rally", number));
        }
        return faults.isEmpty() ? Optional.of(rally()) : Optional.empty();
    }

    private void filmTime(String time) {
        if (time.isEmpty() || filmTime.isPresent()) {
            fault("film.key-film-time", FILM_TIME);
        }
        filmTime = Optional.of(time);
        last = Optional.empty();
    }

    private void key(char typed) {
        char lower = Character.toString(typed).toLowerCase(Locale.ROOT).charAt(0);
        if (lower >= '1' && lower <= '4') {
            player(lower);
            return;
        }
        last = RallyKey.of(lower);
        if (last.isEmpty()) {
            fault("film.key-unknown", typed);
        } else if (keys.putIfAbsent(last.get().note(), last.get()) != null) {
            faults.add(Refusal.of("film.key-twice")
                    .with("rally", number)
                    .with("key", typed)
                    .with("before", keys.get(last.get().note()).key()));
            last = Optional.empty();
        }
    }

    private void player(char digit) {
        Optional<RallyKey> named =
                last.filter(key -> key.names() != RallyKey.Names.NOBODY && !players.containsKey(key.note()));
        if (named.isEmpty()) {
            fault("film.key-player-alone", digit);
        } else {
            players.put(named.get().note(), start.players().get(digit - '1'));
        }
    }

    private void fault(String code, char typed) {
        faults.add(Refusal.of(code).with("rally", number).with("key", typed));
    }

    private RallyNote rally() {
        Detail detail = new Detail(
                value(RallyKey.Note.WHERE),
                value(RallyKey.Note.SERVE),
                value(RallyKey.Note.RETURN),
                value(RallyKey.Note.THIRD),
                player(RallyKey.Note.THIRD),
                value(RallyKey.Note.SIGNAL),
                value(RallyKey.Note.CALL),
                player(RallyKey.Note.CALL),
                value(RallyKey.Note.CALL_END),
                value(RallyKey.Note.MARK),
                filmTime);
        return new RallyNote(
                number,
                value(RallyKey.Note.ENDING).flatMap(Ending::parse).orElseThrow(),
                player(RallyKey.Note.ENDING),
                player(RallyKey.Note.SERVER),
                detail);
    }

    private Optional<String> value(RallyKey.Note note) {
        return Optional.ofNullable(keys.get(note)).map(RallyKey::value);
    }

    private Optional<PlayerId> player(RallyKey.Note note) {
        return Optional.ofNullable(players.get(note));
    }
}
