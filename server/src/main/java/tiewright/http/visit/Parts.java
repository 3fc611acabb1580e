package tiewright.http.visit;

import io.javalin.security.RouteRole;

/** Said of an address that takes files: every other one refuses forms that are sent in parts. */
public enum Parts implements RouteRole {
    WELCOME;

    /** All files and boxes of one form together. */
    public static final int MOST_BYTES = 2_000_000;
}
