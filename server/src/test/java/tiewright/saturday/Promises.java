package tiewright.saturday;

import java.util.ArrayList;
import java.util.List;

/** All promises that this machine looks at, after each step. */
final class Promises {
    private final List<Promise> all = List.of(
            new NothingFails(),
            new CountsOnce(),
            new OpensWhenDue(),
            new OneRubberACourt(),
            new NothingToldTooLate(),
            new OpenFormsReadOpen(),
            new HurtIsAsked(),
            new NothingBeforeItsTime(),
            new NoticesStay(),
            new WhoHasToKnow(),
            new ResultsHaveASide(),
            new NotPlayedIsNotComing(),
            new PagesSayTheirAge(),
            new WaysLeadOn(),
            new MinorsAreShort(),
            new AskedOnce(),
            new LateLinksReadNothing());

    List<Broken> look(Moment moment) {
        List<Broken> broken = new ArrayList<>();
        all.forEach(promise -> broken.addAll(promise.broken(moment)));
        return broken;
    }
}
