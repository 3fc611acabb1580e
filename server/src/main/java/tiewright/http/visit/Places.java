package tiewright.http.visit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.event.ClubId;
import tiewright.event.Role;
import tiewright.http.pieces.Countdown;
import tiewright.http.pieces.NavLink;
import tiewright.http.pieces.Ways;

/**
 * Where each role can go: four places, the pages of each, and which of them the page shown belongs to. A page that is reached
 * from another one alone, such as the card of a rubber, belongs to the place whose address it begins with.
 */
final class Places {
    private final Visit visit;
    private final String here;

    private Places(Visit visit) {
        this.visit = visit;
        this.here = visit.ctx().path();
    }

    static Ways of(Visit visit) {
        Places places = new Places(visit);
        Optional<Countdown> due = Countdowns.dueSoon(visit).stream().findFirst();
        return new Ways(places.all(), places.often(), due);
    }

    private List<Ways.Place> all() {
        List<Ways.Place> all =
                switch (visit.role()) {
                    case PUBLIC ->
                        List.of(
                                now(),
                                place("clubs", "/club/ /player/"),
                                place("times", "/plan", "ties", "clubs-days", "paper"),
                                place("tables", "", "knockout", "needs"));
                    case PLAYER -> List.of(own(), ownClub(), hall(), tables());
                    case CAPTAIN -> ofCaptain();
                    case VOLUNTEER ->
                        List.of(
                                place("cards", "/cards/ /stop/"),
                                hall(),
                                place("times", "/plan", "ties", "paper"),
                                tables());
                    case DESK -> List.of(desk(), place("cards", "/cards/"), plan(), everything());
                    case REFEREE -> List.of(desk("cards"), rulings(), plan(), everything());
                    case ORGANISER ->
                        List.of(
                                place("organise", "/organiser/", "people", "rulings", "cases", "post", "sign"),
                                desk("cards"),
                                place("times", "/plan", "plan", "breaks", "ties", "clubs-days", "board"),
                                everything());
                };
        return oneIsHere(all);
    }

    private List<Ways.Place> ofCaptain() {
        return visit.event().isLetIn()
                ? List.of(
                        myTies(),
                        place("advice", "/captain/proposal/", "playing-time", "record", "tried"),
                        place("squad", "/captain/", "past", "film", "rota", "club-links"),
                        captainsHall())
                : List.of(myTies(), place("club-links", ""), tables(), captainsHall());
    }

    private List<NavLink> often() {
        return switch (visit.role()) {
            case PUBLIC -> links("notices", "conditions");
            case PLAYER -> links("times", "notices");
            case CAPTAIN -> links("times", "tables", "notices");
            case VOLUNTEER -> links("notices");
            case DESK -> links("check-in", "tables", "notices", "paper", "log");
            case REFEREE -> links("cards", "tables", "notices", "log");
            case ORGANISER -> links("cards", "tables", "notices", "people", "log");
        };
    }

    private Ways.Place own() {
        String next = visit.viewer()
                .player()
                .map(player -> "/player/" + player.code())
                .orElse("/my");
        return place(new NavLink(next, say("next"), next.equals(here)), next + "/", List.of());
    }

    private Ways.Place ownClub() {
        String club = "/club/" + visit.viewer().club().map(ClubId::code).orElse("");
        return place(
                new NavLink(club, say("our-club"), club.equals(here)), "/club /player/", links("clubs", "clubs-days"));
    }

    private Ways.Place now() {
        return place("now", "/tie/", "notices", "board", "conditions", "how-it-works", "receipts", "trust");
    }

    private Ways.Place hall() {
        return place("on-court", "/", "/tie/ /notices /plan", links("times", "ties", "board", "notices", "conditions"));
    }

    private Ways.Place tables() {
        return place("tables", "", "knockout", "needs");
    }

    private Ways.Place myTies() {
        return place("my-ties", "/captain/sheet/ /captain/decider/ /tie/ /cards /stop/", "protests", "hurt");
    }

    private Ways.Place captainsHall() {
        return place(
                "the-hall",
                "/",
                "/club /player /plan /tables /bracket /needs",
                links("times", "ties", "tables", "knockout", "needs", "notices", "clubs", "conditions", "paper"));
    }

    private Ways.Place desk(String... more) {
        List<NavLink> pages = new ArrayList<>(links(more));
        pages.addAll(links("check-in", "hurt", "protests", "safety", "clock", "laptop", "paper", "log"));
        if (visit.role() != Role.ORGANISER) {
            pages.addAll(links("people"));
        }
        return place("desk", "/desk", "/desk/ /stop/ /paper/ /cards/ /log", pages);
    }

    private Ways.Place rulings() {
        return place("rulings", "/organiser/", "cases", "post", "sign", "protests");
    }

    private Ways.Place plan() {
        return place("times", "/plan", "ties", "clubs-days", "board");
    }

    private Ways.Place everything() {
        return place(
                "the-hall",
                "/",
                "/club /player /tie /tables /bracket /needs",
                links("tables", "knockout", "needs", "notices", "clubs", "conditions"));
    }

    /** @param below the beginnings of addresses that belong to the place, with spaces between */
    private Ways.Place place(String key, String below, String... pages) {
        return place(link(key), below, links(pages));
    }

    private Ways.Place place(String key, String href, String below, List<NavLink> pages) {
        return place(new NavLink(href, say(key), href.equals(here)), below, pages);
    }

    private Ways.Place place(NavLink link, String below, List<NavLink> pages) {
        boolean belongs = link.current()
                || pages.stream().anyMatch(NavLink::current)
                || Stream.of(below.split(" ")).filter(part -> !part.isEmpty()).anyMatch(here::startsWith);
        return new Ways.Place(link, belongs, pages);
    }

    /** A page may stand under two places: it belongs to the one that is it, else to the one that lists it, else to the first. */
    private static List<Ways.Place> oneIsHere(List<Ways.Place> all) {
        Optional<Ways.Place> here = all.stream()
                .filter(Ways.Place::here)
                .min(Comparator.comparing((Ways.Place place) -> !place.link().current())
                        .thenComparing(place -> place.pages().stream().noneMatch(NavLink::current)));
        return all.stream()
                .map(place ->
                        new Ways.Place(place.link(), here.filter(place::equals).isPresent(), place.pages()))
                .toList();
    }

    private List<NavLink> links(String... keys) {
        return Arrays.stream(keys).map(this::link).toList();
    }

    private NavLink link(String key) {
        String href = Objects.requireNonNull(Addresses.OF.get(key), key);
        return new NavLink(href, say(key), href.equals(here));
    }

    private String say(String key) {
        return visit.say("frame.go." + key);
    }
}
