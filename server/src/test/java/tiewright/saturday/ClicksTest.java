package tiewright.saturday;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.Event;
import tiewright.event.PlayerId;
import tiewright.event.Role;
import tiewright.http.Doorway;
import tiewright.http.Served;

/**
 * Whatever a role's doors open and is of use is reached from that role's first page by three clicks, at every stage of a day. What
 * belongs to one player, or is printed for one club, by four: squads and clubs are lists longer than a screen. Pictures, calendars
 * and tables to take along are no pages.
 */
class ClicksTest {
    private static final int CLICKS = 3;
    private static final String IN_A_LONG_LIST = "/player/.*|/paper/envelope/.*";
    /** Of the pages of one kind so many are looked at for ways on. */
    private static final int OF_A_KIND = 9;

    private static final List<Doorway> DOORWAYS = Doorway.all();

    @ParameterizedTest
    @EnumSource
    void every_open_page_is_reached_by_three_clicks(Stage stage) {
        Days day = stage.day();
        Map<Role, Set<String>> unreached = new LinkedHashMap<>();
        try (Served served = Served.of(day, Days.moment(stage.clock()))) {
            for (Role role : Role.values()) {
                person(served, role).ifPresent(person -> {
                    Set<String> open = open(served, person);
                    open.removeAll(reached(person, CLICKS));
                    if (open.stream().anyMatch(address -> address.matches(IN_A_LONG_LIST))) {
                        Set<String> byFour = reached(person, CLICKS + 1);
                        open.removeIf(address -> address.matches(IN_A_LONG_LIST) && byFour.contains(address));
                    }
                    if (!open.isEmpty()) {
                        unreached.put(role, open);
                    }
                });
            }
        }
        assertThat(unreached).as(stage.toString()).isEmpty();
    }

    private static Optional<Person> person(Served served, Role role) {
        boolean hasClub = !served.ledger.event().clubs().isEmpty();
        boolean isOfAClub = role == Role.CAPTAIN || role == Role.PLAYER;
        if (isOfAClub && !hasClub) {
            return Optional.empty();
        }
        Optional<ClubId> club = isOfAClub ? Optional.of(ClubId.of("N")) : Optional.empty();
        Optional<PlayerId> player = role == Role.PLAYER ? Optional.of(PlayerId.of("N1")) : Optional.empty();
        Person person = new Person(role.code(), role, club, player, () -> served.service.url());
        if (role != Role.PUBLIC) {
            person.open(served.link(role, club, player, role.code()).replaceFirst("^https?://[^/]+", ""));
        }
        return Optional.of(person);
    }

    /** Every address that answers this person with a page of its own. */
    private static Set<String> open(Served served, Person person) {
        Set<String> open = new TreeSet<>();
        for (Doorway doorway : DOORWAYS) {
            if (doorway.opensFor(person.role()) && !doorway.path().contains(".")) {
                addresses(served.ledger.event(), doorway).stream()
                        .filter(address -> new OfUse(served.ledger.event()).test(address))
                        .filter(address -> {
                            Sight there = person.look(address);
                            return there.isRead() && there.path().equals(address);
                        })
                        .forEach(open::add);
            }
        }
        return open;
    }

    private static List<String> addresses(Event event, Doorway doorway) {
        List<String> addresses = List.of(doorway.path());
        for (String name : doorway.names()) {
            List<String> filled = new ArrayList<>();
            for (String address : addresses) {
                values(event, name).forEach(value -> filled.add(address.replace("{" + name + "}", value)));
            }
            addresses = filled;
        }
        return addresses;
    }

    private static List<String> values(Event event, String name) {
        return switch (name) {
            case "tie" -> event.ties().keySet().stream().map(Object::toString).toList();
            case "club" -> event.clubs().keySet().stream().map(Object::toString).toList();
            case "player" ->
                event.clubs().keySet().stream().map(club -> club + "1").toList();
            case "rubber" -> List.of("1", "2", "3", "4", "D");
            case "court" -> List.copyOf(event.courts().keySet());
            case "notice" ->
                event.notices().stream()
                        .map(posted -> Integer.toString(posted.notice().number()))
                        .toList();
            default -> throw new IllegalStateException("nobody knows what {" + name + "} stands for");
        };
    }

    private static Set<String> reached(Person person, int clicks) {
        Set<String> reached = new LinkedHashSet<>(List.of(person.firstPage()));
        Map<String, Integer> looked = new HashMap<>();
        Set<String> last = reached;
        for (int click = 0; click < clicks; click++) {
            Set<String> next = new LinkedHashSet<>();
            for (String address : last) {
                if (!address.matches("/player/.*[02-9]") && looked.merge(kind(address), 1, Integer::sum) <= OF_A_KIND) {
                    next.addAll(ways(person.look(address)));
                }
            }
            next.removeAll(reached);
            reached.addAll(next);
            last = next;
        }
        return reached;
    }

    private static String kind(String address) {
        return DOORWAYS.stream()
                .filter(doorway -> doorway.is(address))
                .map(Doorway::path)
                .findFirst()
                .orElse(address);
    }

    /** Links, presses, and choices that lead to a page of each. */
    private static Set<String> ways(Sight sight) {
        Set<String> ways =
                sight.ways().stream().map(way -> way.replaceFirst("[?].*$", "")).collect(Collectors.toSet());
        sight.forms().forEach(form -> ways.add(sight.action(form)));
        sight.forms()
                .forEach(form -> form.select("option")
                        .forEach(option -> ways.add(sight.action(form) + "/" + option.attr("value"))));
        return ways;
    }
}
