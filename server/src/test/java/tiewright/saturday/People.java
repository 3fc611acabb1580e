package tiewright.saturday;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import tiewright.event.ClubId;
import tiewright.event.PlayerId;
import tiewright.event.Role;
import tiewright.http.Served;

/** Everybody in the hall who has a phone or sits at the desk. */
final class People {
    private final List<Person> all = new ArrayList<>();
    private final Served served;

    People(Served served, Scene scene) {
        this.served = served;
        add("the organiser", Role.ORGANISER, Optional.empty(), Optional.empty());
        add("the referee", Role.REFEREE, Optional.empty(), Optional.empty());
        add("the desk", Role.DESK, Optional.empty(), Optional.empty());
        add("a volunteer", Role.VOLUNTEER, Optional.empty(), Optional.empty());
        for (ClubId club : scene.clubs()) {
            add("captain of " + club, Role.CAPTAIN, Optional.of(club), Optional.empty());
            add("deputy of " + club, Role.CAPTAIN, Optional.of(club), Optional.empty());
            for (int number : List.of(1, 3)) {
                PlayerId player = PlayerId.of(club.code() + number);
                add("player " + player, Role.PLAYER, Optional.of(club), Optional.of(player));
            }
        }
        all.add(new Person("a stranger", Role.PUBLIC, Optional.empty(), Optional.empty(), url()));
    }

    private void add(String name, Role role, Optional<ClubId> club, Optional<PlayerId> player) {
        Person person = new Person(name, role, club, player, url());
        String link = served.link(role, club, player, name);
        person.open(link.substring(served.service.url().length()));
        all.add(person);
    }

    private Supplier<String> url() {
        return () -> served.service.url();
    }

    List<Person> all() {
        return all;
    }

    List<Person> of(Role... roles) {
        List<Role> wanted = List.of(roles);
        return all.stream().filter(person -> wanted.contains(person.role())).toList();
    }

    Person stranger() {
        return of(Role.PUBLIC).get(0);
    }
}
