package tiewright.http.desk;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
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
import tiewright.http.views.LogView;
import tiewright.http.visit.Door;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Visit;
import tiewright.wording.Words;

/** What was entered, when, by whom, from which device: newest first, and nothing here can change it. */
final class LogPage implements Page {
    private static final int ON_A_PAGE = 100;

    /** What stands open: a phone shows that many within three screens. */
    private static final int OPEN = 8;

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
        int newest = all.size() - (page - 1) * ON_A_PAGE;
        List<VisibleLog.Entry> shown = new ArrayList<>(all.subList(Math.max(0, newest - ON_A_PAGE), newest));
        Collections.reverse(shown);
        LogTables tables = new LogTables(visit, whole);
        Words words = visit.words();
        return new LogView(
                tables.table(
                        "log",
                        heading(words, all.size(), tie, rubber),
                        shown.subList(0, Math.min(OPEN, shown.size())),
                        words.say("page-desk.page-of-the-order-of", "page", page, "pages", pages)),
                tables.earlier(shown.subList(Math.min(OPEN, shown.size()), shown.size())),
                page > 1 ? "/log?page=" + (page - 1) + query(tie, rubber) : "",
                page < pages ? "/log?page=" + (page + 1) + query(tie, rubber) : "");
    }

    private static String heading(Words words, int entries, Optional<TieId> tie, Optional<RubberNo> rubber) {
        return tie.isEmpty()
                ? words.say("page-desk.log-of-all", "entries", entries)
                : rubber.map(no -> words.say(
                                "page-desk.log-of-rubber", "entries", entries, "tie", tie.get(), "rubber", no))
                        .orElseGet(() -> words.say("page-desk.log-of-tie", "entries", entries, "tie", tie.get()));
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
        Optional<RubberNo> own = rubber(fact);
        return tie(fact).equals(tie) && (rubber.isEmpty() || own.isEmpty() || own.equals(rubber));
    }

    private static Optional<TieId> tie(Fact fact) {
        if (fact instanceof PlayFact play) {
            return Optional.of(play.tie());
        }
        if (fact instanceof ExchangeFact exchange) {
            return Optional.of(exchange.exchange().tie());
        }
        if (fact instanceof OfficialFact.CorrectionDecided decided) {
            return Optional.of(decided.tie());
        }
        if (fact instanceof OfficialFact.CaseRuled ruled) {
            return Optional.of(ruled.tie());
        }
        return fact instanceof DrawFact.TieRestarted restarted ? Optional.of(restarted.tie()) : Optional.empty();
    }

    private static Optional<RubberNo> rubber(Fact fact) {
        if (fact instanceof PlayFact.CardEntered entered) {
            return Optional.of(entered.rubber());
        }
        if (fact instanceof PlayFact.CardCorrected corrected) {
            return Optional.of(corrected.rubber());
        }
        if (fact instanceof PlayFact.CardTakenBack takenBack) {
            return Optional.of(takenBack.rubber());
        }
        return fact instanceof OfficialFact.CorrectionDecided decided
                ? Optional.of(decided.rubber())
                : Optional.empty();
    }

    private static OptionalInt asked(Visit visit) {
        return Optional.ofNullable(visit.ctx().queryParam("page"))
                .filter(text -> text.matches("[1-9][0-9]{0,6}"))
                .map(text -> OptionalInt.of(Integer.parseInt(text)))
                .orElse(OptionalInt.empty());
    }
}
