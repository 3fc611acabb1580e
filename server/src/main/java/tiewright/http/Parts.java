package tiewright.http;

import io.javalin.security.RouteRole;

/** Said of an address that takes files: every other one refuses forms that are sent in parts. */
enum Parts implements RouteRole {
    WELCOME
}
