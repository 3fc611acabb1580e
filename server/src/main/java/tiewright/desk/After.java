package tiewright.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.draw.SlotFills;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.Recorded;

/** What follows from facts about to be appended, and is appended with them. */
final class After {
  private After() {}

  /** The event once these facts are in. */
  static Event of(Event event, Decision.Given given, List<? extends Fact> facts) {
    List<Recorded> recorded = new ArrayList<>();
    for (Fact fact : facts) {
      recorded.add(new Recorded(
          event.seq() + recorded.size() + 1, fact, given.by(), Optional.empty(), given.now()));
    }
    return event.then(recorded);
  }

  /** The facts, then the slots whose club is certain through them. */
  static Decision.Accepted accepted(Event event, Decision.Given given, List<? extends Fact> facts) {
    List<Fact> all = new ArrayList<>(facts);
    all.addAll(SlotFills.of(of(event, given, facts)));
    return new Decision.Accepted(all, List.of());
  }
}
