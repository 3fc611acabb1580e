package tiewright.saturday;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.event.ClubId;
import tiewright.event.Event;
import tiewright.event.Exchange;
import tiewright.event.ExchangeId;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Stage;
import tiewright.event.Tie;
import tiewright.event.TieProgress;

/**
 * What the day waits for, and who has to do it: left to chance alone few days come to a final, and hardly one to a final that begins
 * again because an older score was wrong. The pages are those that {@link ClicksTest} finds by three clicks.
 */
final class Onwards {
    private static final int MOST_CORRECTIONS = 4;

    private final Event event;
    private final People people;
    private final Dice dice;

    /** Somebody, and the page with the form. */
    record Next(Person who, String page) {}

    Onwards(Event event, People people, Dice dice) {
        this.event = event;
        this.people = people;
        this.dice = dice;
    }

    /** Empty where nothing is left to do, or nobody is here to do it. */
    Optional<Next> next() {
        return Stream.of(dice.chance(0.5) ? olderScore() : Optional.<Next>empty(), withoutTime(), unsigned(), ofTies())
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** The score of a pool turns out wrong while the final is on. */
    private Optional<Next> olderScore() {
        boolean goesOn = event.ties().values().stream()
                .anyMatch(tie -> tie.stage() == Stage.KNOCKOUT && tie.isOpened() && event.goesOn(tie));
        return Optional.of(goesOn && event.disputes().corrections().size() < MOST_CORRECTIONS)
                .filter(wanted -> wanted)
                .flatMap(wanted -> dice.anyOf(event.ties().values().stream()
                        .filter(tie ->
                                tie.stage() == Stage.POOL && event.progress(tie).finished())
                        .filter(tie -> tie.opened().containsKey(RubberNo.of(1)))
                        .toList()))
                .flatMap(tie -> by("/organiser/correct/" + tie.id() + "/1", Role.REFEREE, Role.ORGANISER));
    }

    private Optional<Next> withoutTime() {
        return Optional.of(event.ties().values().stream()
                        .anyMatch(tie -> tie.isReady() && tie.start().isEmpty() && event.goesOn(tie)))
                .filter(some -> some)
                .flatMap(some -> by("/organiser/times", Role.ORGANISER));
    }

    private Optional<Next> unsigned() {
        return event.pools().keySet().stream()
                .filter(pool -> !event.signedTables().containsKey(pool) && isOver(pool))
                .findFirst()
                .filter(pool -> dice.chance(0.5))
                .flatMap(pool -> by("/organiser/tables", Role.REFEREE, Role.ORGANISER));
    }

    private boolean isOver(String pool) {
        return event.ties().values().stream()
                .filter(tie -> tie.pool().filter(pool::equals).isPresent())
                .noneMatch(event::goesOn);
    }

    private Optional<Next> ofTies() {
        return event.ties().values().stream()
                .filter(tie -> tie.isReady() && event.goesOn(tie))
                .sorted(Comparator.comparing(Tie::stage)
                        .thenComparing(Tie::round)
                        .thenComparing(Tie::id))
                .flatMap(tie -> ofTie(tie).stream())
                .findFirst();
    }

    private Optional<Next> ofTie(Tie tie) {
        if (!tie.isOpened()) {
            return sealer(tie, ExchangeId.sheets(tie.id()), "/captain/sheet/" + tie.id());
        }
        TieProgress progress = event.progress(tie);
        return progress.awaitsDecider()
                ? sealer(tie, ExchangeId.decider(tie.id()), "/captain/decider/" + tie.id())
                : progress.left().stream()
                        .findFirst()
                        .flatMap(rubber -> by("/cards/" + tie.id() + "/" + rubber, Role.DESK));
    }

    /** The captain of the club whose sheet is not in. */
    private Optional<Next> sealer(Tie tie, ExchangeId id, String page) {
        Exchange exchange = event.exchange(id);
        return Stream.of(Side.values())
                .filter(side -> !exchange.side(side).isIn())
                .flatMap(side -> tie.club(side).stream())
                .findFirst()
                .flatMap(club -> dice.anyOf(captains(club)))
                .map(captain -> new Next(captain, page));
    }

    private List<Person> captains(ClubId club) {
        return people.of(Role.CAPTAIN).stream()
                .filter(person -> person.club().filter(club::equals).isPresent())
                .toList();
    }

    private Optional<Next> by(String page, Role... roles) {
        return dice.anyOf(people.of(roles)).map(person -> new Next(person, page));
    }
}
