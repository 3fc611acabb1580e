package tiewright.event;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/** Folds who is entered. */
final class EntriesFold {
    private final Entries from;
    private final Draft<ClubId, Club> clubs;
    private final Draft<PlayerId, Player> players;
    private final Draft<String, Court> courts;
    private final Draft<String, Link> links;

    EntriesFold(Entries from) {
        this.from = from;
        this.clubs = new Draft<>(from.clubs());
        this.players = new Draft<>(from.players());
        this.courts = new Draft<>(from.courts());
        this.links = new Draft<>(from.links());
    }

    Entries done() {
        boolean changed = clubs.isWritten() || players.isWritten() || courts.isWritten() || links.isWritten();
        return changed ? new Entries(clubs.asRead(), players.asRead(), courts.asRead(), links.asRead()) : from;
    }

    Map<ClubId, Club> clubs() {
        return clubs.asRead();
    }

    void entered(SetUpFact.ClubEntered fact) {
        clubs.toWrite().put(fact.club(), new Club(fact.club(), fact.name(), fact.town(), fact.seed()));
    }

    void removed(SetUpFact.ClubRemoved fact) {
        clubs.toWrite().remove(fact.club());
        players.toWrite().values().removeIf(player -> player.club().equals(fact.club()));
    }

    /** What the desk noted of the player stays, whatever else is entered anew. */
    void entered(SetUpFact.PlayerEntered fact) {
        Optional<Player> before = Optional.ofNullable(players.asRead().get(fact.player()));
        players.toWrite()
                .put(
                        fact.player(),
                        new Player(
                                fact.player(),
                                fact.club(),
                                fact.rank(),
                                fact.from(),
                                fact.until(),
                                fact.deputy(),
                                before.flatMap(Player::checkedInAt),
                                before.map(Player::absent).orElse(false)));
    }

    void removed(SetUpFact.PlayerRemoved fact) {
        players.toWrite().remove(fact.player());
    }

    void checked(SetUpFact.CheckedIn fact, Instant at) {
        players.toWrite().computeIfPresent(fact.player(), (id, player) -> player.checked(fact.present(), at));
    }

    void set(SetUpFact.CourtSet fact) {
        courts.toWrite().put(fact.court(), new Court(fact.court(), fact.from(), fact.until(), fact.usable()));
    }

    Map<String, Link> links() {
        return links.asRead();
    }

    void issued(SetUpFact.LinkIssued fact, Recorded recorded) {
        Link.Life life = Link.Life.begun(recorded, isLetInAtOnce(fact, recorded));
        links.toWrite()
                .put(
                        fact.link(),
                        new Link(
                                fact.link(), fact.role(), fact.club(), fact.player(), fact.label(), fact.hash(), life));
    }

    /** The first of a club, and those that it makes itself. */
    private boolean isLetInAtOnce(SetUpFact.LinkIssued fact, Recorded recorded) {
        boolean byOwn =
                recorded.by().role() == Role.CAPTAIN && recorded.by().club().equals(fact.club());
        return fact.role() == Role.CAPTAIN
                && fact.club()
                        .filter(club -> byOwn
                                || ClubLinks.of(links.asRead().values(), club).isNone(Link.Act.of(recorded)))
                        .isPresent();
    }

    void letIn(SetUpFact.LinkLetIn fact, Recorded recorded) {
        links.toWrite().computeIfPresent(fact.link(), (name, link) -> link.letIn(recorded));
    }

    void revoked(SetUpFact.LinkRevoked fact, Recorded recorded) {
        links.toWrite().computeIfPresent(fact.link(), (name, link) -> link.ended(recorded));
    }

    /** The organisers' links stay: somebody has to be able to show what was deleted. */
    void erased(Recorded recorded) {
        links.toWrite()
                .replaceAll(
                        (name, link) -> link.role() == Role.ORGANISER || link.revoked() ? link : link.ended(recorded));
    }
}
