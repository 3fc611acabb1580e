package tiewright.lineup;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import tiewright.conditions.Plays;
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
     * @param plays what the player states to play in beside open rubbers
     */
    public record Member(PlayerId id, OptionalInt rank, boolean present, Optional<Plays> plays) {
        /** Of whom nothing is stated: open rubbers only. */
        public Member(PlayerId id, OptionalInt rank, boolean present) {
            this(id, rank, present, Optional.empty());
        }

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

    /** The same where it is known what they play in beside open rubbers. */
    Squad stating(Map<PlayerId, Plays> plays) {
        return new Squad(members.stream()
                .map(member -> new Member(
                        member.id(), member.rank(), member.present(), Optional.ofNullable(plays.get(member.id()))))
                .toList());
    }

    /** The same players in an order by lot, the same one for the same number. */
    Squad listedBy(long lot) {
        List<Member> listed = new ArrayList<>(members);
        Collections.shuffle(listed, new Random(lot));
        return new Squad(listed);
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
