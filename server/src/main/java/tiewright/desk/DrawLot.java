package tiewright.desk;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import tiewright.draw.LotOrder;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.OfficialFact;
import tiewright.event.Refusal;
import tiewright.event.Saying;

/**
 * A lot parts clubs of a finished pool that nothing else can, from words that a witness spoke in public. The words go out
 * in a notice, so that anybody can draw again ({@link LotOrder}).
 *
 * @param level the clubs that share a place, in any order
 */
public record DrawLot(String pool, List<ClubId> level, String spokenSeed, String witness) implements Decision {
    public DrawLot {
        level = List.copyOf(level);
    }

    @Override
    public Outcome decide(Event event, Given given) {
        PoolEnd end = PoolEnd.of(event, pool);
        Asked asked = Asked.byOfficial(given)
                .text("spokenSeed", spokenSeed, Asked.SHORT)
                .text("witness", witness, Asked.SHORT)
                .all(end.unfinished());
        if (asked.isFine()) {
            boolean only = end.table().lotsToDraw().stream().anyMatch(this::isAmongJustThese);
            asked.unless(
                    only,
                    Refusal.of("desk.no-lot-among")
                            .with("pool", pool)
                            .with("clubs", level)
                            .at("level"));
        }
        return asked.isFine() ? drawn(event) : asked.refused();
    }

    private boolean isAmongJustThese(List<ClubId> group) {
        return level.size() == group.size() && Set.copyOf(group).equals(Set.copyOf(level));
    }

    private Outcome drawn(Event event) {
        List<ClubId> order = LotOrder.of(pool, level, spokenSeed);
        List<String> names = order.stream()
                .map(club -> event.club(club).map(known -> known.name()).orElse(club.code()))
                .toList();
        return Accepted.of(
                new OfficialFact.LotDrawn(pool, order, witness.strip()),
                new OfficialFact.NoticeStated(
                        Numbers.notice(event),
                        Saying.of("notices.lot-drawn").with("pool", pool).with("witness", witness.strip()),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(Saying.of("notices.lot-order").withEach("clubs", names)),
                        Saying.of("notices.spoken-words").with("words", spokenSeed.strip())));
    }
}
