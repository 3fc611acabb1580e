package tiewright.http.captain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tiewright.event.ExchangeId;
import tiewright.event.Tie;
import tiewright.event.TieProgress;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.Countdown;
import tiewright.http.views.CaptainView;
import tiewright.http.visit.Countdowns;
import tiewright.http.visit.Door;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;

/** A captain's ties: what is due, and the way to each sheet, proposal and decider. */
final class CaptainPages implements Page {
    @Override
    public void at(Routes routes) {
        routes.get(
                Door.CAPTAIN,
                "/captain",
                visit -> visit.show(Screen.of(
                        "captain",
                        visit.words()
                                .say(
                                        "page-captain.my-ties",
                                        "club",
                                        visit.event().clubName(visit.club())),
                        view(visit))));
    }

    private static CaptainView view(Visit visit) {
        VisibleEvent event = visit.event();
        TieViews views = new TieViews(event);
        List<Countdown> countdowns = new ArrayList<>();
        List<CaptainView.Mine> mine = new ArrayList<>();
        for (Tie tie : openFirst(event, TieOrder.sorted(event.tiesOf(visit.club())))) {
            Countdowns.of(visit, views, tie).forEach(countdowns::add);
            mine.add(new CaptainView.Mine(views.line(tie), todo(visit, tie)));
        }
        boolean read = event.conditionsRead(visit.club()) >= event.conditionsVersion();
        Optional<String> unread = read || event.conditionsVersion() == 0
                ? Optional.empty()
                : Optional.of(visit.words()
                        .say(
                                "page-captain.read-version-of-the-conditions",
                                "conditionsVersion",
                                event.conditionsVersion()));
        return new CaptainView(countdowns, mine, unread, "/club/" + visit.club());
    }

    private static List<Tie> openFirst(VisibleEvent event, List<Tie> ties) {
        return ties.stream()
                .sorted(Comparator.comparing(tie -> event.isGone(tie)
                        || event.progress(tie).finished() && !tie.cards().isEmpty()))
                .toList();
    }

    private static List<CaptainView.Todo> todo(Visit visit, Tie tie) {
        TieProgress progress = visit.event().progress(tie);
        List<CaptainView.Todo> todo = new ArrayList<>();
        if (!tie.isReady()
                || visit.event().isGone(tie)
                || progress.finished() && !tie.cards().isEmpty()) {
            return todo;
        }
        if (!tie.isOpened()) {
            boolean in = Countdowns.isIn(visit, tie, ExchangeId.sheets(tie.id()));
            todo.add(new CaptainView.Todo(
                    in
                            ? visit.words().say("page-captain.my-sealed-sheet")
                            : visit.words().say("page-captain.name-the-pairs"),
                    "/captain/sheet/" + tie.id(),
                    !in));
            todo.add(new CaptainView.Todo(
                    visit.words().say("page-captain.proposal"), "/captain/proposal/" + tie.id(), false));
        } else {
            todo.add(
                    new CaptainView.Todo(visit.words().say("page-captain.enter-a-score"), "/cards/" + tie.id(), false));
        }
        if (!tie.isDeciderOpened() && progress.canComeToDecider()) {
            boolean wanted = progress.awaitsDecider();
            boolean in = Countdowns.isIn(visit, tie, ExchangeId.decider(tie.id()));
            if (wanted) {
                todo.add(new CaptainView.Todo(
                        visit.words().say("page-captain.who-could-play-it"), "/captain/proposal/" + tie.id(), false));
            }
            todo.add(new CaptainView.Todo(
                    in
                            ? visit.words().say("page-captain.my-sealed-pair-for-a")
                            : wanted
                                    ? visit.words().say("page-captain.name-the-pair-for-the")
                                    : visit.words().say("page-captain.seal-a-pair-for-a"),
                    "/captain/decider/" + tie.id(),
                    wanted && !in));
        }
        return todo;
    }
}
