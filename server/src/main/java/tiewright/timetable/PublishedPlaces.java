package tiewright.timetable;

import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import tiewright.event.Event;
import tiewright.event.OrderOfPlay;
import tiewright.event.RubberNo;
import tiewright.event.Tie;

/** Where the pieces of a board were published. */
record PublishedPlaces(Event event, Board board) {
    /** A published start, and the courts of the rubbers. */
    record Place(LocalTime start, List<String> courts) {}

    Optional<Place> of(Piece piece) {
        SortedMap<RubberNo, OrderOfPlay.Place> places =
                event.order().rubbers(board.tie(piece).id());
        List<OrderOfPlay.Place> its = piece.rubbers().stream()
                .flatMap(rubber -> Optional.ofNullable(places.get(rubber)).stream())
                .toList();
        Tie tie = event.tie(board.tie(piece).id()).orElseThrow();
        return its.stream()
                .map(OrderOfPlay.Place::start)
                .min(Comparator.naturalOrder())
                .map(start -> new Place(
                        start,
                        its.stream().map(OrderOfPlay.Place::court).distinct().toList()))
                .or(() -> tie.start()
                        .map(start -> new Place(
                                start,
                                tie.court()
                                        .map(court -> board.problem().beside(court, piece.width()))
                                        .orElse(List.of()))));
    }

    /** The minute that was published for it. */
    int turn(Piece piece) {
        return of(piece).map(place -> Clock.minute(place.start(), board.base())).orElse(Board.NEVER);
    }

    /** The published courts that can still be used, as bits; no more of them than it takes now. */
    long courts(Piece piece) {
        List<String> usable = board.problem().courtNames();
        return of(piece).map(Place::courts).orElse(List.of()).stream()
                .filter(usable::contains)
                .limit(piece.width())
                .mapToLong(court -> 1L << board.courtNumber(court))
                .reduce(0, (one, other) -> one | other);
    }

    boolean isAt(Assignment one) {
        return board.pieces().stream()
                .filter(piece -> board.tie(piece).id().equals(one.tie())
                        && piece.rubbers().equals(one.rubbers()))
                .flatMap(piece -> of(piece).stream())
                .anyMatch(place -> place.start().equals(one.start())
                        && Set.copyOf(place.courts()).equals(Set.copyOf(one.courts())));
    }
}
