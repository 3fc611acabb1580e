package tiewright.ledger;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import tiewright.event.Directory;
import tiewright.event.Event;
import tiewright.event.Recorded;

/** The facts, what they fold into and the names, all as of one moment; reading it never touches the database. */
record Memory(List<Recorded> facts, Event event, Directory directory) {
    static Memory of(Store store) {
        List<Recorded> facts = store.facts();
        return new Memory(facts, Event.of(facts), store.directory());
    }

    Memory then(List<Recorded> more, Event event, Directory directory) {
        List<Recorded> all = new ArrayList<>(facts);
        all.addAll(more);
        return new Memory(Collections.unmodifiableList(all), event, directory);
    }

    List<Recorded> after(long seq) {
        return facts.subList(Math.toIntExact(Math.min(Math.max(seq, 0), facts.size())), facts.size());
    }

    Event asOf(long seq) {
        if (seq < 0 || seq > facts.size()) {
            throw new IllegalArgumentException("there is no fact " + seq + ", the last is " + facts.size());
        }
        return Event.of(facts.subList(0, Math.toIntExact(seq)));
    }
}
