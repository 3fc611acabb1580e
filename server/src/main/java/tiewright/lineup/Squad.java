package tiewright.lineup;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import tiewright.event.PlayerId;

/** The players of one club for one tie, each once, in the order of the club's list. */
public record Squad(List<Member> members) {
    public Squad {
        members = List.copyOf(members);
        Set<PlayerId> seen = new HashSet<>();
        for (Member member : members) {
            if (!seen.add(member.id())) {
                throw new IllegalArgumentException(member.id() + " stands in the squad twice");
            }
        }
    }

    /**
     * One player.
     *
     * @param rank place in the order of strength, 1 the strongest; without one a player counts as last
     * @param present here and fit to play, so that a sheet may name the player
     */
    public record Member(PlayerId id, OptionalInt rank, boolean present) {
        public static Member of(String code, int rank) {
            return new Member(PlayerId.of(code), OptionalInt.of(rank), true);
        }
    }

    /** A squad of which nothing is known: so many players without ratings. Their codes {@code ?1}, {@code ?2}, … are nobody's. */
    public static Squad unknown(int players) {
        return new Squad(IntStream.rangeClosed(1, players)
                .mapToObj(i -> Member.of("?" + i, i))
                .toList());
    }

    public List<Member> present() {
        return members.stream().filter(Member::present).toList();
    }

    public Optional<Member> member(PlayerId id) {
        return members.stream().filter(member -> member.id().equals(id)).findFirst();
    }

    public boolean isPresent(PlayerId id) {
        return member(id).map(Member::present).orElse(false);
    }

    /** The rank, or one more than the last rank of the squad where a player has none. */
    public int rank(PlayerId id) {
        int last = members.stream()
                .mapToInt(member -> member.rank().orElse(0))
                .max()
                .orElse(0);
        return member(id).orElseThrow().rank().orElse(last + 1);
    }
}
