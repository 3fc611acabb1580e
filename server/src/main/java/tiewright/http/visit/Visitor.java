package tiewright.http.visit;

import java.util.Optional;
import tiewright.event.Actor;
import tiewright.event.Link;
import tiewright.event.Role;
import tiewright.event.Viewer;

/**
 * Who opened a page.
 *
 * @param device a random name that the browser keeps, so that two devices with one link can be told apart
 * @param sitting who sits at this device now, where several people share a link, as they said at the hand-over; may be empty
 */
public record Visitor(Optional<Link> link, String device, String sitting) {
    public static final Visitor STRANGER = new Visitor(Optional.empty(), "", "");

    public Role role() {
        return link.map(Link::role).orElse(Role.PUBLIC);
    }

    public Viewer viewer() {
        return link.map(Viewer::of).orElse(Viewer.PUBLIC);
    }

    /** As the log and the cards name this person: whoever sits here, with the link they share. */
    public String name() {
        String label = link.map(Link::label).orElse("public");
        return sitting.isEmpty() ? label : sitting + " (" + label + ")";
    }

    Actor actor() {
        return link.map(one -> new Actor(one.role(), one.club(), name(), device, Optional.of(one.name())))
                .orElse(Actor.of(Role.PUBLIC, "public"));
    }
}
