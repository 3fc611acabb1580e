package tiewright.http.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tiewright.http.pieces.DoNext;
import tiewright.http.pieces.Mark;
import tiewright.http.pieces.State;

/** What the desk has to do for the laptop itself, and how old its newest copy is. */
public final class LaptopNext {
    private final Visit visit;
    private final Laptop laptop;

    LaptopNext(Visit visit) {
        this.visit = visit;
        this.laptop = visit.hall().laptop();
    }

    List<DoNext.Item> all() {
        List<DoNext.Item> items = new ArrayList<>();
        if (laptop.asksForTime() && visit.hall().clock().doubt().isEmpty()) {
            items.add(item(visit.say(
                    "page-visit.is-it-the-halls-clock",
                    "now",
                    HallClock.said(visit.event().clock(visit.event().now())))));
        }
        laptop.slept()
                .map(slept -> item(visit.say(
                        "page-visit.this-computer-slept",
                        "from",
                        HallClock.said(visit.event().clock(slept.from())),
                        "to",
                        HallClock.said(visit.event().clock(slept.to())))))
                .ifPresent(items::add);
        laptop.copied()
                .filter(Laptop.Copied::isAmber)
                .map(state -> item(visit.say("page-visit.no-copy-comes-about")))
                .ifPresent(items::add);
        return items;
    }

    private DoNext.Item item(String words) {
        return new DoNext.Item(
                words,
                "",
                "",
                new State(Mark.HELD, visit.say("page-visit.at-once")),
                Addresses.LAPTOP,
                visit.say("page-visit.look-at-the-laptop"));
    }

    /** For the page of the desk: when the newest copy was made; amber where it is old or the next one failed. */
    public static State copies(Visit visit) {
        Optional<Laptop.Copied> state = visit.hall().laptop().copied();
        if (state.isEmpty()) {
            return new State(Mark.PLAIN, visit.say("page-visit.no-copies-asked-for"));
        }
        String words = state.get()
                .at()
                .map(at -> visit.say(
                        "page-visit.last-copy",
                        "at",
                        HallClock.said(visit.event().clock(at))))
                .orElse(visit.say("page-visit.no-copy-yet"));
        return new State(state.get().isAmber() ? Mark.HELD : Mark.KEPT, words);
    }
}
