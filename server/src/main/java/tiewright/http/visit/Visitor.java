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
 */
public record Visitor(Optional<Link> link, String device) {
    public static final Visitor STRANGER = new Visitor(Optional.empty(), "");

    public Role role() {
        return link.map(Link::role).orElse(Role.PUBLIC);
    }

    public Viewer viewer() {
        return link.map(Viewer::of).orElse(Viewer.PUBLIC);
    }

    Actor actor() {
        return link.map(one -> new Actor(one.role(), one.club(), one.label(), device, Optional.of(one.name())))
                .orElse(Actor.of(Role.PUBLIC, "public"));
    }
}
