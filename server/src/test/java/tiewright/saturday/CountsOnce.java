package tiewright.saturday;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** What was sent twice counts once, and what was sent once is never taken for a repeat of something else. */
final class CountsOnce implements Promise {
    /** What is sent there and taken is written down, whatever it says. */
    private static final Pattern LEAVES_A_FACT =
            Pattern.compile("/cards/[^/]+/[^/]+|/desk/tie/[^/]+/(call|replace|return)|/organiser/rulings");

    private final Set<String> known = new HashSet<>();

    @Override
    public List<Broken> broken(Moment moment) {
        List<Broken> broken = new ArrayList<>();
        for (Log.Sent again : moment.log().again()) {
            moment.met(Looked.SENT_AGAIN);
            if (again.after() > again.before()) {
                broken.add(new Broken(25, "sent a second time, it counted a second time: " + again));
            }
        }
        for (Log.Sent sent : moment.log().sent()) {
            boolean isNew = known.add(sent.who() + " " + sent.action() + " " + sent.fields());
            if (isNew && LEAVES_A_FACT.matcher(sent.action()).matches() && sent.isTaken() && !sent.isDone()) {
                broken.add(new Broken(26, "something new was answered as if it were a repeat: " + sent));
            }
        }
        return broken;
    }
}
