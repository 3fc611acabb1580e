package tiewright.desk;

import java.util.List;
import java.util.Locale;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.Saying;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieProgress;

/** Why a club stands where it does in the final order: its last tie or its place in the pool, and what parts it from its like. */
final class FinalReasons {
    private final Event event;
    private final PoolRecord pools;

    FinalReasons(Event event, PoolRecord pools) {
        this.event = event;
        this.pools = pools;
    }

    /** How the club's tie ended, own rubbers first. */
    Saying tie(Tie tie, ClubId club) {
        Side side = tie.sideOf(club).orElseThrow();
        TieProgress progress = event.progress(tie);
        boolean won = progress.winner().filter(side::equals).isPresent();
        return Saying.of(progress.rubbers().isEmpty() ? withoutPlay(won) : withPlay(won))
                .with("tie", tie.id())
                .with("other", tie.club(side.other()).map(this::name).orElse(""))
                .with("score", progress.won(side) + "-" + progress.won(side.other()));
    }

    private static String withPlay(boolean won) {
        return won ? "notices.final-won-with-play" : "notices.final-lost-with-play";
    }

    private static String withoutPlay(boolean won) {
        return won ? "notices.final-won-without-play" : "notices.final-lost-without-play";
    }

    Saying pool(ClubId club) {
        return Saying.of("notices.place-of-pool")
                .with("place", pools.place(club))
                .with("pool", pools.pool(club));
    }

    /** What parts a club from the next one of its group, the last from the one before; nothing where it stands alone. */
    List<Saying> parted(List<ClubId> group, int at) {
        if (group.size() < 2) {
            return List.of();
        }
        boolean last = at == group.size() - 1;
        ClubId club = group.get(at);
        ClubId other = group.get(last ? at - 1 : at + 1);
        PoolRecord.Parting by = pools.parting(club, other);
        return List.of(Saying.of(by.code())
                .with("way", last ? "behind" : "ahead")
                .with("other", name(other))
                .with("own", figure(by, club))
                .with("theirs", figure(by, other)));
    }

    private String figure(PoolRecord.Parting by, ClubId club) {
        return switch (by) {
            case PLACE -> Integer.toString(pools.place(club));
            case RUBBERS -> String.format(Locale.ROOT, "%+.2f", pools.rubbers(club));
            case POINTS -> String.format(Locale.ROOT, "%+.2f", pools.points(club));
            case CODE -> club.code();
        };
    }

    private String name(ClubId club) {
        return event.club(club).map(known -> known.name()).orElse(club.code());
    }
}
