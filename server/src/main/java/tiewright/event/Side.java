package tiewright.event;

/** The two sides of a tie. */
public enum Side {
    HOME("home"),
    AWAY("away");

    private final String code;

    Side(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public Side other() {
        return this == HOME ? AWAY : HOME;
    }

    public static Side of(String code) {
        return code.equals(HOME.code) ? HOME : code.equals(AWAY.code) ? AWAY : unknown(code);
    }

    private static Side unknown(String code) {
        throw new IllegalArgumentException("a side is home or away, not \"" + code + "\"");
    }
}
