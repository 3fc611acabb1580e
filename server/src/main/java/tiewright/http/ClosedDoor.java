package tiewright.http;

/** Somebody opened a page that is not for their role. */
final class ClosedDoor extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient Door door;

    ClosedDoor(Door door) {
        super(door.name());
        this.door = door;
    }

    Door door() {
        return door;
    }
}
