package tiewright.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.conditions.Withdrawal;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.OfficialFact;
import tiewright.event.Refusal;
import tiewright.event.Side;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.standings.PoolTables;
import tiewright.standings.Standings;
import tiewright.standings.Table;

/** How far a pool is from its final table. */
final class PoolEnd {
    private final Event event;
    private final String pool;
    private final Table table;

    private PoolEnd(Event event, String pool) {
        this.event = event;
        this.pool = pool;
        this.table = Standings.of(PoolTables.input(event, pool));
    }

    static PoolEnd of(Event event, String pool) {
        return new PoolEnd(event, pool);
    }

    Table table() {
        return table;
    }

    /** Every reason why the order of the pool is not final yet, but for lots; empty = it is. */
    List<Refusal> unfinished() {
        List<Refusal> reasons = new ArrayList<>();
        List<TieId> held =
                ties(tie -> !isAnnulled(tie) && !event.progress(tie).held().isEmpty());
        List<TieId> left =
                ties(tie -> !isWithdrawn(tie) && !event.progress(tie).finished() && !held.contains(tie.id()));
        if (event.tiesOfPool(pool).isEmpty()) {
            reasons.add(Refusal.of("desk.no-such-pool").with("pool", pool).at("pool"));
        }
        if (!held.isEmpty()) {
            reasons.add(Refusal.of("desk.pool-has-held").with("pool", pool).with("ties", held));
        }
        if (!left.isEmpty()) {
            reasons.add(Refusal.of("desk.pool-not-finished").with("pool", pool).with("ties", left));
        }
        return reasons;
    }

    /** Also a group that only a lot parts stands in the way. */
    List<Refusal> unsignable() {
        List<Refusal> reasons = new ArrayList<>(unfinished());
        table.lotsToDraw()
                .forEach(level -> reasons.add(
                        Refusal.of("desk.lot-needed").with("pool", pool).with("clubs", level)));
        return reasons;
    }

    private List<TieId> ties(java.util.function.Predicate<Tie> which) {
        return event.tiesOfPool(pool).stream().filter(which).map(Tie::id).toList();
    }

    private boolean isWithdrawn(Tie tie) {
        return withdrawal(tie, Side.HOME).isPresent()
                || withdrawal(tie, Side.AWAY).isPresent();
    }

    private boolean isAnnulled(Tie tie) {
        return withdrawal(tie, Side.HOME).filter(Withdrawal.ANNUL::equals).isPresent()
                || withdrawal(tie, Side.AWAY).filter(Withdrawal.ANNUL::equals).isPresent();
    }

    private Optional<Withdrawal> withdrawal(Tie tie, Side side) {
        Optional<ClubId> club = tie.club(side);
        return club.map(event.withdrawals()::get).map(OfficialFact.ClubWithdrawn::treatment);
    }
}
