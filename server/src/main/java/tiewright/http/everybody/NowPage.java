package tiewright.http.everybody;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import tiewright.event.Court;
import tiewright.event.Event;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.TieProgress;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.CourtStrip;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.State;
import tiewright.http.views.NowView;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.NoticeViews;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TextOrder;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;
import tiewright.wording.Words;

/** What is on now, what comes next, what just ended. */
final class NowPage implements Page {
    private static final int A_FEW = 6;

    @Override
    public void at(Routes routes) {
        routes.everybodys("/", visit -> Screen.of("now", visit.words().say("page-everybody.on-now"), view(visit)));
    }

    static NowView view(Visit visit) {
        VisibleEvent event = visit.event();
        TieViews ties = visit.ties();
        List<Tie> waiting = TieOrder.sorted(event.ties().stream()
                .filter(tie -> event.goesOn(tie) && tie.calls().isEmpty() && tie.isReady())
                .toList());
        List<Tie> ended = new ArrayList<>(TieOrder.sorted(event.ties().stream()
                .filter(tie -> event.progress(tie).finished() && !tie.cards().isEmpty())
                .toList()));
        java.util.Collections.reverse(ended);
        List<Event.Posted> notices = event.notices();
        return new NowView(
                courts(event, ties, waiting),
                waiting.stream().limit(A_FEW).map(ties::line).toList(),
                ended.stream().limit(A_FEW).map(ties::line).toList(),
                notices.isEmpty()
                        ? Optional.empty()
                        : Optional.of(NoticeViews.notice(event, notices.get(notices.size() - 1))
                                .inShort()),
                !event.ties().isEmpty());
    }

    private static CourtStrip courts(VisibleEvent event, TieViews ties, List<Tie> waiting) {
        Map<String, CourtStrip.Court> strip = new TreeMap<>(TextOrder.NUMBERS_BY_VALUE);
        for (Court court : event.courts()) {
            strip.put(court.name(), court(event, ties, waiting, court));
        }
        return new CourtStrip(List.copyOf(strip.values()));
    }

    private static CourtStrip.Court court(VisibleEvent event, TieViews ties, List<Tie> waiting, Court court) {
        String next = waiting.stream()
                .filter(tie -> event.order().courts(tie).contains(court.name()))
                .findFirst()
                .map(tie -> Words.of(event).say("page-everybody.next", "tie", ties.title(tie), "tie2", ties.when(tie)))
                .orElse("");
        if (!court.usable()) {
            return new CourtStrip.Court(
                    Words.of(event).say("page-everybody.court"),
                    court.name(),
                    new State(Mark.STOP, Words.of(event).say("page-everybody.out-of-use")),
                    "",
                    "",
                    next);
        }
        Optional<Now> now = event.ties().stream()
                .filter(tie -> !event.isGone(tie))
                .flatMap(tie -> on(event, tie, court.name()).stream())
                .max(Comparator.comparing(one -> one.call().at()));
        return now.map(one -> new CourtStrip.Court(
                        Words.of(event).say("page-everybody.court"),
                        court.name(),
                        new State(Mark.PLAYING, "playing"),
                        ties.title(one.tie()) + ", "
                                + TieViews.rubber(one.rubber()).toLowerCase(java.util.Locale.ROOT),
                        Words.of(event)
                                .say(
                                        "page-everybody.called-at",
                                        "at",
                                        HallClock.said(event.clock(one.call().at()))),
                        next))
                .orElse(new CourtStrip.Court(
                        Words.of(event).say("page-everybody.court"), court.name(), State.NONE, "free", "", next));
    }

    private record Now(Tie tie, RubberNo rubber, Tie.Call call) {}

    /** The first unfinished rubber of the tie that was called to this court. */
    private static Optional<Now> on(VisibleEvent event, Tie tie, String court) {
        TieProgress progress = event.progress(tie);
        return tie.calls().entrySet().stream()
                .filter(call ->
                        call.getValue().court().equals(court) && progress.left().contains(call.getKey()))
                .findFirst()
                .map(call -> new Now(tie, call.getKey(), call.getValue()));
    }
}
