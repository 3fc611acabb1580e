package tiewright.timetable;

import java.util.List;
import java.util.Optional;
import tiewright.event.Event;
import tiewright.event.Tie;

/** Published starts that cannot both be kept. */
public final class DoubleBookings {
    private DoubleBookings() {}

    /** The first club that has two ties at the same time, both still to be played; empty if there is none. */
    public static Optional<Reason> of(Event event) {
        List<Tie> open = event.ties().values().stream()
                .filter(tie -> tie.start().isPresent() && !event.progress(tie).finished())
                .toList();
        for (Tie one : open) {
            for (Tie other : open) {
                boolean same =
                        open.indexOf(one) < open.indexOf(other) && one.start().equals(other.start());
                Optional<Reason> twice = same ? shared(one, other) : Optional.empty();
                if (twice.isPresent()) {
                    return twice;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Reason> shared(Tie one, Tie other) {
        return java.util.Arrays.stream(tiewright.event.Side.values())
                .flatMap(side -> one.club(side).stream())
                .filter(other::has)
                .findFirst()
                .map(club -> Reason.of("club-twice")
                        .with("club", club)
                        .with("one", one.id())
                        .with("other", other.id())
                        .with("start", one.start().orElseThrow())
                        .with("otherStart", other.start().orElseThrow()));
    }
}
