package tiewright.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tiewright.event.Card;
import tiewright.event.Court;
import tiewright.event.Event;
import tiewright.event.Pair;
import tiewright.event.PlayerId;
import tiewright.event.RubberNo;
import tiewright.event.Side;
import tiewright.event.Tie;

/**
 * Which rubbers are on which court. A rubber is on court from its call until something is entered for it, or its tie is
 * over.
 */
final class Courts {
    private final Event event;
    private final List<OnCourt> running = new ArrayList<>();

    record OnCourt(Tie tie, RubberNo rubber, Tie.Call call) {
        boolean isOf(Tie other) {
            return tie.id().equals(other.id());
        }
    }

    private Courts(Event event) {
        this.event = event;
    }

    static Courts of(Event event) {
        Courts courts = new Courts(event);
        event.ties().values().forEach(courts::add);
        return courts;
    }

    private void add(Tie tie) {
        List<RubberNo> left =
                tie.calls().isEmpty() ? List.of() : event.progress(tie).left();
        tie.calls().forEach((rubber, call) -> {
            if (left.contains(rubber)) {
                running.add(new OnCourt(tie, rubber, call));
            }
        });
    }

    List<OnCourt> running() {
        return List.copyOf(running);
    }

    List<OnCourt> on(String court) {
        return running.stream()
                .filter(rubber -> rubber.call().court().equals(court))
                .toList();
    }

    /** Usable courts with nothing on them, in the order of entry. */
    List<String> free() {
        return event.courts().values().stream()
                .filter(Court::usable)
                .map(Court::name)
                .filter(name -> on(name).isEmpty())
                .toList();
    }

    /** Where somebody of this rubber is on court now, in another rubber and on another court. */
    Optional<Busy> busy(Tie tie, RubberNo rubber, String court) {
        List<PlayerId> wanted = players(tie, rubber);
        return running.stream()
                .filter(other -> !(other.isOf(tie) && other.rubber().equals(rubber))
                        && !other.call().court().equals(court))
                .flatMap(other -> players(other.tie(), other.rubber()).stream()
                        .filter(wanted::contains)
                        .map(player -> new Busy(player, other)))
                .findFirst();
    }

    /** Somebody of this rubber is on court now in another one. */
    boolean isBusy(Tie tie, RubberNo rubber) {
        return busy(tie, rubber, "").isPresent();
    }

    record Busy(PlayerId player, OnCourt where) {}

    private static List<PlayerId> players(Tie tie, RubberNo rubber) {
        return Optional.ofNullable(tie.opened().get(rubber)).stream()
                .flatMap(opened -> Stream.of(Side.values()).map(opened::pair))
                .flatMap(Optional::stream)
                .flatMap((Pair pair) -> pair.players().stream())
                .toList();
    }

    static boolean hasEntry(Tie tie, RubberNo rubber) {
        return tie.card(rubber).standing() != Card.Standing.EMPTY;
    }
}
