package tiewright.conditions;

import java.util.List;
import java.util.Optional;

/**
 * Why a line of the conditions cannot be used.
 *
 * @param setting the name as it was written, {@code preset} for the preset
 * @param value the value as it was written
 * @param allowed what may be written instead: the choices, or least and most of a range; empty when it cannot be listed
 */
public record SettingFault(Kind kind, String setting, String value, List<String> allowed) {
    /** What is wrong; the code is the key of its sentence. */
    public enum Kind {
        UNKNOWN_SETTING("conditions.unknown-setting"),
        UNKNOWN_PRESET("conditions.unknown-preset"),
        NOT_A_CHOICE("conditions.not-a-choice"),
        OUT_OF_RANGE("conditions.out-of-range"),
        NOT_A_FORMAT("conditions.not-a-format"),
        NOT_TIE_POINTS("conditions.not-tie-points"),
        NOT_LEVEL_STEPS("conditions.not-level-steps"),
        NOT_KINDS("conditions.not-kinds"),
        NOT_WEIGHTS("conditions.not-weights"),
        NOT_UNPLAYED("conditions.not-unplayed"),
        /** Not as many kinds as rubbers. */
        KINDS_FOR_OTHER_RUBBERS("conditions.kinds-for-other-rubbers"),
        /** Not as many weights as rubbers. */
        WEIGHTS_FOR_OTHER_RUBBERS("conditions.weights-for-other-rubbers"),
        /** The heat would stop play before it asks for caution. */
        STOP_BELOW_CAUTION("conditions.stop-below-caution");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }
    }

    public SettingFault {
        allowed = List.copyOf(allowed);
    }

    /** Why the value cannot be set; empty when it can. */
    public static Optional<SettingFault> in(Setting setting, String value) {
        return setting.domain().allows(value) ? Optional.empty() : Optional.of(of(setting, value));
    }

    private static SettingFault of(Setting setting, String value) {
        Domain domain = setting.domain();
        if (domain instanceof Domain.Whole whole) {
            return range(setting, value, Integer.toString(whole.least()), Integer.toString(whole.most()));
        }
        if (domain instanceof Domain.Degrees degrees) {
            return range(setting, value, Double.toString(degrees.least()), Double.toString(degrees.most()));
        }
        if (domain instanceof Domain.Choice choice) {
            return new SettingFault(Kind.NOT_A_CHOICE, setting.code(), value, choice.choices());
        }
        if (domain instanceof Domain.Scoring) {
            return new SettingFault(Kind.NOT_A_FORMAT, setting.code(), value, List.of());
        }
        return domain instanceof Domain.Level
                ? new SettingFault(Kind.NOT_LEVEL_STEPS, setting.code(), value, LevelSteps.NAMED)
                : new SettingFault(kind(domain), setting.code(), value, List.of());
    }

    private static Kind kind(Domain domain) {
        if (domain instanceof Domain.Kinds) {
            return Kind.NOT_KINDS;
        }
        if (domain instanceof Domain.Weights) {
            return Kind.NOT_WEIGHTS;
        }
        return domain instanceof Domain.Points ? Kind.NOT_TIE_POINTS : Kind.NOT_UNPLAYED;
    }

    private static SettingFault range(Setting setting, String value, String least, String most) {
        return new SettingFault(Kind.OUT_OF_RANGE, setting.code(), value, List.of(least, most));
    }
}
