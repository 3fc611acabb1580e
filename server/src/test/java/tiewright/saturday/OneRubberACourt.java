package tiewright.saturday;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jsoup.nodes.Element;
import tiewright.event.Card;
import tiewright.event.Event;

/** A court has at most one rubber on it, and every page says of a court what is on it. */
final class OneRubberACourt implements Promise {
    @Override
    public List<Broken> broken(Moment moment) {
        List<Broken> broken = new ArrayList<>();
        SortedMap<String, List<String>> on = onCourt(moment.event());
        on.forEach((court, rubbers) -> {
            if (rubbers.size() > 1) {
                broken.add(new Broken(11, "court " + court + " has " + String.join(" and ", rubbers) + " on it"));
            }
        });
        if (!on.isEmpty()) {
            moment.met(Looked.COURT_IN_PLAY);
        }
        for (Sight now : moment.fresh()) {
            if (now.isRead() && now.path().matches("/([?].*)?")) {
                broken.addAll(saidFree(moment, now, on));
            } else if (now.isRead() && now.path().equals("/desk")) {
                broken.addAll(atTheDesk(moment, now, on));
            }
        }
        return broken;
    }

    /** The first page names the courts that are free. */
    private static List<Broken> saidFree(Moment moment, Sight now, SortedMap<String, List<String>> on) {
        List<Broken> broken = new ArrayList<>();
        for (Element line : now.page().select("#now > div:first-child > p.quiet")) {
            moment.met(Looked.FREE_COURTS_SAID);
            on.keySet().stream()
                    .filter(court -> line.text().matches(".*\\b" + court + "\\b.* free[.]"))
                    .forEach(court -> broken.add(new Broken(
                            11,
                            "court " + court + " has " + on.get(court) + " on it, and " + now + " says \"" + line.text()
                                    + "\"")));
        }
        return broken;
    }

    /** The desk shows of each court whether something is on it. */
    private static List<Broken> atTheDesk(Moment moment, Sight desk, SortedMap<String, List<String>> on) {
        List<Broken> broken = new ArrayList<>();
        for (Element spot : desk.page().select(".floor > .spot")) {
            moment.met(Looked.COURT_AT_THE_DESK);
            String court = spot.select("h2 a").text().replace("Court", "").strip();
            boolean runs = !spot.select(".how[data-since]").isEmpty();
            if (spot.hasClass("spot-free") && on.containsKey(court) || runs && !on.containsKey(court)) {
                broken.add(new Broken(
                        11,
                        "court " + court + " has " + on.getOrDefault(court, List.of()) + " on it, and " + desk
                                + " says \"" + spot.text() + "\""));
            }
        }
        return broken;
    }

    /** Rubbers that were called and have no score yet, by court. */
    private static SortedMap<String, List<String>> onCourt(Event event) {
        SortedMap<String, List<String>> on = new TreeMap<>();
        event.ties().values().stream()
                .filter(tie -> event.withdrawals().keySet().stream().noneMatch(tie::has))
                .forEach(tie -> tie.calls().forEach((rubber, call) -> {
                    boolean isOver = tie.card(rubber).standing() != Card.Standing.EMPTY
                            || event.progress(tie).finished();
                    if (!isOver) {
                        on.computeIfAbsent(call.court(), court -> new ArrayList<>())
                                .add("tie " + tie.id() + " rubber " + rubber);
                    }
                }));
        return on;
    }
}
