package tiewright.http.desk;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.event.Actor;
import tiewright.event.VisibleLog;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.views.LogView;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.Visit;
import tiewright.wording.FactWords;
import tiewright.wording.Words;

/** Entries of the log as tables: received when, the number, what, by whom, from which device. */
final class LogTables {
    private static final int BEHIND_A_LINE = 30;

    private final Visit visit;
    private final Words words;
    private final FactWords facts;
    private final Map<String, Integer> devices;

    /** @param whole all that this reader may notice: devices are numbered in the order in which they first entered anything */
    LogTables(Visit visit, List<VisibleLog.Entry> whole) {
        this.visit = visit;
        this.words = visit.words();
        this.facts = new FactWords(words);
        this.devices = devices(whole);
    }

    private static Map<String, Integer> devices(List<VisibleLog.Entry> all) {
        Map<String, Integer> numbers = new HashMap<>();
        all.stream()
                .map(entry -> entry.recorded().by().device())
                .filter(device -> !device.isEmpty())
                .forEach(device -> numbers.putIfAbsent(device, numbers.size() + 1));
        return numbers;
    }

    /** Entries from the newest on, so many behind a line each. */
    List<LogView.Earlier> earlier(List<VisibleLog.Entry> entries) {
        List<LogView.Earlier> parts = new ArrayList<>();
        for (int from = 0; from < entries.size(); from += BEHIND_A_LINE) {
            List<VisibleLog.Entry> part = entries.subList(from, Math.min(entries.size(), from + BEHIND_A_LINE));
            VisibleLog.Entry first = part.get(part.size() - 1);
            VisibleLog.Entry last = part.get(0);
            String line = words.say(
                    "page-desk.log-part",
                    "first",
                    first.number(),
                    "last",
                    last.number(),
                    "from",
                    HallClock.said(visit.event().clock(first.recorded().receivedAt())),
                    "until",
                    HallClock.said(visit.event().clock(last.recorded().receivedAt())));
            parts.add(new LogView.Earlier(line, table("log-" + first.number(), line, part, "")));
        }
        return parts;
    }

    ReasonTable table(String id, String caption, List<VisibleLog.Entry> entries, String foot) {
        return new ReasonTable(
                id,
                caption,
                List.of(
                        new ReasonTable.Column(words.say("page-desk.received"), false),
                        new ReasonTable.Column(words.say("page-desk.what"), false),
                        new ReasonTable.Column(words.say("page-desk.entered-by"), false),
                        new ReasonTable.Column(words.say("page-desk.no"), true),
                        new ReasonTable.Column(words.say("page-desk.device-and-its-clock"), false)),
                entries.stream().map(this::row).toList(),
                foot);
    }

    private ReasonTable.Row row(VisibleLog.Entry entry) {
        Actor by = entry.recorded().by();
        return ReasonTable.Row.of(List.of(
                ReasonTable.Cell.of(visit.event()
                        .clock(entry.recorded().receivedAt())
                        .truncatedTo(ChronoUnit.SECONDS)
                        .toString()),
                ReasonTable.Cell.of(facts.sentence(entry.recorded().fact())),
                ReasonTable.Cell.of(words.say(
                        "page-desk.log-by",
                        "role",
                        words.say("page-desk.role." + by.role().code()),
                        "name",
                        by.name())),
                ReasonTable.Cell.of(Integer.toString(entry.number())),
                ReasonTable.Cell.of(device(entry))));
    }

    /** Its number, and what its own clock said. */
    private String device(VisibleLog.Entry entry) {
        String clock = entry.recorded()
                .deviceTime()
                .map(time -> words.say(
                        "page-desk.its-clock-said",
                        "time",
                        HallClock.said(visit.event().clock(time))))
                .orElse("");
        String device = Optional.ofNullable(devices.get(entry.recorded().by().device()))
                .map(number -> words.say("page-desk.device", "device", number))
                .orElse("");
        return device.isEmpty() || clock.isEmpty() ? device + clock : device + ", " + clock;
    }
}
