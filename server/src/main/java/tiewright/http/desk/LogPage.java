package tiewright.http.desk;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import tiewright.event.Actor;
import tiewright.event.Codes;
import tiewright.event.DrawFact;
import tiewright.event.ExchangeFact;
import tiewright.event.Fact;
import tiewright.event.OfficialFact;
import tiewright.event.PlayFact;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.event.VisibleLog;
import tiewright.http.answers.Answers;
import tiewright.http.pieces.ReasonTable;
import tiewright.http.views.LogView;
import tiewright.http.visit.Door;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Visit;
import tiewright.wording.FactWords;

/** What was entered, when, by whom, from which device: newest first, and nothing here can change it. */
final class LogPage implements Page {
    private static final int ON_A_PAGE = 100;

    @Override
    public void at(Routes routes) {
        routes.get(Door.DESK, "/log", visit -> visit.show(Screen.of("log", visit.say("page-desk.log"), view(visit))));
    }

    private static LogView view(Visit visit) {
        List<VisibleLog.Entry> whole = visit.ask(Answers::new).log();
        Optional<TieId> tie = param(visit, "tie").filter(Codes::isCode).map(TieId::of);
        Optional<RubberNo> rubber = param(visit, "rubber").flatMap(RubberNo::parse);
        List<VisibleLog.Entry> all = whole.stream()
                .filter(entry -> isAbout(entry.recorded().fact(), tie, rubber))
                .toList();
        int pages = Math.max(1, (all.size() + ON_A_PAGE - 1) / ON_A_PAGE);
        int page = Math.min(pages, asked(visit).orElse(1));
        List<ReasonTable.Row> rows = new ArrayList<>();
        FactWords words = new FactWords(visit.words());
        Map<String, Integer> devices = devices(whole);
        int newest = all.size() - (page - 1) * ON_A_PAGE;
        for (int i = newest - 1; i >= Math.max(0, newest - ON_A_PAGE); i--) {
            rows.add(row(visit, words, devices, all.get(i)));
        }
        ReasonTable table = new ReasonTable(
                "log",
                all.size() + " entries" + tie.map(id -> " about tie " + id).orElse("")
                        + rubber.map(no -> ", rubber " + no).orElse("") + ", newest first",
                List.of(
                        new ReasonTable.Column(visit.say("page-desk.received"), false),
                        new ReasonTable.Column(visit.say("page-desk.no"), true),
                        new ReasonTable.Column(visit.say("page-desk.what"), false),
                        new ReasonTable.Column(visit.say("page-desk.entered-by"), false),
                        new ReasonTable.Column(visit.say("page-desk.device-and-its-clock"), false)),
                rows,
                visit.say("page-desk.page-of-the-order-of", "page", page, "pages", pages));
        return new LogView(
                table,
                page > 1 ? "/log?page=" + (page - 1) + query(tie, rubber) : "",
                page < pages ? "/log?page=" + (page + 1) + query(tie, rubber) : "");
    }

    private static String query(Optional<TieId> tie, Optional<RubberNo> rubber) {
        return tie.map(id -> "&tie=" + URLEncoder.encode(id.code(), StandardCharsets.UTF_8))
                        .orElse("")
                + rubber.map(no -> "&rubber=" + no).orElse("");
    }

    /** Where everything entered about one rubber is read: who, when received, from which device, every earlier value. */
    static String of(Tie tie, RubberNo rubber) {
        return "/log?tie=" + URLEncoder.encode(tie.id().code(), StandardCharsets.UTF_8) + "&rubber=" + rubber;
    }

    private static Optional<String> param(Visit visit, String name) {
        return Optional.ofNullable(visit.ctx().queryParam(name)).filter(text -> !text.isBlank());
    }

    /** Facts of the tie that concern this rubber or the tie as a whole; everything where no tie is asked for. */
    private static boolean isAbout(Fact fact, Optional<TieId> tie, Optional<RubberNo> rubber) {
        if (tie.isEmpty()) {
            return true;
        }
        Optional<RubberNo> own = Optional.empty();
        Optional<TieId> about = Optional.empty();
        if (fact instanceof PlayFact play) {
            about = Optional.of(play.tie());
            own = play instanceof PlayFact.CardEntered one
                    ? Optional.of(one.rubber())
                    : play instanceof PlayFact.CardCorrected two
                            ? Optional.of(two.rubber())
                            : play instanceof PlayFact.CardTakenBack three
                                    ? Optional.of(three.rubber())
                                    : Optional.empty();
        } else if (fact instanceof ExchangeFact exchange) {
            about = Optional.of(exchange.exchange().tie());
        } else if (fact instanceof OfficialFact.CorrectionDecided decided) {
            about = Optional.of(decided.tie());
            own = Optional.of(decided.rubber());
        } else if (fact instanceof OfficialFact.CaseRuled ruled) {
            about = Optional.of(ruled.tie());
        } else if (fact instanceof DrawFact.TieRestarted restarted) {
            about = Optional.of(restarted.tie());
        }
        return about.equals(tie) && (rubber.isEmpty() || own.isEmpty() || own.equals(rubber));
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
        all.stream()
                .map(entry -> entry.recorded().by().device())
                .filter(device -> !device.isEmpty())
                .forEach(device -> numbers.putIfAbsent(device, numbers.size() + 1));
        return numbers;
    }

    private static ReasonTable.Row row(
            Visit visit, FactWords words, Map<String, Integer> devices, VisibleLog.Entry entry) {
        Actor by = entry.recorded().by();
        String clock = entry.recorded()
                .deviceTime()
                .map(time -> visit.say(
                        "page-desk.its-clock-said",
                        "time",
                        HallClock.said(visit.event().clock(time))))
                .orElse("");
        String device = Optional.ofNullable(devices.get(by.device()))
                .map(number -> visit.say("page-desk.device", "device", number))
                .orElse("");
        return ReasonTable.Row.of(List.of(
                ReasonTable.Cell.of(visit.event()
                        .clock(entry.recorded().receivedAt())
                        .truncatedTo(java.time.temporal.ChronoUnit.SECONDS)
                        .toString()),
                ReasonTable.Cell.of(Integer.toString(entry.number())),
                ReasonTable.Cell.of(words.sentence(entry.recorded().fact())),
                ReasonTable.Cell.of(by.role().code() + ", " + by.name()),
                ReasonTable.Cell.of(device.isEmpty() || clock.isEmpty() ? device + clock : device + ", " + clock)));
    }
}
