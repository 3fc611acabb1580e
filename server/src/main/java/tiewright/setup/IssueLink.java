package tiewright.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.Link;
import tiewright.event.PlayerId;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.SetUpFact;

/**
 * Makes a personal link, named L1, L2, … {@link LinkRights} says who may. What one of a captain reads is settled by the club.
 *
 * @param label for whom, in words; the record tells people apart by it, so no other link in use has it
 * @param hash SHA-256 of the link's secret, 64 lower-case hex digits; the secret is nowhere kept
 */
public record IssueLink(Role role, Optional<ClubId> club, Optional<PlayerId> player, String label, String hash)
        implements Decision {
    @Override
    public Outcome decide(Event event, Given given) {
        return decide(event, given, Optional.empty());
    }

    /** The same in place of a link that is ended at once and leaves its label. */
    Outcome insteadOf(Link old, Event event, Given given) {
        return decide(event, given, Optional.of(old));
    }

    private Outcome decide(Event event, Given given, Optional<Link> old) {
        boolean noSuchClub = club.filter(id -> event.club(id).isEmpty()).isPresent();
        boolean notOfClub = player.filter(id -> event.player(id)
                        .filter(p -> club.filter(p.club()::equals).isPresent())
                        .isEmpty())
                .isPresent();
        return new Checks()
                .refuse(LinkRights.whyNot(event, given, role, club))
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
                .refuse(LinkRights.labelled(event, label)
                        .filter(link -> !Optional.of(link).equals(old))
                        .map(link -> Refusal.of("setup.label-taken")
                                .with("label", link.label())
                                .at("label")))
                .refuseIf(
                        !hash.matches("[0-9a-f]{64}"),
                        Refusal.of("setup.not-a-hash").at("hash"))
                .refuseIf(
                        event.links().values().stream()
                                .anyMatch(link -> link.hash().equals(hash)),
                        Refusal.of("setup.link-is-there").at("hash"))
                .then(() -> facts(event, given));
    }

    private List<Fact> facts(Event event, Given given) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new SetUpFact.LinkIssued(nextName(event), role, club, player, Plain.of(label), hash));
        LinkNotices.of(event, given, new LinkNotices.Told(role, club, label), "notices.link-made")
                .ifPresent(facts::add);
        return facts;
    }

    /** Whether a link in use has this label. */
    public static boolean isTaken(Event event, String label) {
        return LinkRights.labelled(event, label).isPresent();
    }

    private static String nextName(Event event) {
        return IntStream.iterate(event.links().size() + 1, n -> n + 1)
                .mapToObj(n -> "L" + n)
                .filter(name -> !event.links().containsKey(name))
                .findFirst()
                .orElseThrow();
    }
}
