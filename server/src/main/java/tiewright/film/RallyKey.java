package tiewright.film;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A key that is typed while a film runs, and what it notes of the rally. */
public enum RallyKey {
    EARNED('j', Note.ENDING, "earned", Names.MUST),
    FORCED('k', Note.ENDING, "forced", Names.MUST),
    GAVE('l', Note.ENDING, "gave", Names.MUST),
    REPLAY('0', Note.ENDING, "replay", Names.MAY),
    UNSURE('?', Note.ENDING, "unsure", Names.MAY),
    NET('n', Note.WHERE, "net", Names.NOBODY),
    LONG('o', Note.WHERE, "long", Names.NOBODY),
    WIDE('p', Note.WHERE, "wide", Names.NOBODY),
    FAULT('i', Note.WHERE, "fault", Names.NOBODY),
    SERVE_MISSED('v', Note.WHERE, "serve", Names.NOBODY),
    RETURN_MISSED('b', Note.WHERE, "return", Names.NOBODY),
    SERVE_DEEP('a', Note.SERVE, "deep", Names.NOBODY),
    SERVE_SHORT('s', Note.SERVE, "short", Names.NOBODY),
    SERVE_OTHER('d', Note.SERVE, "other", Names.NOBODY),
    RETURN_DEEP('q', Note.RETURN, "deep", Names.NOBODY),
    RETURN_SHORT('w', Note.RETURN, "short", Names.NOBODY),
    THIRD_SOFT('e', Note.THIRD, "soft", Names.MAY),
    THIRD_HARD('r', Note.THIRD, "hard", Names.MAY),
    THIRD_LOB('t', Note.THIRD, "lob", Names.MAY),
    THIRD_NONE('f', Note.THIRD, "none", Names.NOBODY),
    STAY(',', Note.SIGNAL, "stay", Names.NOBODY),
    SWITCH('.', Note.SIGNAL, "switch", Names.NOBODY),
    CROSSED('/', Note.SIGNAL, "crossed", Names.NOBODY),
    CALLED_OUT('c', Note.CALL, "out", Names.MAY),
    ACCEPTED('y', Note.CALL_END, "accepted", Names.NOBODY),
    QUESTIONED('h', Note.CALL_END, "questioned", Names.NOBODY),
    WITHDRAWN('g', Note.CALL_END, "withdrawn", Names.NOBODY),
    TIME_OUT('m', Note.MARK, "time-out", Names.NOBODY),
    STOP('u', Note.MARK, "stop", Names.NOBODY),
    STRAIN('x', Note.MARK, "strain", Names.NOBODY),
    /** The notes name the server against what follows from the rallies before. */
    SERVER('=', Note.SERVER, "", Names.MUST);

    /** What of a rally a key notes; each is noted once. */
    public enum Note {
        SIGNAL("signal"),
        SERVER("server"),
        SERVE("serve"),
        RETURN("return"),
        THIRD("third"),
        ENDING("ending"),
        WHERE("where"),
        CALL("call"),
        CALL_END("call-end"),
        MARK("mark");

        private final String code;

        Note(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }
    }

    /** Whether a player's number follows. */
    public enum Names {
        MUST,
        MAY,
        NOBODY
    }

    private final char key;
    private final Note note;
    private final String value;
    private final Names names;

    RallyKey(char key, Note note, String value, Names names) {
        this.key = key;
        this.note = note;
        this.value = value;
        this.names = names;
    }

    public char key() {
        return key;
    }

    public Note note() {
        return note;
    }

    /** As it stands in film notes. */
    public String value() {
        return value;
    }

    public Names names() {
        return names;
    }

    /** Names the key; what is typed may mean something else in an address. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<RallyKey> parse(String code) {
        return Arrays.stream(values()).filter(one -> one.code().equals(code)).findFirst();
    }

    /** What this key notes stands in the notes of the rally. */
    public boolean isNotedIn(RallyNote rally) {
        Detail detail = rally.detail();
        Optional<String> noted =
                switch (note) {
                    case SIGNAL -> detail.signal();
                    case SERVE -> detail.serve();
                    case RETURN -> detail.returned();
                    case THIRD -> detail.third();
                    case ENDING -> Optional.of(rally.ending().code());
                    case WHERE -> detail.where();
                    case CALL -> detail.call();
                    case CALL_END -> detail.callEnd();
                    case MARK -> detail.mark();
                    case SERVER -> rally.server().map(any -> value);
                };
        return noted.filter(value::equals).isPresent();
    }

    static Optional<RallyKey> of(char typed) {
        return Arrays.stream(values()).filter(one -> one.key == typed).findFirst();
    }

    static Optional<RallyKey> of(Note note, String value) {
        return Arrays.stream(values())
                .filter(one -> one.note == note && one.value.equals(value))
                .findFirst();
    }
}
