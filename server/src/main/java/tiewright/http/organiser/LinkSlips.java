package tiewright.http.organiser;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Link;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.Role;
import tiewright.event.VisibleEvent;
import tiewright.http.views.LinksMadeView;
import tiewright.http.visit.Screen;
import tiewright.http.visit.Tokens;
import tiewright.http.visit.Visit;
import tiewright.paper.QrCode;
import tiewright.setup.IssueLink;

/** New links with their secrets, for as long as one answer lasts. */
final class LinkSlips {
    private final Visit visit;
    private final List<Decision> decisions = new ArrayList<>();
    private final List<LinksMadeView.Slip> slips = new ArrayList<>();

    LinkSlips(Visit visit) {
        this.visit = visit;
    }

    /** @param label code words only: it stays in the record for ever, so no name of a person belongs in it */
    void add(Role role, Optional<ClubId> club, Optional<PlayerId> player, String label) {
        String secret = visit.hall().tokens().linkSecret();
        decisions.add(new IssueLink(role, club, player, label, Tokens.hash(secret)));
        String address = visit.hall().address().url() + "/enter/" + secret;
        QrCode code = QrCode.of(address);
        slips.add(new LinksMadeView.Slip(
                whom(visit.event(), club, player, label), may(role), address, code.size(), code.path()));
    }

    void addCaptains() {
        for (Club club : visit.event().clubs()) {
            if (!has(Role.CAPTAIN, club.id(), Optional.empty())) {
                add(
                        Role.CAPTAIN,
                        Optional.of(club.id()),
                        Optional.empty(),
                        visit.words()
                                .say("page-organiser.captain", "club", club.id().code()));
            }
            for (Player player : visit.event().squad(club.id())) {
                if (player.deputy() && !has(Role.CAPTAIN, club.id(), Optional.of(player.id()))) {
                    add(
                            Role.CAPTAIN,
                            Optional.of(club.id()),
                            Optional.of(player.id()),
                            visit.words()
                                    .say(
                                            "page-organiser.deputy",
                                            "player",
                                            player.id().code()));
                }
            }
        }
    }

    void addPlayers(ClubId club) {
        for (Player player : visit.event().squad(club)) {
            if (!has(Role.PLAYER, club, Optional.of(player.id()))) {
                add(
                        Role.PLAYER,
                        Optional.of(club),
                        Optional.of(player.id()),
                        player.id().code());
            }
        }
    }

    private boolean has(Role role, ClubId club, Optional<PlayerId> player) {
        return visit.event().links().stream()
                .anyMatch((Link link) -> !link.revoked()
                        && link.role() == role
                        && link.club().equals(Optional.of(club))
                        && link.player().equals(player));
    }

    static String whom(VisibleEvent event, Optional<ClubId> club, Optional<PlayerId> player, String label) {
        String name = player.map(event::name).orElse("");
        String of = club.map(event::clubName).orElse("");
        String person = name.isEmpty() ? of : name + ", " + of;
        return person.isEmpty() ? label : person + " (" + label + ")";
    }

    static String may(Role role) {
        return switch (role) {
            case PUBLIC -> "Reads what everybody reads";
            case PLAYER -> "Player: own next rubber, and what the captain tells the club";
            case CAPTAIN -> "Captain or deputy: names and seals the club's sheets";
            case VOLUNTEER -> "Volunteer: enters cards";
            case DESK -> "Desk: calls, cards, check-in";
            case ORGANISER -> "Organiser: everything but the names on sealed sheets";
            case REFEREE -> "Referee: desk and rulings";
        };
    }

    List<Decision> decisions() {
        return List.copyOf(decisions);
    }

    Screen screen() {
        return Screen.of(
                "links-made", visit.words().say("page-organiser.new-personal-links"), new LinksMadeView(slips));
    }
}
