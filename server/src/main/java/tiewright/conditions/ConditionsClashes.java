package tiewright.conditions;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Looks for values that are legal one by one and cannot stand together. */
final class ConditionsClashes {
    private final Conditions conditions;

    private ConditionsClashes(Conditions conditions) {
        this.conditions = conditions;
    }

    static List<SettingFault> of(Conditions conditions) {
        ConditionsClashes clashes = new ConditionsClashes(conditions);
        return Stream.of(
                        clashes.heat(Setting.HEAT_CAUTION_WBGT, Setting.HEAT_STOP_WBGT)
                                .or(() -> clashes.heat(Setting.HEAT_CAUTION_AIR, Setting.HEAT_STOP_AIR)),
                        clashes.kinds(),
                        clashes.weights())
                .flatMap(Optional::stream)
                .toList();
    }

    /** Play would stop for the heat before the caution is given. */
    private Optional<SettingFault> heat(Setting cautionFrom, Setting stopFrom) {
        String caution = conditions.value(cautionFrom);
        String stop = conditions.value(stopFrom);
        return Double.parseDouble(stop) >= Double.parseDouble(caution)
                ? Optional.empty()
                : Optional.of(new SettingFault(
                        SettingFault.Kind.STOP_BELOW_CAUTION, stopFrom.code(), stop, List.of(caution)));
    }

    private Optional<SettingFault> kinds() {
        String kinds = conditions.value(Setting.RUBBER_KINDS);
        return kinds.equals(RubberKind.OPEN.code())
                ? Optional.empty()
                : asMany(Setting.RUBBER_KINDS, SettingFault.Kind.KINDS_FOR_OTHER_RUBBERS, kinds.split(";", -1));
    }

    private Optional<SettingFault> weights() {
        String weights = conditions.value(Setting.RUBBER_WEIGHTS);
        return weights.equals(RubberWeights.NONE_GIVEN)
                ? Optional.empty()
                : asMany(Setting.RUBBER_WEIGHTS, SettingFault.Kind.WEIGHTS_FOR_OTHER_RUBBERS, weights.split("/", -1));
    }

    /** A list that says something of each rubber is as long as there are rubbers. */
    private Optional<SettingFault> asMany(Setting setting, SettingFault.Kind kind, String[] given) {
        return given.length == conditions.rubbers()
                ? Optional.empty()
                : Optional.of(new SettingFault(
                        kind,
                        setting.code(),
                        conditions.value(setting),
                        List.of(Integer.toString(given.length), Integer.toString(conditions.rubbers()))));
    }
}
