package tiewright.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import tiewright.event.Actor;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.Role;
import tiewright.http.Service;
import tiewright.ledger.Answer;
import tiewright.ledger.Ledger;
import tiewright.ledger.Request;
import tiewright.setup.IssueLink;

/** The links that a start prints: whoever has one acts in that role. */
final class FirstLinks {
    private static final Actor START = Actor.of(Role.ORGANISER, "start of the service");

    private final Ledger ledger;
    private final Service service;

    FirstLinks(Ledger ledger, Service service) {
        this.ledger = ledger;
        this.service = service;
    }

    void forTheOrganiser(PrintWriter out) {
        out.println("The organiser's personal link (keep it; it lets in whoever has it):");
        print(out, "organiser", link(Role.ORGANISER, "organiser"));
    }

    /** One link for each role: organiser, referee, desk, volunteer, the captain of each club and one of its players. */
    void forEveryRole(PrintWriter out) {
        out.println("Personal links, one for each role:");
        print(out, "organiser", link(Role.ORGANISER, "organiser"));
        print(out, "referee", link(Role.REFEREE, "referee"));
        print(out, "desk", link(Role.DESK, "desk"));
        print(out, "volunteer", link(Role.VOLUNTEER, "volunteer"));
        for (Club club : ledger.event().clubs().values()) {
            print(
                    out,
                    "captain of " + club.name(),
                    link(
                            captainOf(club),
                            Role.CAPTAIN,
                            Optional.of(club.id()),
                            Optional.empty(),
                            club.id() + " captain"));
        }
        ledger.event().clubs().values().stream()
                .findFirst()
                .flatMap(club -> ledger.event().squad(club.id()).stream().findFirst())
                .ifPresent(player -> print(out, "player " + ledger.directory().name(player.id()), playerLink(player)));
        print(out, "everybody", service.url() + "/");
    }

    private String playerLink(Player player) {
        return link(
                START,
                Role.PLAYER,
                Optional.of(player.club()),
                Optional.of(player.id()),
                player.id().code());
    }

    /** At a later start of the invented event its captains let the new links in, so that they show what the first ones did. */
    private Actor captainOf(Club club) {
        return ledger.event().entries().linksOf(club.id()).all().stream()
                .filter(link -> !link.revoked())
                .findFirst()
                .map(link -> new Actor(Role.CAPTAIN, link.club(), link.label(), "", Optional.of(link.name())))
                .orElse(START);
    }

    private String link(Role role, String label) {
        return link(START, role, Optional.empty(), Optional.empty(), label);
    }

    private String link(Actor by, Role role, Optional<ClubId> club, Optional<PlayerId> player, String label) {
        String secret = service.newLinkSecret();
        Answer answer = ledger.decide(
                Request.of(UUID.randomUUID().toString(), by),
                new IssueLink(role, club, player, free(label), Service.hash(secret)));
        if (!(answer instanceof Answer.Done)) {
            throw new IllegalStateException("the first link was refused: " + answer);
        }
        return service.link(secret);
    }

    /** The label, or where it is taken the same with a number: each start makes links of its own. */
    private String free(String label) {
        return IntStream.iterate(1, n -> n + 1)
                .mapToObj(n -> n == 1 ? label : label + " " + n)
                .filter(one -> !IssueLink.isTaken(ledger.event(), one))
                .findFirst()
                .orElseThrow();
    }

    private static void print(PrintWriter out, String whom, String link) {
        out.printf("  %-34s %s%n", whom, link);
    }

    /** Nobody could begin. */
    static boolean hasNoOrganiser(Event event) {
        return event.links().values().stream().noneMatch(link -> link.role() == Role.ORGANISER && !link.revoked());
    }
}
