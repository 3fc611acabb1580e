package tiewright.http.organiser;

import java.util.Comparator;
import java.util.List;
import tiewright.event.Club;
import tiewright.event.Link;
import tiewright.event.Role;
import tiewright.http.views.LinksView;
import tiewright.http.visit.LinkSlips;
import tiewright.http.visit.Visit;

/** The personal links that there are, as far as this official has to do with them, and the clubs that lack one. */
final class LinksThere {
    private LinksThere() {}

    static List<LinksView.Line> lines(Visit visit) {
        return visit.event().links().stream()
                .filter(link -> handles(visit, link.role()))
                .sorted(Comparator.comparing(Link::revoked))
                .map(link -> new LinksView.Line(
                        link.name(),
                        LinkSlips.whom(visit.event(), link.club(), link.player(), link.label()),
                        LinkSlips.may(visit.words(), link.role()),
                        !link.revoked()))
                .toList();
    }

    /** What the desk and the referee cannot make or end does not stand on their page; captains' links are the neutral person's too. */
    static boolean handles(Visit visit, Role role) {
        return visit.role() == Role.ORGANISER
                || role == Role.PLAYER
                || role == Role.VOLUNTEER
                || role == Role.CAPTAIN && visit.isNeutral();
    }

    /** Each club, and whether somebody who captains it has no link yet. */
    static List<LinksView.ClubLine> clubs(Visit visit, String here) {
        if (!handles(visit, Role.CAPTAIN)) {
            return List.of();
        }
        return visit.event().clubs().stream()
                .map(club -> clubLine(visit, new LinkSlips(visit, here), club))
                .toList();
    }

    private static LinksView.ClubLine clubLine(Visit visit, LinkSlips slips, Club club) {
        boolean missing = slips.lacksOne(club);
        return new LinksView.ClubLine(
                club.id().code(),
                club.name(),
                missing,
                missing && slips.hasCaptains(club) ? visit.say("page-organiser.links.deputy-has-none") : "");
    }
}
