package tiewright.saturday;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.Side;
import tiewright.event.Tie;

/** Whoever's published time, court or opponent a step changed stands on the list of a notice of that step. */
final class WhoHasToKnow implements Promise {
    private @Nullable Event before;

    @Override
    public List<Broken> broken(Moment moment) {
        Event was = before;
        before = moment.event();
        List<Broken> broken = new ArrayList<>();
        if (was != null) {
            Set<ClubId> listed = new HashSet<>(moment.event().withdrawals().keySet());
            moment.event().notices().stream()
                    .skip(was.notices().size())
                    .map(posted -> posted.notice().number())
                    .forEach(number -> listed.addAll(moment.event().order().concerned(number)));
            for (Tie tie : was.ties().values()) {
                Set<ClubId> missing = touched(tie, moment.event().tie(tie.id()));
                if (!missing.isEmpty()) {
                    moment.met(Looked.CHANGED_FOR_SOMEBODY);
                }
                missing.removeAll(listed);
                if (!missing.isEmpty()) {
                    broken.add(
                            new Broken(15, "tie " + tie.id() + " changed for " + missing + ", whom no notice names"));
                }
            }
        }
        return broken;
    }

    private static Set<ClubId> touched(Tie was, Optional<Tie> is) {
        Set<ClubId> clubs = new HashSet<>();
        boolean moved = was.start().isPresent() && !is.map(Tie::start).equals(Optional.of(was.start()))
                || was.court().isPresent() && !is.map(Tie::court).equals(Optional.of(was.court()));
        boolean others = List.of(Side.values()).stream()
                .anyMatch(side -> was.club(side).isPresent()
                        && !is.map(tie -> tie.club(side)).equals(Optional.of(was.club(side))));
        if (moved || others) {
            clubs.addAll(was.clubs());
            is.ifPresent(tie -> clubs.addAll(tie.clubs()));
        }
        return clubs;
    }
}
