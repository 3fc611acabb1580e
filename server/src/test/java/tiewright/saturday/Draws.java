package tiewright.saturday;

import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tiewright.event.ClubId;
import tiewright.event.Directory;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote;
import tiewright.event.Role;
import tiewright.http.Served;

/** In the morning all captains ask for a proposal before anything is known of anybody: what is by lot comes from each club's secret. */
final class Draws {
    private static final int SQUAD = 8;
    private static final int CLUBS = 6;

    private final Scene scene;

    /** Nobody has the name of somebody else of the club, or nobody could tell from the page who is named first. */
    Draws(long seed) {
        Dice dice = new Dice(seed);
        this.scene = Stream.generate(() -> Scene.of(dice, CLUBS, SQUAD))
                .filter(Draws::isEachKnownByName)
                .findFirst()
                .orElseThrow();
    }

    private static boolean isEachKnownByName(Scene scene) {
        List<String> names = scene.notes().stream()
                .filter(PrivateNote.PersonNamed.class::isInstance)
                .map(PrivateNote.PersonNamed.class::cast)
                .map(person -> person.player().code().replaceFirst("[0-9]+$", " ")
                        + person.person().name())
                .toList();
        return Set.copyOf(names).size() == names.size();
    }

    /** Broken where all of them get the same draw, or one of them asks twice and gets another. */
    Optional<Broken> look() {
        try (Served served = Served.empty(Scene.at(LocalTime.of(8, 30))).given(scene.facts(), scene.notes())) {
            List<Person> captains = new People(served, scene)
                    .of(Role.CAPTAIN).stream()
                            .filter(person -> person.toString().startsWith("captain"))
                            .toList();
            Person again = captains.get(0);
            List<Integer> first = draw(served, again);
            if (!draw(served, again).equals(first)) {
                return Optional.of(new Broken(4, again + " asks the same twice and gets two draws"));
            }
            boolean same =
                    captains.stream().allMatch(person -> draw(served, person).equals(first));
            return same
                    ? Optional.of(new Broken(4, captains.size() + " captains ask the same and all draw " + first))
                    : Optional.empty();
        }
    }

    /** The numbers of the players in the order in which the first proposal names them. */
    private static List<Integer> draw(Served served, Person person) {
        ClubId club = person.club().orElseThrow();
        String way = person.look(person.firstPage()).ways().stream()
                .filter(one -> one.matches("/captain/proposal/.*"))
                .findFirst()
                .orElseThrow();
        String text = person.look(way).page().select("main").text();
        Directory names = served.ledger.directory();
        return IntStream.rangeClosed(1, SQUAD)
                .boxed()
                .filter(number -> text.contains(name(names, club, number)))
                .sorted(Comparator.comparing(number -> text.indexOf(name(names, club, number))))
                .collect(Collectors.toList());
    }

    private static String name(Directory names, ClubId club, int number) {
        return Objects.requireNonNull(names.people().get(PlayerId.of(club.code() + number)))
                .name();
    }
}
