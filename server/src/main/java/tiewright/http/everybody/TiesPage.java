package tiewright.http.everybody;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tiewright.event.Tie;
import tiewright.event.VisibleEvent;
import tiewright.http.pieces.CopyText;
import tiewright.http.pieces.TieLine;
import tiewright.http.views.TiesView;
import tiewright.http.visit.Door;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.Page;
import tiewright.http.visit.Routes;
import tiewright.http.visit.Screen;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;

/** All ties in the order of play, and one tie with its sheets, receipts and card. */
final class TiesPage implements Page {

    @Override
    public void at(Routes routes) {
        routes.everybodys(
                "/ties", visit -> Screen.of("ties", visit.say("page-everybody.order-of-the-ties"), all(visit)));
        routes.get(Door.ANYBODY, "/tie/{tie}", visit -> {
            Tie tie = visit.tie();
            visit.show(Screen.of("tie", new TieViews(visit.event()).title(tie), new OneTie(visit, tie).view()));
        });
    }

    private static TiesView all(Visit visit) {
        VisibleEvent event = visit.event();
        TieViews views = visit.ties();
        Map<String, List<TieLine>> slots = new LinkedHashMap<>();
        List<String> text = new ArrayList<>();
        for (Tie tie : TieOrder.sorted(List.copyOf(event.ties()))) {
            slots.computeIfAbsent(
                            tie.start().map(HallClock::said).orElse(visit.say("page-everybody.without-a-time")),
                            start -> new ArrayList<>())
                    .add(views.line(tie));
            text.add(line(views, tie));
        }
        return new TiesView(
                slots.entrySet().stream()
                        .map(slot -> new TiesView.Slot(slot.getKey(), List.copyOf(slot.getValue())))
                        .toList(),
                new CopyText(
                        "copy-ties",
                        visit.say("page-everybody.order-of-the-ties-as"),
                        String.join("\n", text),
                        visit.say("page-everybody.copy"),
                        visit.say("page-everybody.copied")));
    }

    private static String line(TieViews views, Tie tie) {
        TieLine line = views.line(tie);
        String score = line.homeScore().isEmpty() ? "" : " " + line.homeScore() + "-" + line.awayScore();
        return line.when() + " " + line.where() + (line.where().isEmpty() ? "" : " ") + views.title(tie) + score;
    }
}
