package tiewright.saturday;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What was sent twice counts once, and what was sent once is never taken for a repeat of something else. */
final class CountsOnce implements Promise {
    private final Set<String> keys = new HashSet<>();

    @Override
    public List<Broken> broken(Moment moment) {
        List<Broken> broken = new ArrayList<>();
        for (Log.Sent again : moment.log().again()) {
            if (again.after() > again.before()) {
                broken.add(new Broken(25, "sent a second time, it counted a second time: " + again));
            }
        }
        for (Log.Sent sent : moment.log().sent()) {
            boolean isFresh = sent.fields().stream()
                    .filter(field -> field.getKey().equals("key"))
                    .allMatch(field -> keys.add(field.getValue()));
            boolean wentOn = sent.answer().status() == 200
                    && !sent.answer().path().equals(sent.action())
                    && sent.answer().text().contains("Not done");
            if (isFresh && wentOn) {
                broken.add(new Broken(26, "a new form was answered as if it were an old one: " + sent));
            }
        }
        return broken;
    }
}
