package tiewright.http;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.event.Actor;
import tiewright.event.VisibleLog;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.views.LogView;
import tiewright.wording.FactWords;

/** What was entered, when, by whom, from which device: newest first, and nothing here can change it. */
final class LogPage implements Page {
  private static final int ON_A_PAGE = 100;

  @Override
  public void at(Routes routes) {
    routes.get(Door.DESK, "/log", visit -> visit.show(Screen.of("log", "Log", view(visit))));
  }

  private static LogView view(Visit visit) {
    List<VisibleLog.Entry> all = visit.answers().log();
    int pages = Math.max(1, (all.size() + ON_A_PAGE - 1) / ON_A_PAGE);
    int page = Math.min(pages, asked(visit).orElse(1));
    List<ReasonTable.Row> rows = new ArrayList<>();
    FactWords words = new FactWords(visit.words());
    Map<String, Integer> devices = devices(all);
    int newest = all.size() - (page - 1) * ON_A_PAGE;
    for (int i = newest - 1; i >= Math.max(0, newest - ON_A_PAGE); i--) {
      rows.add(row(visit, words, devices, all.get(i)));
    }
    ReasonTable table = new ReasonTable("log", all.size() + " entries, newest first", List.of(
        new ReasonTable.Column("Received", false), new ReasonTable.Column("No.", true), new ReasonTable.Column("What", false),
        new ReasonTable.Column("Entered by", false), new ReasonTable.Column("Device and its clock", false)), rows,
        "Page " + page + " of " + pages + ". The order of receipt counts; a device's own clock is a note only and may be wrong.");
    return new LogView(
        table, page > 1 ? "/log?page=" + (page - 1) : "", page < pages ? "/log?page=" + (page + 1) : "");
  }

  private static OptionalInt asked(Visit visit) {
    return Optional.ofNullable(visit.ctx().queryParam("page"))
        .filter(text -> text.matches("[1-9][0-9]{0,6}"))
        .map(text -> OptionalInt.of(Integer.parseInt(text)))
        .orElse(OptionalInt.empty());
  }

  /** Devices are told apart by numbers in the order in which they first entered anything that this reader may notice. */
  private static Map<String, Integer> devices(List<VisibleLog.Entry> all) {
    Map<String, Integer> numbers = new HashMap<>();
    all.stream().map(entry -> entry.recorded().by().device()).filter(device -> !device.isEmpty())
        .forEach(device -> numbers.putIfAbsent(device, numbers.size() + 1));
    return numbers;
  }

  private static ReasonTable.Row row(Visit visit, FactWords words, Map<String, Integer> devices, VisibleLog.Entry entry) {
    Actor by = entry.recorded().by();
    String clock = entry.recorded().deviceTime()
        .map(time -> "its clock said " + Frames.said(visit.event().clock(time))).orElse("");
    String device = by.device().isEmpty() ? "" : "device " + devices.get(by.device());
    return ReasonTable.Row.of(List.of(
        ReasonTable.Cell.of(visit.event().clock(entry.recorded().receivedAt()).truncatedTo(java.time.temporal.ChronoUnit.SECONDS).toString()),
        ReasonTable.Cell.of(Integer.toString(entry.number())),
        ReasonTable.Cell.of(words.sentence(entry.recorded().fact())),
        ReasonTable.Cell.of(by.role().code() + ", " + by.name()),
        ReasonTable.Cell.of(device.isEmpty() || clock.isEmpty() ? device + clock : device + ", " + clock)));
  }
}
