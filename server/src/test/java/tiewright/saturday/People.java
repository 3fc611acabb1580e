package tiewright.saturday;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.Link;
import tiewright.event.Player;
import tiewright.event.PlayerId;
import tiewright.event.Role;
import tiewright.http.Served;
import tiewright.http.Service;

/** Everybody in the hall who has a phone or sits at the desk. */
final class People {
    private static final int CAPTAINS_OF_A_CLUB = 3;

    private final List<Person> all = new ArrayList<>();
    private final Served served;

    /** All of them, at an event that stands. */
    People(Served served, Scene scene) {
        this(served);
        comeIn(scene);
    }

    /** The organiser alone, who has nothing yet. */
    People(Served served) {
        this.served = served;
        add("the organiser", Role.ORGANISER, Optional.empty(), Optional.empty());
    }

    /** Everybody else, once there are clubs. */
    void comeIn(Scene scene) {
        add("the referee", Role.REFEREE, Optional.empty(), Optional.empty());
        add("the desk", Role.DESK, Optional.empty(), Optional.empty());
        add("a volunteer", Role.VOLUNTEER, Optional.empty(), Optional.empty());
        for (ClubId club : scene.clubs()) {
            add("captain of " + club, Role.CAPTAIN, Optional.of(club), Optional.empty());
            add("deputy of " + club, Role.CAPTAIN, Optional.of(club), Optional.empty());
            for (PlayerId player : players(club)) {
                add("player " + player, Role.PLAYER, Optional.of(club), Optional.of(player));
            }
        }
        secondPhone("captain of " + scene.clubs().get(0));
        secondPhone("the desk");
        all.add(new Person("a stranger", Role.PUBLIC, Optional.empty(), Optional.empty(), url()));
    }

    /** The first and the third of the squad. */
    private List<PlayerId> players(ClubId club) {
        List<Player> squad = served.ledger.event().squad(club);
        return List.of(squad.get(0).id(), squad.get(2).id());
    }

    /** Somebody has the same link open on two phones and uses both, neither knowing of the other. */
    private void secondPhone(String name) {
        Person first = named(name);
        all.add(first.withSecondPhone());
    }

    /** @throws java.util.NoSuchElementException if there is nobody of this name */
    Person named(String name) {
        return all.stream()
                .filter(one -> one.toString().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private void add(String name, Role role, Optional<ClubId> club, Optional<PlayerId> player) {
        Person person = new Person(name, role, club, player, url());
        enter(person, served.link(role, club, player, name));
        all.add(person);
    }

    private void enter(Person person, String address) {
        String secret = address.replaceFirst(".*/", "");
        served.ledger.event().links().values().stream()
                .filter(link -> link.hash().equals(Service.hash(secret)))
                .findFirst()
                .ifPresent(link -> person.enter(link.name(), "/enter/" + secret));
    }

    /** Slips that somebody just made go to those for whom they are: whoever was out comes in again, a club gets another captain. */
    void handOut(Log log) {
        for (Log.Sent sent : log.sent()) {
            sent.answer().page().select(".code").eachText().stream()
                    .filter(text -> text.contains("/enter/"))
                    .forEach(this::handOut);
        }
    }

    private void handOut(String address) {
        Event event = served.ledger.event();
        String hash = Service.hash(address.replaceFirst(".*/", ""));
        Optional<Link> link = event.links().values().stream()
                .filter(one -> one.hash().equals(hash) && !one.revoked())
                .findFirst();
        Optional<Person> waiting = link.flatMap(one -> all.stream()
                .filter(person -> person.isOut(event) && isFor(one, person))
                .findFirst());
        if (waiting.isPresent()) {
            enter(waiting.get(), address);
        } else if (link.filter(one -> one.role() == Role.CAPTAIN && captains(one) < CAPTAINS_OF_A_CLUB)
                .isPresent()) {
            Person late = new Person(
                    "late captain of " + link.get().club().orElseThrow(),
                    Role.CAPTAIN,
                    link.get().club(),
                    Optional.empty(),
                    url());
            enter(late, address);
            all.add(late);
        }
    }

    private static boolean isFor(Link link, Person person) {
        return link.role() == person.role()
                && link.club().equals(person.club())
                && (link.role() != Role.PLAYER || link.player().equals(person.player()));
    }

    private long captains(Link link) {
        return all.stream()
                .filter(person -> person.role() == Role.CAPTAIN && person.club().equals(link.club()))
                .count();
    }

    private Supplier<String> url() {
        return () -> served.service.url();
    }

    /** Those whose link still opens. */
    List<Person> all() {
        Event event = served.ledger.event();
        return all.stream().filter(person -> !person.isOut(event)).toList();
    }

    List<Person> of(Role... roles) {
        List<Role> wanted = List.of(roles);
        return all().stream().filter(person -> wanted.contains(person.role())).toList();
    }

    Person stranger() {
        return of(Role.PUBLIC).get(0);
    }
}
