package tiewright.event;

import java.time.Instant;
import java.util.Optional;

/** A personal link, known by its name; only a hash of its secret is kept. */
public record Link(
        String name,
        Role role,
        Optional<ClubId> club,
        Optional<PlayerId> player,
        String label,
        String hash,
        Life life) {

    /** Something that was done to a link. */
    public record Act(Instant at, Actor by) {
        static Act of(Recorded recorded) {
            return new Act(recorded.receivedAt(), recorded.by());
        }
    }

    /**
     * What became of it so far.
     *
     * @param seq number of the fact that made it
     * @param letIn by whom a captain's link was let in to what its club keeps for itself; see {@link ClubLinks}
     * @param ended when it was taken back or replaced
     */
    public record Life(long seq, Act made, Optional<Act> letIn, Optional<Act> ended) {
        /** Made, and let in at once where nobody stands before it. */
        static Life begun(Recorded recorded, boolean letIn) {
            Act made = Act.of(recorded);
            return new Life(recorded.seq(), made, letIn ? Optional.of(made) : Optional.empty(), Optional.empty());
        }
    }

    /** Whether it was taken back or replaced: it opens nothing any more. */
    public boolean revoked() {
        return life.ended().isPresent();
    }

    /** A captain's or deputy's link of this club. */
    public boolean isCaptainOf(ClubId other) {
        return role == Role.CAPTAIN && club.filter(other::equals).isPresent();
    }

    /** One of the first that a club had, with which nobody older stood that could have let it in. */
    boolean isFirst() {
        return life.letIn().filter(life.made()::equals).isPresent()
                && life.made().by().role() != Role.CAPTAIN;
    }

    Link ended(Recorded recorded) {
        return with(new Life(life.seq(), life.made(), life.letIn(), Optional.of(Act.of(recorded))));
    }

    Link letIn(Recorded recorded) {
        return with(
                new Life(life.seq(), life.made(), life.letIn().or(() -> Optional.of(Act.of(recorded))), life.ended()));
    }

    private Link with(Life now) {
        return new Link(name, role, club, player, label, hash, now);
    }
}
