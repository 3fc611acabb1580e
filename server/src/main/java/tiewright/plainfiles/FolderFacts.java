package tiewright.plainfiles;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import tiewright.conditions.Conditions;
import tiewright.conditions.Preset;
import tiewright.conditions.Setting;
import tiewright.conditions.Withdrawal;
import tiewright.event.ClubId;
import tiewright.event.DrawFact;
import tiewright.event.Fact;
import tiewright.event.OfficialFact;
import tiewright.event.PlayerId;
import tiewright.event.SetUpFact;
import tiewright.event.Slot;
import tiewright.event.SlotSource;
import tiewright.event.Stage;
import tiewright.event.TieId;
import tiewright.standings.Procedure;

/** Turns the rows of a folder into facts, in an order in which they can be folded. */
final class FolderFacts {
  private final Map<PlainFile, CsvTable> tables;
  private final Cells cells = new Cells();
  private final List<Fact> facts = new ArrayList<>();
  private final List<PlayerId> away = new ArrayList<>();
  private final Set<String> clubs = new LinkedHashSet<>();
  private final Set<String> players = new LinkedHashSet<>();
  private final Set<String> ties = new LinkedHashSet<>();
  private Conditions conditions = Conditions.of(Preset.CLUB_DAY);

  FolderFacts(Map<PlainFile, CsvTable> tables) {
    this.tables = tables;
  }

  void collect() {
    event();
    conditions();
    rows(PlainFile.CLUBS).forEach(this::club);
    rows(PlainFile.PLAYERS).forEach(this::player);
    rows(PlainFile.TIES).forEach(this::tie);
    new ResultRows(conditions, cells, tieCodes(), facts).read(rows(PlainFile.RESULTS));
    rows(PlainFile.WITHDRAWALS).forEach(this::withdrawal);
  }

  List<Fact> facts() {
    return List.copyOf(facts);
  }

  List<PlayerId> away() {
    return List.copyOf(away);
  }

  List<FolderFault> faults() {
    return List.copyOf(cells.faults());
  }

  private List<CsvTable.Row> rows(PlainFile file) {
    return Optional.ofNullable(tables.get(file)).map(CsvTable::rows).orElse(List.of());
  }

  /** The ties that a result may name; empty when there is no ties.csv to look in. */
  private Optional<Set<String>> tieCodes() {
    return tables.containsKey(PlainFile.TIES) ? Optional.of(ties) : Optional.empty();
  }

  private void event() {
    Map<String, CsvTable.Row> byKey = new HashMap<>();
    List<String> known = List.of("name", "date", "venue", "time_zone", "starts", "venue_closes");
    for (CsvTable.Row row : rows(PlainFile.EVENT)) {
      cells.needed(row, "key").ifPresent(key -> {
        if (!known.contains(key)) {
          cells.fault(row, "key", "unknown key \"" + key + "\"");
        } else if (byKey.put(key, row) != null) {
          cells.fault(row, "key", "\"" + key + "\" stands here twice");
        }
      });
    }
    Optional<String> name = value(byKey, "name");
    Optional<LocalDate> date = value(byKey, "date").flatMap(any -> cells.date(byKey.get("date"), "value"));
    Optional<String> venue = value(byKey, "venue");
    Optional<ZoneId> zone = value(byKey, "time_zone").flatMap(any -> cells.zone(byKey.get("time_zone"), "value"));
    Optional<LocalTime> starts = value(byKey, "starts").flatMap(any -> cells.time(byKey.get("starts"), "value"));
    Optional<LocalTime> closes = Optional.ofNullable(byKey.get("venue_closes")).flatMap(row -> cells.time(row, "value"));
    if (name.isPresent() && date.isPresent() && venue.isPresent() && zone.isPresent() && starts.isPresent()) {
      facts.add(new SetUpFact.EventDescribed(name.get(), date.get(), venue.get(), zone.get(), starts.get(), closes));
    }
  }

  private Optional<String> value(Map<String, CsvTable.Row> byKey, String key) {
    CsvTable.Row row = byKey.get(key);
    if (row == null) {
      cells.faults().add(new FolderFault(PlainFile.EVENT.fileName(), 1, "key", "the key \"" + key + "\" is missing"));
      return Optional.empty();
    }
    return cells.needed(row, "value");
  }

  private void conditions() {
    Preset preset = Preset.CLUB_DAY;
    Map<Setting, String> values = new EnumMap<>(Setting.class);
    for (CsvTable.Row row : rows(PlainFile.CONDITIONS)) {
      Optional<String> name = cells.needed(row, "setting");
      Optional<String> value = cells.needed(row, "value");
      if (name.isEmpty() || value.isEmpty()) {
        continue;
      }
      if (name.get().equals("preset")) {
        Optional<Preset> chosen = Preset.parse(value.get());
        if (chosen.isEmpty()) {
          cells.fault(row, "value", "there is no preset \"" + value.get() + "\": Club day, Strict order, Everyone plays, Timed");
        }
        preset = chosen.orElse(preset);
      } else {
        setting(row, name.get(), value.get(), values);
      }
    }
    conditions = new Conditions(preset, values);
    facts.add(new SetUpFact.ConditionsPublished(1, conditions, OptionalInt.empty()));
  }

  private void setting(CsvTable.Row row, String name, String value, Map<Setting, String> values) {
    Optional<Setting> setting = Setting.parse(name);
    if (setting.isEmpty()) {
      cells.fault(row, "setting", "there is no setting \"" + name + "\"");
    } else if (!Conditions.allows(setting.get(), value)
        || setting.get() == Setting.LEVEL_TEAMS && Procedure.parse(value).isEmpty()) {
      cells.fault(row, "value", name + " cannot be \"" + value + "\"");
    } else if (values.put(setting.get(), value) != null) {
      cells.fault(row, "setting", "\"" + name + "\" stands here twice");
    }
  }

