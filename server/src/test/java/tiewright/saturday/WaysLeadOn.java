package tiewright.saturday;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;
import tiewright.event.Role;

/** A way that a page offers opens for whom it is offered, and what is asked to be done can be done where it leads. */
final class WaysLeadOn implements Promise {
    private static final Set<Role> OFFICIALS = Set.of(Role.DESK, Role.ORGANISER, Role.REFEREE);

    @Override
    public List<Broken> broken(Moment moment) {
        Stream<Broken> closed = moment.sights().stream()
                .filter(sight -> (sight.status() == 404 || sight.status() == 403)
                        && !sight.who().isOut(moment.event()))
                .map(sight -> new Broken(23, sight + " was offered and does not open"));
        Stream<Broken> idle = moment.fresh().stream()
                .filter(sight -> sight.isRead()
                        && sight.path().equals("/desk")
                        && OFFICIALS.contains(sight.who().role()))
                .flatMap(sight -> todo(sight, moment));
        return Stream.concat(closed, idle).toList();
    }

    private static Stream<Broken> todo(Sight desk, Moment moment) {
        return desk.page().select("#do-next li").stream()
                .filter(line -> line.selectFirst("a[href]") != null)
                .filter(line -> !canBeDone(moment, desk.who(), line))
                .map(line -> new Broken(
                        16,
                        "to do at " + moment.clock() + " for " + desk.who() + ": \"" + line.text()
                                + "\", and nothing can be pressed there"));
    }

    /** Some lines only send somebody to look or to tell people; those that say that it can be called lead to a call. */
    private static boolean canBeDone(Moment moment, Person who, Element line) {
        if (!line.text().contains("can be called")) {
            return true;
        }
        moment.met(Looked.TO_BE_CALLED);
        Sight there = who.look(line.selectFirst("a[href]").attr("href"));
        return there.forms().stream().anyMatch(form -> form.attr("action").endsWith("/call"));
    }
}
