package tiewright.saturday;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jsoup.nodes.Element;
import tiewright.conditions.Conditions;
import tiewright.conditions.LateSheet;
import tiewright.event.Deadlines;
import tiewright.event.ExchangeId;
import tiewright.event.TieId;

/** A sheet that is still taken never reads as too late, and no page says a time of opening that is past. */
final class OpenFormsReadOpen implements Promise {
    @Override
    public List<Broken> broken(Moment moment) {
        List<Broken> broken = new ArrayList<>();
        for (Sight sight : moment.fresh()) {
            if (sight.isRead() && sight.path().matches("/captain/(sheet|decider)/[^/]+")) {
                look(moment, sight, sight.path(), sight.text()).forEach(broken::add);
            } else if (sight.isRead() && sight.path().equals("/captain")) {
                for (Element due : sight.page().select("section.now[data-deadline]")) {
                    String way = due.select(".presses a").attr("href");
                    look(moment, sight, way, due.text()).forEach(broken::add);
                }
            }
        }
        return broken;
    }

    /** What is said about the sheet or pair that is named at this address. */
    private static List<Broken> look(Moment moment, Sight sight, String address, String said) {
        TieId tie = TieId.of(address.replaceFirst(".*/", ""));
        ExchangeId id = address.startsWith("/captain/sheet") ? ExchangeId.sheets(tie) : ExchangeId.decider(tie);
        List<Broken> broken = new ArrayList<>();
        Optional<Instant> past =
                Deadlines.of(moment.event(), id).filter(at -> !moment.now().isBefore(at));
        if (past.filter(at -> isTaken(at, moment)).isPresent()) {
            moment.met(Looked.DEADLINE_PAST_AND_TAKEN);
            if (said.contains("has passed: see the desk")) {
                broken.add(new Broken(8, sight + " reads as closed at " + moment.clock() + ": " + said));
            }
        }
        if (past.isPresent() && said.toLowerCase(Locale.ROOT).contains("both open at")) {
            broken.add(new Broken(8, sight + " promises at " + moment.clock() + " an opening that is past: " + said));
        }
        return broken;
    }

    private static boolean isTaken(Instant deadline, Moment moment) {
        Conditions conditions = moment.event().conditions();
        int grace = conditions.lateSheet() == LateSheet.GRACE ? conditions.graceMinutes() : 0;
        return moment.now().isBefore(deadline.plus(Duration.ofMinutes(1L + grace)));
    }
}