  private void club(CsvTable.Row row) {
    Optional<String> code = cells.code(row, "club");
    Optional<String> name = cells.needed(row, "name");
    OptionalInt seed = cells.whole(row, "seed", 1, 999);
    if (code.isPresent() && !clubs.add(code.get())) {
      cells.fault(row, "club", "the club " + code.get() + " stands here twice");
    } else if (code.isPresent() && name.isPresent()) {
      facts.add(new SetUpFact.ClubEntered(ClubId.of(code.get()), name.get(), row.cell("town"), seed));
    }
  }

  private void player(CsvTable.Row row) {
    Optional<String> code = cells.code(row, "player");
    Optional<String> club = cells.code(row, "club").filter(any -> isClub(row, "club"));
    cells.needed(row, "name");
    OptionalInt rank = cells.whole(row, "rank", 1, 999);
    List.of("form", "form_sd").forEach(column -> cells.number(row, column));
    cells.whole(row, "born_year", 1900, 2100);
    Optional<LocalTime> from = cells.time(row, "from");
    Optional<LocalTime> until = cells.time(row, "until");
    Optional<Boolean> present = cells.yes(row, "present");
    boolean deputy = cells.yes(row, "deputy").orElse(false);
    if (code.isPresent() && !players.add(code.get())) {
      cells.fault(row, "player", "the player " + code.get() + " stands here twice");
    } else if (code.isPresent() && club.isPresent()) {
      PlayerId id = PlayerId.of(code.get());
      facts.add(new SetUpFact.PlayerEntered(id, ClubId.of(club.get()), rank, from, until, deputy));
      present.filter(here -> !here).ifPresent(no -> away.add(id));
    }
  }

  private void tie(CsvTable.Row row) {
    Optional<String> code = cells.code(row, "tie");
    Optional<Stage> stage = cells.needed(row, "stage").flatMap(Stage::parse);
    if (row.cell("stage").isPresent() && stage.isEmpty()) {
      cells.fault(row, "stage", "a stage is pool or knockout");
    }
    Optional<String> pool = cells.codeIfAny(row, "pool");
    if (stage.filter(s -> s == Stage.POOL).isPresent() && pool.isEmpty()) {
      cells.fault(row, "pool", "a tie of a pool names its pool");
    }
    OptionalInt round = cells.wholeNeeded(row, "round", 1, 99);
    Optional<Slot> home = slot(row, "home");
    Optional<Slot> awaySide = slot(row, "away");
    Optional<LocalTime> start = cells.time(row, "start");
    if (row.cell("home").isPresent() && row.cell("home").equals(row.cell("away"))) {
      cells.fault(row, "away", "a club cannot play itself");
    } else if (code.isPresent() && !ties.add(code.get())) {
      cells.fault(row, "tie", "the tie " + code.get() + " stands here twice");
    } else if (code.isPresent() && stage.isPresent() && round.isPresent() && home.isPresent() && awaySide.isPresent()) {
      TieId id = TieId.of(code.get());
      facts.add(new DrawFact.TieArranged(id, stage.get(), pool, round.getAsInt(), home.get(), awaySide.get()));
      if (start.isPresent() || row.cell("court").isPresent()) {
        facts.add(new DrawFact.TieTimed(id, start, row.cell("court")));
      }
    }
  }

  private Optional<Slot> slot(CsvTable.Row row, String side) {
    Optional<String> club = cells.codeIfAny(row, side).filter(any -> isClub(row, side));
    Optional<SlotSource> from = row.cell(side + "_from").flatMap(SlotSource::parse);
    if (row.cell(side + "_from").isPresent() && from.isEmpty()) {
      cells.fault(row, side + "_from", "a source is written A-1, winner-SF1 or loser-SF1");
    }
    if (row.cell(side).isEmpty() && row.cell(side + "_from").isEmpty()) {
      cells.fault(row, side, "name the club, or in " + side + "_from where it comes from");
    }
    return club.isEmpty() && from.isEmpty() ? Optional.empty() : Optional.of(new Slot(club.map(ClubId::of), from));
  }

  private boolean isClub(CsvTable.Row row, String column) {
    String code = row.cell(column).orElse("");
    if (tables.containsKey(PlainFile.CLUBS) && !clubs.contains(code)) {
      cells.fault(row, column, "there is no club " + code + " in clubs.csv");
      return false;
    }
    return true;
  }

  private void withdrawal(CsvTable.Row row) {
    Optional<String> club = cells.code(row, "club").filter(any -> isClub(row, "club"));
    Optional<String> after = cells.codeIfAny(row, "after_tie");
    if (after.isPresent() && tables.containsKey(PlainFile.TIES) && !ties.contains(after.get())) {
      cells.fault(row, "after_tie", "there is no tie " + after.get() + " in ties.csv");
    }
    Optional<Withdrawal> treatment = row.cell("treatment").flatMap(Withdrawal::parse);
    if (row.cell("treatment").isPresent() && treatment.isEmpty()) {
      cells.fault(row, "treatment", "a treatment is annul, keep or award");
    }
    club.ifPresent(code -> facts.add(new OfficialFact.ClubWithdrawn(
        ClubId.of(code), after.map(TieId::of), treatment.orElse(conditions.withdrawal()), 0)));
  }
}
