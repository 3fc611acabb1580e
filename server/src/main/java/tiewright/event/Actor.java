package tiewright.event;

import java.util.Optional;

/**
 * Who did it: the role and link it was done with.
 *
 * @param name the label of the link, such as "desk 2"; never a secret
 * @param device a random name that the browser keeps, so that two devices can be told apart; may be empty
 * @param link the link itself, such as L7; empty where it was none, and for what older versions wrote
 */
public record Actor(Role role, Optional<ClubId> club, String name, String device, Optional<String> link) {
    public Actor(Role role, Optional<ClubId> club, String name, String device) {
        this(role, club, name, device, Optional.empty());
    }

    public static Actor of(Role role, String name) {
        return new Actor(role, Optional.empty(), name, "");
    }

    /** Two entries count as independent when another link or another device made them. */
    public boolean isSameSourceAs(Actor other) {
        return name.equals(other.name) && link.equals(other.link) && device.equals(other.device);
    }
}
