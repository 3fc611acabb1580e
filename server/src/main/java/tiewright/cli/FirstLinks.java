package tiewright.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.UUID;
import tiewright.event.Actor;
import tiewright.event.Club;
import tiewright.event.ClubId;
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
        print(out, "organiser", link(Role.ORGANISER, Optional.empty(), Optional.empty(), "organiser"));
    }

    /** One link for each role: organiser, referee, desk, volunteer, the captain of each club and one of its players. */
    void forEveryRole(PrintWriter out) {
        out.println("Personal links of the invented event, one for each role:");
        print(out, "organiser", link(Role.ORGANISER, Optional.empty(), Optional.empty(), "organiser"));
        print(out, "referee", link(Role.REFEREE, Optional.empty(), Optional.empty(), "referee"));
        print(out, "desk", link(Role.DESK, Optional.empty(), Optional.empty(), "desk"));
        print(out, "volunteer", link(Role.VOLUNTEER, Optional.empty(), Optional.empty(), "volunteer"));
        for (Club club : ledger.event().clubs().values()) {
            print(
                    out,
                    "captain of " + club.name(),
                    link(Role.CAPTAIN, Optional.of(club.id()), Optional.empty(), "captain"));
        }
        ledger.event().clubs().values().stream()
                .findFirst()
                .flatMap(club -> ledger.event().squad(club.id()).stream().findFirst())
                .ifPresent(player -> print(out, "player " + ledger.directory().name(player.id()), playerLink(player)));
        print(out, "everybody", service.url() + "/");
    }

    private String playerLink(Player player) {
        return link(Role.PLAYER, Optional.of(player.club()), Optional.of(player.id()), "player");
    }

    private String link(Role role, Optional<ClubId> club, Optional<PlayerId> player, String label) {
        String secret = service.newLinkSecret();
        Answer answer = ledger.decide(
                Request.of(UUID.randomUUID().toString(), START),
                new IssueLink(role, club, player, label, Service.hash(secret)));
        if (!(answer instanceof Answer.Done)) {
            throw new IllegalStateException("the first link was refused: " + answer);
        }
        return service.link(secret);
    }

    private static void print(PrintWriter out, String whom, String link) {
        out.printf("  %-34s %s%n", whom, link);
    }
}
