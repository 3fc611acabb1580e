package tiewright.setup;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.SetUpFact;

/**
 * Makes a personal link, named L1, L2, … The organiser makes every kind; the desk and the referee make those of players and
 * volunteers, for a captain's link reads sealed sheets.
 *
 * @param label for whom, in words
 * @param hash SHA-256 of the link's secret, 64 lower-case hex digits; the secret is nowhere kept
 */
public record IssueLink(Role role, Optional<ClubId> club, Optional<PlayerId> player, String label, String hash)
        implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        boolean noSuchClub = club.filter(id -> event.club(id).isEmpty()).isPresent();
        boolean notOfClub = player.filter(id -> event.player(id)
                        .filter(p -> club.filter(p.club()::equals).isPresent())
                        .isEmpty())
                .isPresent();
        return new Checks()
                .refuseIf(!LinkRights.mayHandle(given.by().role(), role), LinkRights.refusal(role))
                .refuseIf(
                        role == Role.PUBLIC,
                        Refusal.of("setup.public-needs-no-link").at("role"))
                .refuseIf(
                        role.isOfAClub() && club.isEmpty(),
                        Refusal.of("setup.link-needs-club").at("club"))
                .refuseIf(
                        !role.isOfAClub() && (club.isPresent() || player.isPresent()),
                        Refusal.of("setup.link-has-no-club").at("club"))
                .refuseIf(
                        role == Role.PLAYER && player.isEmpty(),
                        Refusal.of("setup.link-needs-player").at("player"))
                .refuseIf(
                        noSuchClub,
                        Refusal.of("setup.no-such-club")
                                .with("club", club.map(ClubId::code).orElse(""))
                                .at("club"))
                .refuseIf(
                        !noSuchClub && club.isPresent() && notOfClub,
                        Refusal.of("setup.player-not-in-squad").at("player"))
                .line("label", label)
                .refuseIf(
                        !hash.matches("[0-9a-f]{64}"),
                        Refusal.of("setup.not-a-hash").at("hash"))
                .refuseIf(
                        event.links().values().stream()
                                .anyMatch(link -> link.hash().equals(hash)),
                        Refusal.of("setup.link-is-there").at("hash"))
                .then(() ->
                        List.of(new SetUpFact.LinkIssued(nextName(event), role, club, player, Plain.of(label), hash)));
    }

    private static String nextName(Event event) {
        return IntStream.iterate(event.links().size() + 1, n -> n + 1)
                .mapToObj(n -> "L" + n)
                .filter(name -> !event.links().containsKey(name))
                .findFirst()
                .orElseThrow();
    }
}
