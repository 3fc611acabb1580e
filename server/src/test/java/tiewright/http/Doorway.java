package tiewright.http;

import io.javalin.Javalin;
import io.javalin.http.HandlerType;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import tiewright.event.Role;
import tiewright.http.captain.CaptainRoom;
import tiewright.http.desk.DeskRoom;
import tiewright.http.everybody.EverybodyRoom;
import tiewright.http.film.FilmRoom;
import tiewright.http.organiser.OrganiserRoom;
import tiewright.http.plan.PlanRoom;
import tiewright.http.rulings.RulingsRoom;
import tiewright.http.visit.Door;
import tiewright.http.visit.Room;
import tiewright.http.visit.Routes;

/**
 * An address that a page answers, as its room lists it, and for whom.
 *
 * @param path with names in braces, such as <code>/tie/{tie}</code>
 */
public record Doorway(String path, Set<Door> doors) {
    /** Every page that can be looked at. Ways in, out and to other languages are no pages and are not among them. */
    public static List<Doorway> all() {
        List<Room> rooms = List.of(
                new EverybodyRoom(),
                new CaptainRoom(),
                new FilmRoom(),
                new DeskRoom(),
                new RulingsRoom(),
                new PlanRoom(),
                new OrganiserRoom());
        Javalin listed = Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            Routes routes = new Routes(config.routes, ctx -> {
                throw new IllegalStateException("nobody visits a list");
            });
            rooms.forEach(room -> room.pages().forEach(page -> page.at(routes)));
        });
        List<Doorway> all = new ArrayList<>(listed.unsafe.internalRouter.allHttpHandlers().stream()
                .map(handler -> handler.endpoint)
                .filter(endpoint -> endpoint.method.equals(HandlerType.GET))
                .map(endpoint -> new Doorway(
                        endpoint.path,
                        doors(Objects.requireNonNull(endpoint.metadata(io.javalin.security.Roles.class))
                                .getRoles())))
                .toList());
        rooms.forEach(Room::close);
        return all;
    }

    private static Set<Door> doors(Set<?> roles) {
        return Set.copyOf(roles.stream()
                .filter(Door.class::isInstance)
                .map(Door.class::cast)
                .toList());
    }

    public boolean opensFor(Role role) {
        return doors.stream().allMatch(door -> door.opensFor(role));
    }

    /** The names in braces. */
    public List<String> names() {
        return Arrays.stream(path.split("/"))
                .filter(part -> part.startsWith("{"))
                .map(part -> part.substring(1, part.indexOf('}')))
                .toList();
    }

    /** Whether an address is one of these. */
    public boolean is(String address) {
        return address.matches(path.replace(".", "[.]").replaceAll("\\{[^}]+}", "[^/]+"));
    }
}
