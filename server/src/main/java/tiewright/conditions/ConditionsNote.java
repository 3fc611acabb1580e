package tiewright.conditions;

import java.util.List;
import java.util.Map;

/**
 * Settings that are legal one by one and go badly together: to be read before the conditions are published, never a
 * reason to refuse them.
 *
 * @param settings the ones that it is about, the one to change first
 * @param data what its sentence names, by placeholder
 */
public record ConditionsNote(Kind kind, List<Setting> settings, Map<String, String> data) {
    /** What goes badly; the code is the key of its sentence. */
    public enum Kind {
        /** The first setting has no effect while the second is as it is. */
        IDLE("conditions.note-idle"),
        /** A usual squad cannot fill a sheet. */
        SQUAD_TOO_SMALL("conditions.note-squad-too-small"),
        /** A knockout tie can finish level and nothing decides it. */
        LEVEL_KNOCKOUT("conditions.note-level-knockout"),
        /** With an odd number of rubbers a tie is level only when a rubber was void. */
        DECIDER_AFTER_VOID("conditions.note-decider-after-void"),
        /** A drawn tie counts what a lost one counts. */
        DRAW_LIKE_LOSS("conditions.note-draw-like-loss"),
        /** A grace of no minutes. */
        NO_GRACE("conditions.note-no-grace"),
        /** The grace ends after the tie should have started. */
        GRACE_PAST_START("conditions.note-grace-past-start"),
        /** A missing sheet is filled in an order of strength that nobody has to hand in. */
        NO_ORDER_TO_FILL("conditions.note-no-order-to-fill"),
        /** Steps stand behind the lot that ends the list. */
        STEPS_AFTER_LOTS("conditions.note-steps-after-lots"),
        /** An ending of a scoring format that changes nothing. */
        IDLE_ENDING("conditions.note-idle-ending"),
        /** A manner of exchange in which one captain sees the other's pairs. */
        NOT_BLIND("conditions.note-not-blind");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }
    }

    public ConditionsNote {
        settings = List.copyOf(settings);
        data = Map.copyOf(data);
    }
}
