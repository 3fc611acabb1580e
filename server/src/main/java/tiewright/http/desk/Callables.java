package tiewright.http.desk;

import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tiewright.desk.NextCalls;
import tiewright.event.OrderOfPlay;
import tiewright.event.RubberNo;
import tiewright.event.Tie;
import tiewright.event.TieId;
import tiewright.event.VisibleEvent;
import tiewright.http.answers.Answers;
import tiewright.http.pieces.HiddenField;
import tiewright.http.views.DeskView.Press;
import tiewright.http.visit.HallClock;
import tiewright.http.visit.TieOrder;
import tiewright.http.visit.TieViews;
import tiewright.http.visit.Visit;

/** The rubbers that can be called now, and the one press that calls each to a court. */
final class Callables {
    private static final Duration A_LITTLE_AHEAD = Duration.ofMinutes(10);

    private final Visit visit;
    private final CourtWords words;
    private final List<One> all;

    /** @param court where it belongs by the order of play; empty while that court is taken, or for none */
    record One(Tie tie, RubberNo rubber, Optional<String> court) {
        static One of(Tie tie, NextCalls.Next next) {
            return new One(tie, next.rubber(), next.court());
        }
    }

    Callables(Visit visit) {
        VisibleEvent event = visit.event();
        this.visit = visit;
        this.words = new CourtWords(event, new TieViews(event));
        Map<TieId, List<NextCalls.Next>> next = visit.ask(Answers::new).nextCalls();
        this.all = TieOrder.sorted(List.copyOf(event.ties())).stream()
                .filter(tie -> !event.isGone(tie))
                .flatMap(tie -> next.getOrDefault(tie.id(), List.of()).stream().map(one -> One.of(tie, one)))
                .toList();
    }

    List<One> all() {
        return all;
    }

    /** The first that belongs on this court. */
    Optional<One> first(String court) {
        return all.stream()
                .filter(one -> one.court().filter(court::equals).isPresent())
                .findFirst();
    }

    /** Those whose own court is taken, or that have none. */
    List<One> elsewhere() {
        return all.stream().filter(one -> one.court().isEmpty()).toList();
    }

    Press press(One one, String court) {
        return Press.form(
                label(one),
                words.rubber(one.tie(), one.rubber()).what(),
                DeskTiePages.of(one.tie()) + "/call",
                List.of(
                        new HiddenField("rubber", one.rubber().toString()),
                        new HiddenField(Calls.field(one.tie(), one.rubber()), court)));
    }

    /** Who calls before the published time reads it first: people were told that nothing happens before it. */
    private String label(One one) {
        Optional<OrderOfPlay.Stop> stop =
                visit.event().order().stop(visit.event().about(), visit.event().now());
        if (stop.isPresent()) {
            return visit.say(
                    "page-desk.call-while-stopped",
                    "decider",
                    one.rubber().isDecider() ? "yes" : "no",
                    "rubber",
                    one.rubber(),
                    "until",
                    HallClock.said(stop.get().until()));
        }
        if (one.rubber().isDecider()) {
            return visit.say("page-desk.call-the-decider", "rubber", one.rubber());
        }
        return notBefore(one)
                .map(start -> visit.say("page-desk.call-early", "rubber", one.rubber(), "at", HallClock.said(start)))
                .orElseGet(() -> visit.say("page-desk.call-rubber", "rubber", one.rubber()));
    }

    /**
     * The published time that is still to come: of the tie before it has begun; then of a rubber that was put off, by rain say, and
     * not of one that is a little ahead.
     */
    private Optional<LocalTime> notBefore(One one) {
        VisibleEvent event = visit.event();
        if (!one.tie().isInPlay()) {
            return event.startsAt(one.tie()).filter(event.now()::isBefore).map(event::clock);
        }
        return Optional.ofNullable(event.order().rubbers(one.tie().id()).get(one.rubber()))
                .map(OrderOfPlay.Place::start)
                .filter(event.clock(event.now().plus(A_LITTLE_AHEAD))::isBefore);
    }
}
