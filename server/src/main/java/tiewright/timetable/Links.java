package tiewright.timetable;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import tiewright.event.Stage;

/** What of a problem has to do with what. */
final class Links {
    private final Board board;
    private final Set<Link> links = new LinkedHashSet<>();

    private Links(Board board) {
        this.board = board;
    }

    static List<Link> of(Board board) {
        Links links = new Links(board);
        for (Piece a : board.pieces()) {
            for (Piece b : board.pieces()) {
                if (a.number() != b.number() && !(a.pin().isPresent() && b.pin().isPresent())) {
                    links.add(a, b);
                }
            }
        }
        return List.copyOf(links.links);
    }

    private void add(Piece a, Piece b) {
        if (a.tie() == b.tie()) {
            ofOneTie(a, b);
            return;
        }
        PlanTie one = board.tie(a);
        PlanTie other = board.tie(b);
        if (other.after().contains(one.id())) {
            links.add(new Link(Link.Kind.SOURCE, a.number(), b.number()));
        }
        boolean share = one.clubs().stream().anyMatch(other.clubs()::contains);
        boolean before = isBefore(one, other);
        if (share && (before || !isBefore(other, one) && a.number() < b.number())) {
            links.add(new Link(Link.Kind.CLUB, a.number(), b.number()));
        }
        if (share && before || isFirst(a) && isFirst(b) && isRoundBefore(one, other)) {
            links.add(new Link(Link.Kind.ROUND, a.number(), b.number()));
        }
        if (a.number() < b.number() && isFirst(a) && isFirst(b) && beginTogether(a, b)) {
            links.add(new Link(Link.Kind.TOGETHER, a.number(), b.number()));
        }
    }

    private void ofOneTie(Piece a, Piece b) {
        if (a.number() < b.number()) {
            links.add(new Link(Link.Kind.RUBBERS, a.number(), b.number()));
            if (board.tie(a).oneAtATime()) {
                links.add(new Link(Link.Kind.PLAYERS, a.number(), b.number()));
            }
        }
    }

    private boolean isFirst(Piece piece) {
        return piece.number() == 0 || board.pieces().get(piece.number() - 1).tie() != piece.tie();
    }

    private static boolean isBefore(PlanTie one, PlanTie other) {
        if (one.stage() != other.stage()) {
            return one.stage() == Stage.POOL;
        }
        return (one.isInPool(other) || one.stage() == Stage.KNOCKOUT) && one.round() < other.round();
    }

    /** In the next round of the same pool or, in a knockout, of the whole draw; later rounds follow by that. */
    private boolean isRoundBefore(PlanTie one, PlanTie other) {
        return one.isInPool(other)
                && one.round() < other.round()
                && board.problem().ties().stream()
                        .noneMatch(
                                tie -> tie.isInPool(one) && one.round() < tie.round() && tie.round() < other.round());
    }

    private boolean beginTogether(Piece a, Piece b) {
        PlanTie one = board.tie(a);
        PlanTie other = board.tie(b);
        return board.problem().lastRoundTogether()
                && one.isInPool(other)
                && one.round() == other.round()
                && lastRound(one) == one.round()
                && togetherFits(one.pool(), one.round());
    }

    private int lastRound(PlanTie of) {
        return board.problem().ties().stream()
                .filter(of::isInPool)
                .mapToInt(PlanTie::round)
                .max()
                .orElse(0);
    }

    /** The courts are enough for the first rubbers, or the whole ties, of a round at once, and none of it is pinned. */
    private boolean togetherFits(Optional<String> pool, int round) {
        List<Piece> first = board.pieces().stream()
                .filter(piece ->
                        board.tie(piece).pool().equals(pool) && board.tie(piece).round() == round && isFirst(piece))
                .toList();
        int width = first.stream().mapToInt(Piece::width).max().orElse(1);
        boolean pinned = first.stream().anyMatch(piece -> piece.pin().isPresent());
        boolean umpired =
                !board.problem().umpires() || 3 * first.size() <= board.clubs().size();
        return !pinned && umpired && first.size() <= board.courts() / width && noClubTwice(first) && everOpen(first);
    }

    /** Within a day of the start there is a slot in which as many lanes of courts stay open for as long as they need. */
    private boolean everOpen(List<Piece> first) {
        Piece one = first.get(0);
        return IntStream.range(0, Clock.DAY / board.slot() + 1)
                .anyMatch(slot -> board.spots(slot, one.width(), one.minutes()).size() >= first.size());
    }

    private boolean noClubTwice(List<Piece> first) {
        long clubs = first.stream()
                .flatMap(piece -> board.tie(piece).clubs().stream())
                .count();
        return clubs
                == first.stream()
                        .flatMap(piece -> board.tie(piece).clubs().stream())
                        .collect(Collectors.toSet())
                        .size();
    }
}
