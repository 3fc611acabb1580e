package tiewright.plainfiles;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.conditions.Conditions;
import tiewright.conditions.Domain;
import tiewright.conditions.Preset;
import tiewright.conditions.Setting;
import tiewright.conditions.SettingFault;
import tiewright.event.Refusal;
import tiewright.event.SetUpFact;
import tiewright.standings.Procedure;

/** What the event is and under which conditions it is played: event.csv and conditions.csv. */
final class EventRows {
    private static final List<String> KEYS = List.of("name", "date", "venue", "time_zone", "starts", "venue_closes");
    private static final Map<Class<? extends Domain>, String> NOT_LEGAL = Map.of(
            Domain.Scoring.class, "scoring",
            Domain.Points.class, "points",
            Domain.Unplayed.class, "unplayed",
            Domain.Kinds.class, "kinds",
            Domain.Weights.class, "weights",
            Domain.Level.class, "procedure");

    private final Reading reading;
    private final Cells cells;

    EventRows(Reading reading) {
        this.reading = reading;
        this.cells = reading.cells();
    }

    void read() {
        if (reading.has(PlainFile.EVENT)) {
            event(byKey());
        }
        if (reading.has(PlainFile.CONDITIONS)) {
            conditions();
        }
    }

    private Map<String, CsvTable.Row> byKey() {
        Map<String, CsvTable.Row> byKey = new HashMap<>();
        for (CsvTable.Row row : reading.rows(PlainFile.EVENT)) {
            cells.needed(row, "key").ifPresent(key -> {
                if (!KEYS.contains(key)) {
                    cells.fault(row, "key", "files.unknown-key", "key", key);
                } else if (byKey.putIfAbsent(key, row) != null) {
                    cells.fault(row, "key", "files.twice", "value", key);
                }
            });
        }
        return byKey;
    }

    private void event(Map<String, CsvTable.Row> byKey) {
        Optional<String> name = row(byKey, "name").flatMap(row -> cells.text(row, "value"));
        Optional<LocalDate> date = row(byKey, "date").flatMap(row -> cells.date(row, "value"));
        Optional<String> venue = row(byKey, "venue").flatMap(row -> cells.text(row, "value"));
        Optional<ZoneId> zone = row(byKey, "time_zone").flatMap(row -> cells.zone(row, "value"));
        Optional<LocalTime> starts = row(byKey, "starts").flatMap(row -> cells.time(row, "value"));
        Optional<LocalTime> closes =
                Optional.ofNullable(byKey.get("venue_closes")).flatMap(row -> cells.time(row, "value"));
        if (name.isPresent() && date.isPresent() && venue.isPresent() && zone.isPresent() && starts.isPresent()) {
            reading.facts()
                    .add(new SetUpFact.EventDescribed(
                            name.get(), date.get(), venue.get(), zone.get(), starts.get(), closes));
        }
    }

    /** The row of a key that must be there and have a value. */
    private Optional<CsvTable.Row> row(Map<String, CsvTable.Row> byKey, String key) {
        CsvTable.Row row = byKey.get(key);
        if (row == null) {
            cells.faults()
                    .add(new FolderFault(
                            PlainFile.EVENT.fileName(),
                            1,
                            "key",
                            Refusal.of("files.no-key").with("key", key)));
            return Optional.empty();
        }
        return cells.needed(row, "value").map(any -> row);
    }

    private void conditions() {
        Optional<Preset> preset = Optional.empty();
        Map<Setting, String> values = new EnumMap<>(Setting.class);
        for (CsvTable.Row row : reading.rows(PlainFile.CONDITIONS)) {
            Optional<String> name = cells.needed(row, "setting");
            Optional<String> value = cells.needed(row, "value");
            if (name.isEmpty() || value.isEmpty()) {
                continue;
            }
            if (!name.get().equals("preset")) {
                setting(row, name.get(), value.get(), values);
            } else if (preset.isPresent()) {
                cells.fault(row, "setting", "files.twice", "value", "preset");
            } else {
                preset = preset(row, value.get());
            }
        }
        reading.conditions(new Conditions(preset.orElse(Preset.CLUB_DAY), values));
        clashes();
        reading.facts().add(new SetUpFact.ConditionsPublished(1, reading.conditions(), OptionalInt.empty()));
    }

    private Optional<Preset> preset(CsvTable.Row row, String value) {
        Optional<Preset> chosen = Preset.parse(value);
        if (chosen.isEmpty()) {
            cells.fault(row, "value", "files.no-preset", "value", value);
        }
        return chosen;
    }

    private void setting(CsvTable.Row row, String name, String value, Map<Setting, String> values) {
        Optional<Setting> setting = Setting.parse(name);
        if (setting.isEmpty()) {
            cells.fault(row, "setting", "files.no-setting", "value", name);
        } else if (!isLegal(setting.get(), value)) {
            cells.fault(
                    row,
                    "value",
                    notLegal(setting.get().domain()).with("setting", name).with("value", value));
        } else if (values.putIfAbsent(setting.get(), value) != null) {
            cells.fault(row, "setting", "files.twice", "value", name);
        }
    }

    private static boolean isLegal(Setting setting, String value) {
        return setting.domain().allows(value)
                && (setting != Setting.LEVEL_TEAMS || Procedure.parse(value).isPresent());
    }

    private static Refusal notLegal(Domain domain) {
        if (domain instanceof Domain.Choice choice) {
            return Refusal.of("files.setting-choice").with("choices", choice.choices());
        }
        if (domain instanceof Domain.Whole whole) {
            return Refusal.of("files.setting-whole")
                    .with("least", whole.least())
                    .with("most", whole.most());
        }
        if (domain instanceof Domain.Degrees degrees) {
            return Refusal.of("files.setting-degrees")
                    .with("least", Cells.plain(degrees.least()))
                    .with("most", Cells.plain(degrees.most()));
        }
        return Refusal.of("files.setting-" + NOT_LEGAL.get(domain.getClass()));
    }

    /** Values that cannot stand together, each at the row of its setting or, where a preset gives it, at the last row. */
    private void clashes() {
        List<CsvTable.Row> rows = reading.rows(PlainFile.CONDITIONS);
        for (SettingFault clash : reading.conditions().clashes()) {
            rows.stream()
                    .filter(row ->
                            row.cell("setting").filter(clash.setting()::equals).isPresent())
                    .findFirst()
                    .or(() -> rows.stream().reduce((before, last) -> last))
                    .ifPresent(row -> cells.fault(
                            row,
                            "value",
                            Refusal.of(code(clash.kind()))
                                    .with("setting", clash.setting())
                                    .with("value", clash.value())
                                    .with("least", clash.allowed().get(0))
                                    .with(
                                            "most",
                                            clash.allowed().get(clash.allowed().size() - 1))));
        }
    }

    private static String code(SettingFault.Kind clash) {
        return clash == SettingFault.Kind.STOP_BELOW_CAUTION
                ? "files.clash-heat"
                : clash == SettingFault.Kind.KINDS_FOR_OTHER_RUBBERS ? "files.clash-kinds" : "files.clash-weights";
    }
}
