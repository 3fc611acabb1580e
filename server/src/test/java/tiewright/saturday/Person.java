package tiewright.saturday;

import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.Link;
import tiewright.event.PlayerId;
import tiewright.event.Role;

/** Somebody with a browser without scripts: a cookie, and the pages that are still open in other tabs. */
final class Person {
    private static final int TABS = 4;

    private final String name;
    private final Role role;
    private final Optional<ClubId> club;
    private final Optional<PlayerId> player;
    private final Supplier<String> service;
    private String link = "";
    private String entrance = "";
    private final Deque<Sight> tabs = new ArrayDeque<>();
    private final Deque<Unsent> unsent = new ArrayDeque<>();
    private final Map<String, String> cookies = new TreeMap<>();

    /**
     * A form of which this person never saw an answer, and that goes once more when the network is back.
     *
     * @param counted whether the service had taken it
     */
    record Unsent(String page, String action, List<Map.Entry<String, String>> fields, boolean counted) {}

    Person(String name, Role role, Optional<ClubId> club, Optional<PlayerId> player, Supplier<String> service) {
        this.name = name;
        this.role = role;
        this.club = club;
        this.player = player;
        this.service = service;
    }

    /** Comes in by a personal link of this name. */
    void enter(String name, String path) {
        link = name;
        entrance = path;
        open(path);
    }

    /** The same person with another browser, come in by the same link. */
    Person withSecondPhone() {
        Person same = new Person(name + ", second phone", role, club, player, service);
        same.enter(link, entrance);
        return same;
    }

    /** The name of the link by which this person came in last; empty for a stranger. */
    String link() {
        return link;
    }

    /** Whether this person's link was taken back or replaced, and no other came. */
    boolean isOut(Event event) {
        Link now = event.links().get(link);
        return now != null && now.revoked();
    }

    Role role() {
        return role;
    }

    Optional<ClubId> club() {
        return club;
    }

    Optional<PlayerId> player() {
        return player;
    }

    /** Where the service sends this person who opens the own link. */
    String firstPage() {
        return switch (role) {
            case PUBLIC -> "/";
            case PLAYER -> "/player/" + player.orElseThrow().code();
            case CAPTAIN -> "/captain";
            case VOLUNTEER -> "/cards";
            case DESK, REFEREE -> "/desk";
            case ORGANISER -> "/organiser";
        };
    }

    /** The page, kept in a tab. */
    Sight open(String path) {
        Sight sight = look(path);
        tabs.addFirst(sight);
        while (tabs.size() > TABS) {
            tabs.removeLast();
        }
        return sight;
    }

    /** The page, by somebody who only looks over the shoulder. */
    Sight look(String path) {
        return follow(HttpRequest.newBuilder(address(path)).GET(), path, 0);
    }

    /** Pages that were opened earlier, the latest first. */
    List<Sight> tabs() {
        return List.copyOf(tabs);
    }

    Sight send(String path, List<Map.Entry<String, String>> fields) {
        Sight sight = follow(
                HttpRequest.newBuilder(address(path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .header("Origin", service.get())
                        .POST(HttpRequest.BodyPublishers.ofString(encoded(fields))),
                path,
                0);
        tabs.addFirst(sight);
        return sight;
    }

    void keep(Unsent form) {
        unsent.addLast(form);
    }

    /** The oldest form that still lies here, taken away. */
    Optional<Unsent> takeUnsent() {
        return Optional.ofNullable(unsent.pollFirst());
    }

    static String encoded(List<Map.Entry<String, String>> fields) {
        return fields.stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private URI address(String path) {
        String whole = path.startsWith("http") ? path : service.get() + path;
        return URI.create(whole.replace(" ", "%20")); // as browsers do
    }

    private Sight follow(HttpRequest.Builder request, String path, int hops) {
        if (!cookies.isEmpty()) {
            request.header("Cookie", String.join("; ", cookies.values()));
        }
        HttpResponse<String> response = Wire.answer(request.build());
        response.headers().allValues("Set-Cookie").forEach(this::keep);
        Optional<String> onward = response.headers().firstValue("Location");
        if (onward.isPresent() && hops < 5) {
            String next = onward.get().replace(service.get(), "");
            return follow(HttpRequest.newBuilder(address(next)).GET(), next, hops + 1);
        }
        return Sight.of(this, path, response.statusCode(), Jsoup.parse(response.body()))
                .afterBeingLed(hops > 0);
    }

    /** One of each name, as a browser keeps them. */
    private void keep(String set) {
        String cookie = set.split(";", 2)[0];
        cookies.put(cookie.replaceFirst("=.*", ""), cookie);
    }

    @Override
    public String toString() {
        return name;
    }
}
