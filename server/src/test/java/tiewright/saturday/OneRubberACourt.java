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
        for (Sight now : moment.fresh()) {
            if (!now.isRead() || !now.path().equals("/")) {
                continue;
            }
            for (Element court : now.page().select(".courts > li")) {
                Element number = court.selectFirst(".court-number");
                if (number == null) {
                    continue;
                }
                String name = number.text().replace("Court", "").strip();
                boolean saysFree = court.select(".now").text().equals("free");
                if (saysFree == on.containsKey(name)) {
                    broken.add(new Broken(
                            11,
                            "court " + name + " has " + on.getOrDefault(name, List.of())
                                    + " on it, and the first page says \""
                                    + court.select(".on").text() + "\""));
                }
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
