package tiewright.http.visit;

/** Somebody opened a page that is not for their role. */
public final class ClosedDoor extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient Door door;

    public ClosedDoor(Door door) {
        super(door.name());
        this.door = door;
    }

    public Door door() {
        return door;
    }
}
