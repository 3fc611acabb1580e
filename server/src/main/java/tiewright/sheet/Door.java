package tiewright.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import tiewright.conditions.Conditions;
import tiewright.conditions.Setting;

/** The doors through which a pair can be changed after the opening, and which of them the conditions leave open. */
public enum Door {
    INJURY("injury"),
    ILLNESS("illness"),
    NO_SHOW("no-show"),
    DISQUALIFIED("disqualified"),
    CLERICAL("clerical"),
    /** the captain wants another player: only where the conditions allow free substitution */
    SUBSTITUTION("substitution");

    private static final String REFEREE_AND_DOCTOR = "referee-and-doctor";
    private final String code;

    Door(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Optional<Door> parse(String code) {
        return Arrays.stream(values()).filter(door -> door.code.equals(code)).findFirst();
    }

    /** The open doors, in printed order. A clerical slip can be put right under any conditions. */
    public static List<Door> open(Conditions conditions) {
        return switch (conditions.value(Setting.CHANGES_AFTER_OPENING)) {
            case "free-substitution" -> List.of(values());
            case REFEREE_AND_DOCTOR -> List.of(INJURY, ILLNESS, DISQUALIFIED, CLERICAL);
            case "none" -> List.of(CLERICAL);
            default -> List.of(INJURY, ILLNESS, NO_SHOW, DISQUALIFIED, CLERICAL);
        };
    }

    /** The conditions leave changes to the referee, who hears a doctor. */
    static boolean isForTheReferee(Conditions conditions) {
        return conditions.value(Setting.CHANGES_AFTER_OPENING).equals(REFEREE_AND_DOCTOR);
    }
}
