package tiewright.saturday;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
                String tie = sight.path().replaceFirst(".*/", "");
                ExchangeId id = sight.path().startsWith("/captain/sheet")
                        ? ExchangeId.sheets(TieId.of(tie))
                        : ExchangeId.decider(TieId.of(tie));
                Optional<Instant> deadline = Deadlines.of(moment.event(), id);
                String left = sight.page().select(".countdown .left").text();
                if (deadline.filter(at -> isTaken(at, moment)).isPresent() && left.contains("see the desk")) {
                    broken.add(new Broken(8, sight + " reads as closed at " + moment.clock() + ": " + left));
                }
                if (deadline.filter(at -> !moment.now().isBefore(at)).isPresent()
                        && sight.text().contains("Both open at")) {
                    broken.add(new Broken(8, sight + " promises at " + moment.clock() + " an opening that is past"));
                }
            }
        }
        return broken;
    }

    private static boolean isTaken(Instant deadline, Moment moment) {
        Conditions conditions = moment.event().conditions();
        int grace = conditions.lateSheet() == LateSheet.GRACE ? conditions.graceMinutes() : 0;
        return moment.now().isBefore(deadline.plus(Duration.ofMinutes(1L + grace)));
    }
}
