package tiewright.setup;

import java.util.List;
import java.util.Optional;
import tiewright.event.Club;
import tiewright.event.ClubId;
import tiewright.event.ClubLinks;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Link;
import tiewright.event.OfficialFact;
import tiewright.event.Role;
import tiewright.event.Saying;

/**
 * When everybody is told of a captain's link: of every one but a club's first, once sheets are asked for; before that, where
 * somebody outside the club made or ended it.
 */
final class LinkNotices {
    private LinkNotices() {}

    /** What a notice says of a link. */
    record Told(Role role, Optional<ClubId> club, String label) {
        static Told of(Link link) {
            return new Told(link.role(), link.club(), link.label());
        }
    }

    /** @param code of what everybody is told: that it was made, ended or replaced */
    static Optional<OfficialFact.NoticeStated> of(Event event, Decision.Given given, Told link, String code) {
        return link.club()
                .filter(one -> link.role() == Role.CAPTAIN && isTold(event, given, one))
                .map(one -> Notices.of(
                                event,
                                Saying.of(code)
                                        .with(
                                                "club",
                                                event.club(one).map(Club::name).orElse(one.code()))
                                        .with("label", Plain.of(link.label()))
                                        .with("by", given.by().name()))
                        .concerning(List.of(one)));
    }

    private static boolean isTold(Event event, Decision.Given given, ClubId club) {
        ClubLinks links = event.entries().linksOf(club);
        boolean byOwn = Checks.isCaptainOf(given.by(), club);
        boolean first = links.all().stream()
                .allMatch(link -> link.life().made().at().equals(given.now())
                        && link.life().made().by().equals(given.by()));
        return !first && (event.isFrozen() || !byOwn);
    }
}
