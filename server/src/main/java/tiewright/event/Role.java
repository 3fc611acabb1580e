package tiewright.event;

import java.util.Arrays;
import java.util.Optional;

/** Who somebody is for the tool. A deputy is a captain. */
public enum Role {
    PUBLIC("public"),
    PLAYER("player"),
    CAPTAIN("captain"),
    VOLUNTEER("volunteer"),
    DESK("desk"),
    ORGANISER("organiser"),
    REFEREE("referee");

    private final String code;

    Role(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    /** Captain and player belong to one club. */
    public boolean isOfAClub() {
        return this == CAPTAIN || this == PLAYER;
    }

    /** Those who run the event: desk, organiser, referee. */
    public boolean isOfficial() {
        return this == DESK || this == ORGANISER || this == REFEREE;
    }

    public static Optional<Role> parse(String code) {
        return Arrays.stream(values()).filter(role -> role.code.equals(code)).findFirst();
    }
}
