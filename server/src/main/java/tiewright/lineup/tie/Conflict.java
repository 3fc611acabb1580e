package tiewright.lineup.tie;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tiewright.event.PlayerId;
import tiewright.lineup.LineupProblem;
import tiewright.lineup.PlayingTime;
import tiewright.lineup.TiePlaces;
import tiewright.lineup.TiesAhead;
import tiewright.lineup.Wish;

/** Which wishes, and which promises of playing time, cannot hold together under the conditions? */
final class Conflict {
    private static final long MOST_STEPS = 100_000;
    private static final int MOST_CLAIMS = 12;

    private final Board board;

    private Conflict(Board board) {
        this.board = board;
    }

    /** Wishes and promises, by the player, that no sheet can keep together; none where they all can hold. */
    record Clash(List<Wish> wishes, List<PlayerId> promised) {
        private static final Clash NONE = new Clash(List.of(), List.of());

        Clash {
            wishes = List.copyOf(wishes);
            promised = List.copyOf(promised);
        }

        boolean isNone() {
            return wishes.isEmpty() && promised.isEmpty();
        }
    }

    /** One or the other. */
    private record Claim(Optional<Wish> wish, Optional<PlayerId> promised) {}

    /**
     * A smallest set of wishes that no sheet can grant; the earliest such set in the order of the wishes.
     *
     * @return empty if they all can hold, or if no sheet at all is possible
     */
    static List<Wish> smallest(LineupProblem problem) {
        return new Conflict(new Board(problem))
                .smallest(claims(problem.wishes(), List.of()))
                .wishes();
    }

    /** The same of wishes and promises for the day together; those are left out that cannot be kept even alone. */
    static Clash withPromises(Board board) {
        List<PlayerId> promised = new ArrayList<>(board.owed().after(new int[0]).keySet());
        promised.removeAll(board.owed().hopeless().keySet());
        return promised.isEmpty()
                ? Clash.NONE
                : new Conflict(board).smallest(claims(board.problem().wishes(), promised));
    }

    private static List<Claim> claims(List<Wish> wishes, List<PlayerId> promised) {
        return Stream.concat(
                        wishes.stream().map(wish -> new Claim(Optional.of(wish), Optional.empty())),
                        promised.stream().map(player -> new Claim(Optional.empty(), Optional.of(player))))
                .toList();
    }

    private Clash smallest(List<Claim> claims) {
        if (canHold(claims) || !canHold(List.of())) {
            return Clash.NONE;
        }
        List<Claim> smallest = claims.size() <= MOST_CLAIMS ? smallestOf(claims) : thinned(claims);
        return new Clash(
                smallest.stream().flatMap(claim -> claim.wish().stream()).toList(),
                smallest.stream().flatMap(claim -> claim.promised().stream()).toList());
    }

    private List<Claim> smallestOf(List<Claim> claims) {
        Comparator<Integer> small = Comparator.comparingInt(Integer::bitCount);
        Optional<List<Claim>> found = IntStream.range(1, 1 << claims.size())
                .boxed()
                .sorted(small)
                .map(chosen -> IntStream.range(0, claims.size())
                        .filter(i -> (chosen & 1 << i) != 0)
                        .mapToObj(claims::get)
                        .toList())
                .filter(some -> !canHold(some))
                .findFirst();
        return found.orElseThrow();
    }

    /** With many of them: leaves out one after the other for as long as the rest still cannot hold. None can then be left out. */
    private List<Claim> thinned(List<Claim> claims) {
        List<Claim> rest = new ArrayList<>(claims);
        for (Claim claim : claims) {
            rest.remove(claim);
            if (canHold(rest)) {
                rest.add(claim);
            }
        }
        return List.copyOf(rest);
    }

    /** True also when it takes too long to tell. */
    private boolean canHold(List<Claim> claims) {
        List<Wish> wishes =
                claims.stream().flatMap(claim -> claim.wish().stream()).toList();
        Set<PlayerId> promised = new HashSet<>(
                claims.stream().flatMap(claim -> claim.promised().stream()).toList());
        PlayingTime time = board.problem().purpose().playingTime().onlyTo(promised);
        if (!promised.isEmpty() && isTooMuch(time, wishes)) {
            return false;
        }
        Owed owed = new Owed(
                time,
                board.players(),
                board.pairs(),
                Math.min(board.rules().mostPerPlayer(), board.seating().count()));
        return SheetSearch.run(board, wishes, true, MOST_STEPS, line -> owed.missing(line) > 0)
                != SheetSearch.End.ALL_SEEN;
    }

    /** More is promised than this tie and the others have places for, whoever sits with whom: told at once, without any sheet. */
    private boolean isTooMuch(PlayingTime time, List<Wish> wishes) {
        List<PlayerId> players = List.copyOf(time.promised().keySet());
        Set<PlayerId> out = new HashSet<>(players);
        out.removeAll(board.players());
        wishes.stream().filter(wish -> wish.kind() == Wish.Kind.MUST_REST).forEach(wish -> out.addAll(wish.players()));
        List<TiePlaces> ties = new ArrayList<>(time.others());
        ties.add(new TiePlaces(
                2 * board.seating().count(),
                Math.min(board.rules().mostPerPlayer(), board.seating().count()),
                out));
        return new TiesAhead(ties, players)
                        .lost(players.stream().mapToInt(time::toPromise).toArray())
                > 0;
    }
}
