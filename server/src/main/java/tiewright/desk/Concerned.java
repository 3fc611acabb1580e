package tiewright.desk;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import tiewright.conditions.Withdrawal;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.MayPlay;
import tiewright.event.Side;
import tiewright.event.Slot;
import tiewright.event.SlotSource;
import tiewright.event.Tie;
import tiewright.standings.Row;

/** Whom a ruling changes something for: time, court or opponent of a tie that was still to come or begins again. */
final class Concerned {
    private final Event before;
    private final Event after;
    private final Set<ClubId> clubs = new TreeSet<>(Comparator.comparing(ClubId::code));

    private Concerned(Event before, Event after) {
        this.before = before;
        this.after = after;
    }

    /** Sorted by code; without clubs that went home, for they said so. */
    static List<ClubId> between(Event before, Event after) {
        Concerned concerned = new Concerned(before, after);
        before.ties().values().forEach(concerned::add);
        concerned.clubs.removeAll(after.withdrawals().keySet());
        return List.copyOf(concerned.clubs);
    }

    /** Also those whose line of a table changes, and those who meet somebody now where a place was open. */
    static List<ClubId> byWithdrawal(Event before, Event after) {
        Concerned concerned = new Concerned(before, after);
        before.ties().values().forEach(concerned::add);
        before.ties().values().forEach(concerned::addFilled);
        before.pools().keySet().forEach(concerned::addLines);
        concerned.clubs.removeAll(after.withdrawals().keySet());
        return List.copyOf(concerned.clubs);
    }

    private void addFilled(Tie was) {
        Optional<Tie> is = after.tie(was.id());
        for (Side side : Side.values()) {
            if (was.club(side).isEmpty()
                    && is.filter(tie -> tie.club(side).isPresent()).isPresent()) {
                clubs.addAll(mayPlay(after, is.orElseThrow()));
            }
        }
    }

    private void addLines(String pool) {
        Map<ClubId, List<Integer>> was = figures(before, pool);
        Map<ClubId, List<Integer>> is = figures(after, pool);
        was.forEach((club, line) -> {
            if (!line.equals(is.get(club))) {
                clubs.add(club);
            }
        });
    }

    private static Map<ClubId, List<Integer>> figures(Event event, String pool) {
        return PoolEnd.of(event, pool).table().rows().stream()
                .collect(Collectors.toMap(
                        Row::club,
                        row -> List.of(
                                row.place(),
                                row.tiesWon(),
                                row.tiesDrawn(),
                                row.tiesLost(),
                                row.tiePoints(),
                                row.rubbersWon(),
                                row.rubbersLost(),
                                row.pointsFor(),
                                row.pointsAgainst())));
    }

    /** Who may still come to the tie: of a pool that is played to its end those at the place, and no more, signed or not. */
    private static Set<ClubId> mayPlay(Event event, Tie tie) {
        Set<ClubId> may = MayPlay.of(event, tie.id());
        Set<ClubId> out = new HashSet<>();
        Set<ClubId> in = new HashSet<>(tie.clubs());
        for (Side side : Side.values()) {
            Slot slot = tie.slot(side);
            slot.from()
                    .filter(from -> slot.club().isEmpty() && from.kind() == SlotSource.Kind.POOL_PLACE)
                    .filter(from -> PoolEnd.of(event, from.of()).unfinished().isEmpty())
                    .ifPresent(from -> PoolEnd.of(event, from.of())
                            .table()
                            .rows()
                            .forEach(row -> (mayTake(event, from, row) ? in : out).add(row.club())));
        }
        out.removeAll(in);
        may.removeAll(out);
        return may;
    }

    /** Clubs that only a lot can part share a place, and each may get any of those that they share. */
    private static boolean mayTake(Event event, SlotSource from, Row row) {
        long level = PoolEnd.of(event, from.of()).table().rows().stream()
                .filter(other -> other.place() == row.place())
                .count();
        return row.place() <= from.place() && from.place() < row.place() + level;
    }

    private boolean isAnnulled(Tie tie) {
        return tie.clubs().stream()
                .flatMap(club -> Optional.ofNullable(after.withdrawals().get(club)).stream())
                .anyMatch(withdrawn -> withdrawn.treatment() == Withdrawal.ANNUL);
    }

    private void add(Tie was) {
        Optional<Tie> is = after.tie(was.id());
        boolean timed = was.start().isPresent() || was.court().isPresent();
        boolean moved = timed
                && !(is.map(Tie::start).equals(Optional.of(was.start()))
                        && is.map(tie -> after.order().courts(tie))
                                .equals(Optional.of(before.order().courts(was))));
        boolean gone =
                !before.isGone(was) && is.map(after::isGone).orElse(true) && (before.goesOn(was) || isAnnulled(was));
        if (moved || gone) {
            clubs.addAll(mayPlay(before, was));
            is.ifPresent(tie -> clubs.addAll(mayPlay(after, tie)));
        }
        for (Side side : Side.values()) {
            if (was.club(side).isPresent()
                    && is.filter(tie -> tie.club(side).equals(was.club(side))).isEmpty()) {
                clubs.addAll(was.clubs());
                is.ifPresent(tie -> clubs.addAll(tie.clubs()));
            }
        }
    }
}
