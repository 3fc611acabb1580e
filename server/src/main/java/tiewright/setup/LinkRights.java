package tiewright.setup;

import java.util.Optional;
import tiewright.event.Actor;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Link;
import tiewright.event.Refusal;
import tiewright.event.Role;
import tiewright.event.SetUpFact;

/**
 * Who may make and take away links of which role. The organiser handles every kind; the desk and the referee those of players and
 * volunteers; a captain or deputy those of the own club. Where an organiser also captains a club and a neutral person was chosen,
 * captains' links are that person's, but for the first that a club gets.
 */
final class LinkRights {
    private LinkRights() {}

    /** Why this person may not; empty where it is fine. */
    static Optional<Refusal> whyNot(Event event, Decision.Given given, Role role, Optional<ClubId> club) {
        Actor by = given.by();
        if (by.role() == Role.CAPTAIN) {
            return whyNotCaptain(event, given, role, club);
        }
        boolean neutral = event.opening().filter(chosen -> chosen.isNeutral(by)).isPresent();
        if (role == Role.CAPTAIN && neutral) {
            return Optional.empty();
        }
        if (role == Role.CAPTAIN && by.role() == Role.ORGANISER && needsNeutral(event, club)) {
            return Optional.of(Refusal.of("setup.link-needs-neutral")
                    .with(
                            "neutral",
                            event.opening()
                                    .flatMap(SetUpFact.OpeningChosen::neutral)
                                    .orElse(""))
                    .at("role"));
        }
        boolean small = role == Role.PLAYER || role == Role.VOLUNTEER;
        return by.role() == Role.ORGANISER || by.role().isOfficial() && small
                ? Optional.empty()
                : Optional.of(refusal(role));
    }

    private static Optional<Refusal> whyNotCaptain(
            Event event, Decision.Given given, Role role, Optional<ClubId> club) {
        boolean own = role.isOfAClub()
                && club.filter(one -> Checks.isCaptainOf(given.by(), one)).isPresent();
        if (!own) {
            return Optional.of(refusal(role));
        }
        return isLetIn(event, given) ? Optional.empty() : Optional.of(notLetIn());
    }

    /** A link that nobody of the club has let in cannot let others in, or put them out. */
    static boolean isLetIn(Event event, Decision.Given given) {
        return event.entries()
                .link(given.by())
                .filter(link -> event.entries().isLetIn(link, given.now()))
                .isPresent();
    }

    static Refusal notLetIn() {
        return Refusal.of("setup.link-not-let-in");
    }

    /** The first links of a club are made before there is anything to read. */
    private static boolean needsNeutral(Event event, Optional<ClubId> club) {
        boolean chosen = event.opening()
                .filter(one -> one.organiserIsCaptain() && one.neutral().isPresent())
                .isPresent();
        return chosen
                && club.filter(one -> !event.entries().linksOf(one).all().isEmpty())
                        .isPresent();
    }

    /** The link that is in use and has this label; letters of another size make no other label. */
    static Optional<Link> labelled(Event event, String label) {
        return event.links().values().stream()
                .filter(link -> !link.revoked() && Plain.of(label).equalsIgnoreCase(link.label()))
                .findFirst();
    }

    private static Refusal refusal(Role link) {
        return Refusal.of("setup.not-your-links").with("role", link.code()).at("role");
    }
}
